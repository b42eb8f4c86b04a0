/**
 * Tables side by side that are two visits of one car: `Vorher;;;Nachher;;` above them. Read together, what came
 * off would be averaged. A line above that says so is refused; panels that stand in both without it are told.
 */

import { dayIn, namesVisit, saysBeforeOrAfter, visitsHint } from '../cells/visit-words.ts';
import type { Findings } from '../findings.ts';
import { cellText } from '../rows/row.ts';
import { placeOf, type Table } from '../tables/table.ts';

/** Titles stand so near above the names of the columns. */
const mostLinesAbove = 6;

/** `apart` are the tables of one row of names, from left to right. */
export function doubtSideBySide(apart: readonly Table[], findings: Findings): void {
  const [left, ...others] = apart;
  if (left === undefined || others.length === 0) return;
  const banner = linesAbove(left).map((line) => visitsIn(line, apart));
  const said = banner.find((one) => one !== undefined);
  if (said !== undefined) {
    findings.add('error', 'tables-apart', () => ({
      message: `"${said.text}" says that the tables side by side are of two visits`,
      at: left.source.placeAt(said.offset, said.text.length),
      hint: visitsHint,
    }));
    return;
  }
  for (const table of others) doubtShared(left, table, findings);
}

type TextAt = { readonly text: string; readonly offset: number };
type LineAt = { readonly text: string; readonly start: number };

function linesAbove({ source, header }: Table): readonly LineAt[] {
  const lines: LineAt[] = [];
  let end = (header?.start ?? 0) - 1;
  while (end > 0 && lines.length < mostLinesAbove) {
    const start =
      Math.max(source.text.lastIndexOf('\n', end - 1), source.text.lastIndexOf('\r', end - 1)) + 1;
    lines.push({ text: source.text.slice(start, end), start });
    end = start - 1;
  }
  return lines;
}

/** The first text above a table but the leftmost that names another visit than what stands above that. */
function visitsIn({ text, start }: LineAt, apart: readonly Table[]): TextAt | undefined {
  const delimiter = apart[0]?.delimiter ?? ',';
  const cells: TextAt[] = [];
  let offset = start;
  for (const cell of text.split(delimiter)) {
    const bare = cell.replace(/^[\s"']+|[\s"']+$/gu, '');
    cells.push({ text: bare, offset: offset + cell.indexOf(bare) });
    offset += cell.length + delimiter.length;
  }
  const froms = apart.map(({ layout }) => layout.columns.get('panel') ?? 0);
  const above = froms.map((from, k) =>
    cells.slice(from, froms[k + 1]).filter((cell) => cell.text !== ''),
  );
  const [first = []] = above;
  const days = first.some((cell) => dayIn(cell.text) !== undefined);
  return above
    .slice(1)
    .flat()
    .find(
      ({ text: said }) =>
        first.every((cell) => cell.text !== said) &&
        (saysBeforeOrAfter(said) || namesVisit(said) || (days && dayIn(said) !== undefined)),
    );
}

/** A list that goes on beside itself may part one panel; more than one that both name is another reading of them. */
function doubtShared(left: Table, right: Table, findings: Findings): void {
  const keys = new Set(left.rows.map((row) => keyOf(left, row)));
  const shared = right.rows.filter((row) => keys.has(keyOf(right, row)));
  const count = new Set(shared.map((row) => keyOf(right, row))).size;
  const [first] = shared;
  if (first === undefined || (count < 2 && keys.size > 1)) return;
  const panelAt = right.layout.columns.get('panel') ?? 0;
  findings.add('warning', 'reading-doubted', () => ({
    message: `"${cellText(first, panelAt)}" stands in both tables side by side, and all its readings are taken together`,
    at: placeOf(right, first, panelAt),
    hint: `if they are of two sides, write the side into the names; if of two visits, ${visitsHint}`,
  }));
}

function keyOf({ layout }: Table, row: Table['rows'][number]): string {
  const at = [layout.columns.get('panel'), layout.columns.get('point')];
  return at
    .map((column) => (column === undefined ? '' : cellText(row, column).toLowerCase()))
    .join('\0');
}
