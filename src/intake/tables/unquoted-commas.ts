/**
 * A table separated by commas whose numbers have decimal commas that nobody quoted.
 *
 * `roof,1,101,5` has one cell more than its header for each reading. Where that holds in every row,
 * the part after each whole number is as long as in all others, and the parts differ as decimals do, there is
 * one way left to read the rows; one row that does not fit, and none is read so. Decimals begin with a 0 now
 * and then, or lie over most of their range: a temperature, a grade, a humidity in a further cell does neither.
 */

import type { Row } from '../rows/tokens.ts';
import type { Table } from './table.ts';

const fewestRows = 3;

/** The table with its split numbers joined, or undefined where they are not proved to be split. */
export function joinDecimalCommas(table: Table): Table | undefined {
  const { delimiter, layout, rows } = table;
  const columns = layout.readings.map(({ column }) => column);
  const width = layout.header.length;
  if (delimiter !== ',' || width === 0 || rows.length < fewestRows) return undefined;
  const parts = new Set<string>();
  for (const { cells, quoted } of rows) {
    const excess = withoutBlankEnd(cells, width + columns.length) - width;
    if (quoted || excess !== columns.length) return undefined;
    for (const [k, column] of columns.entries()) {
      const [whole = '', part = ''] = [cells[column + k]?.trim(), cells[column + k + 1]?.trim()];
      if (!/^\d{1,4}$/u.test(whole) || !/^\d{1,2}$/u.test(part)) return undefined;
      parts.add(part);
    }
  }
  if (!areDecimals([...parts])) return undefined;
  return { ...table, rows: rows.map((row) => joinRow(row, columns)) };
}

/** The share of their range that parts must lie over: grades from 1 to 6 lie over 0.5. */
const widestOther = 0.5;

function areDecimals(parts: readonly string[]): boolean {
  const [first = ''] = parts;
  if (parts.length < 2 || parts.some(({ length }) => length !== first.length)) return false;
  const values = parts.map(Number);
  const range = (Math.max(...values) - Math.min(...values)) / 10 ** first.length;
  return range > widestOther || parts.some((part) => part.startsWith('0'));
}

/** Cells of a row, blank ones at its end not counted beyond `least`. */
function withoutBlankEnd(cells: readonly string[], least: number): number {
  let length = cells.length;
  while (length > least && (cells[length - 1] ?? '').trim() === '') length -= 1;
  return length;
}

/** The joined cell is as long as its parts with the comma between them: places stay true. */
function joinRow(row: Row, columns: readonly number[]): Row {
  const cells = [...row.cells];
  for (const column of columns) cells.splice(column, 2, `${cells[column]},${cells[column + 1]}`);
  return { ...row, cells };
}
