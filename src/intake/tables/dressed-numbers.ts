/**
 * What a program writes around every number of a column, taken off where it means nothing: a decimal mark
 * with no decimals behind it (`101.`), and the ± that a gauge states of each reading (`101±2`).
 *
 * What is taken off becomes blanks, so that every cell keeps its length and its place.
 */

import { numberOf, numberShape } from '../cells/numbers.ts';
import { cellText } from '../rows/row.ts';
import type { Table } from './table.ts';

export type Undressed = { readonly table: Table; readonly evidence: readonly string[] };

const bareMark = /^\d+([.,])$/u;
const withSpread = /^([^\s±]+)\s*(?:±|\+\/-|\+-)\s*(\d+(?:[.,]\d+)?)\s*%?\s*([^\s\d]*)$/u;
/** A sample tells whether it is worth looking: columns are dressed alike. */
const rowsLookedAt = 50;

export function undressNumbers(table: Table): Undressed {
  const columns = table.layout.readings.map(({ column }) => column);
  const head = table.rows.slice(0, rowsLookedAt);
  const some = (form: RegExp): boolean =>
    head.some((row) => columns.some((column) => form.test(cellText(row, column))));
  const spread = some(withSpread) ? withoutSpread(table, columns) : { table, evidence: [] };
  return some(bareMark) ? withoutBareMark(spread, columns) : spread;
}

/** One cell without the mark, or with decimals, and the mark may be a sign that they were lost. */
function withoutBareMark({ table, evidence }: Undressed, columns: readonly number[]): Undressed {
  const texts = table.rows.flatMap((row) => columns.map((column) => cellText(row, column)));
  const numbers = texts.filter((text) => /^\d/u.test(text));
  const marks = new Set(numbers.map((text) => bareMark.exec(text)?.[1]));
  const [mark] = marks;
  if (marks.size !== 1 || mark === undefined || numbers.length < 2) return { table, evidence };
  const said = `every reading ends in "${mark}" with no decimals behind it: all are whole numbers`;
  return {
    table: rewrittenCells(table, columns, (cell) => cell.replace(/[.,](\s*)$/u, ' $1')),
    evidence: [...evidence, said],
  };
}

function withoutSpread(table: Table, columns: readonly number[]): Undressed {
  let count = 0;
  const bare = rewrittenCells(table, columns, (cell) => {
    const text = cell.trim();
    const [, value = '', spread = '', unit = ''] = withSpread.exec(text) ?? [];
    const [number, around] = [numberShape(value), numberShape(spread)];
    if (number === undefined || around === undefined) return cell;
    // More than the reading itself is no ± of one.
    if (numberOf(around) >= Math.abs(numberOf(number))) return cell;
    count += 1;
    const rest = text.length - value.length - unit.length;
    return cell.replace(text, () => `${value}${' '.repeat(rest)}${unit}`);
  });
  if (count === 0) return { table, evidence: [] };
  const said = `${count} ${count === 1 ? 'reading states' : 'readings state'} a ±: the value is read, its ± is not`;
  return { table: bare, evidence: [said] };
}

/** The table with cells of these columns written otherwise. */
export function rewrittenCells(
  table: Table,
  columns: readonly number[],
  write: (cell: string) => string,
): Table {
  const rows = table.rows.map((row) => {
    const cells = [...row.cells];
    for (const column of columns) {
      const cell = cells[column];
      if (cell !== undefined) cells[column] = write(cell);
    }
    return { ...row, cells };
  });
  return { ...table, rows };
}
