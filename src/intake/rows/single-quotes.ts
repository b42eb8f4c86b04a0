/**
 * Whether cells are quoted with ' instead of ".
 *
 * Only where a file quotes no cell with " and every filled cell of some column stands in ' below
 * its head: an apostrophe that starts a word, or a foot mark, does not make a quoted column.
 */

import { delimiters } from './dialect.ts';
import { endOfLine } from './lines.ts';
import { type RowRules, walkTo } from './row-walker.ts';
import type { QuoteMark } from './source.ts';

export type QuoteChoice = { readonly quote: QuoteMark; readonly evidence: readonly string[] };

/** Rows looked at: beyond them a column does not change its ways. */
const rowsSeen = 200;
const columnsSeen = 50;
const headLength = 200_000;
const double: QuoteChoice = { quote: '"', evidence: [] };

export function chooseQuote(text: string): QuoteChoice {
  const head = text.slice(0, headLength);
  if (!/(?:^|[,;\t|\n]) *'/u.test(head) || /(?:^|[,;\t|\n]) *"/u.test(head)) return double;
  for (const delimiter of delimiters) {
    const column = quotedColumn(head, { delimiter, quote: "'", longestRow: headLength });
    if (column !== undefined) {
      const evidence = [`cells quoted with ': every cell of column ${column + 1} stands in them`];
      return { quote: "'", evidence };
    }
  }
  return double;
}

/** The first column whose cells, the head aside, are all quoted; two of them are the least. */
function quotedColumn(text: string, rules: RowRules): number | undefined {
  const quoted: number[] = [];
  const bare = new Set<number>();
  let rows = 0;
  for (let start = 0; start < text.length && rows < rowsSeen; ) {
    const stop = endOfLine(text, start);
    let end = stop;
    const cells = text[start] === '#' ? [] : cellsFrom(text, rules, start);
    const last = cells.at(-1);
    if (last !== undefined && cells.length > 1) {
      end = Math.max(stop, last.end);
      rows += 1;
      for (const [column, { cell }] of cells.entries()) {
        if (cell === '') continue;
        if (cell.length > 1 && cell.startsWith("'") && cell.endsWith("'"))
          quoted[column] = (quoted[column] ?? 0) + 1;
        else if (rows > 1) bare.add(column);
      }
    }
    start = end + 1;
  }
  const column = quoted.findIndex((count = 0, k) => count >= 2 && !bare.has(k));
  return column === -1 ? undefined : column;
}

type Cell = { readonly cell: string; readonly end: number };

/** The cells of a row, none where its quotes do not fit together. */
function cellsFrom(text: string, rules: RowRules, start: number): readonly Cell[] {
  const cells: Cell[] = [];
  for (let offset = start; cells.length < columnsSeen; ) {
    const { length, fault } = walkTo(text, rules, offset, 0);
    if (fault !== undefined) return [];
    const end = offset + length;
    cells.push({ cell: text.slice(offset, end).trim(), end });
    if (text[end] !== rules.delimiter) break;
    offset = end + 1;
  }
  return cells;
}
