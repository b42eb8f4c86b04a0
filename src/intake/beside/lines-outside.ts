/** The lines of a file that are no rows of its tables: above them, between them and below. */
import type { Source } from '../rows/source.ts';
import type { Row } from '../rows/tokens.ts';
import type { Table } from '../tables/table.ts';

export type OutsideLine = {
  readonly text: string;
  readonly source: Source;
  readonly offset: number;
};

/** People write some lines around a table; a file of thousands is something else. */
const mostLines = 2000;
const longestLine = 500;

export function linesOutside(tables: readonly Table[]): readonly OutsideLine[] {
  const [first] = tables;
  if (first === undefined) return [];
  const { source } = first;
  const found: OutsideLine[] = [];
  const add = (from: number, to: number, skip: number): void => {
    let offset = from;
    for (const [k, line] of source.text.slice(from, to).split('\n').entries()) {
      if (k >= skip && line.trim() !== '' && found.length < mostLines) {
        found.push({ text: line.slice(0, longestLine).trim(), source, offset });
      }
      offset += line.length + 1;
    }
  };
  let before: Row | undefined;
  const pass = (row: Row): void => {
    if (before === undefined) add(0, row.start, 0);
    else if (row.line !== before.line + 1) add(before.start, row.start, linesOf(before));
    before = row;
  };
  for (const { header, rows } of tables) {
    const isAmid = header !== undefined && (rows[0]?.start ?? 0) < header.start;
    if (header !== undefined && !isAmid) pass(header);
    const inOrder = isAmid ? [...rows, header].sort((a, b) => a.start - b.start) : rows;
    for (const row of inOrder) pass(row);
  }
  const last = tables.at(-1)?.rows.at(-1);
  if (last !== undefined) add(last.start, source.text.length, linesOf(last));
  return found;
}

/** A quoted cell may hold line ends of its own. */
const linesOf = ({ cells, quoted }: Row): number =>
  quoted ? 1 + cells.reduce((sum, cell) => sum + cell.split('\n').length - 1, 0) : 1;
