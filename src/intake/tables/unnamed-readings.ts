/**
 * Columns of readings that have no name of their own: a header `Panel;Readings;;;`, its cells
 * merged in a spreadsheet, or rows that go on beyond the header.
 *
 * Numbers to the right of the last column of readings are further readings where most rows have
 * them, where they are as large as those and could not be the decimals of the number before them.
 * It is told, for nothing but their size says so. Else nothing is taken: a number that only one row has there may be
 * anything. Under a comma as delimiter
 * `115,91,122,74,127` below four names may be five readings, or four of which one has a decimal comma.
 */

import { numberOf, numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import type { ReadingColumn } from '../header/layout.ts';
import { cellText } from '../rows/row.ts';
import { placeOf, type Table, widest } from './table.ts';

export function adoptUnnamedReadings(
  table: Table,
  findings: Findings,
): { readonly table: Table; readonly evidence: string } | undefined {
  const { layout, rows } = table;
  const last = layout.readings.at(-1);
  if (last === undefined || layout.kind === 'wide' || layout.header.length === 0) return undefined;
  const width = widest(rows);
  const further: number[] = [];
  for (let column = last.column + 1; column < width; column += 1) {
    if (layout.unknown.includes(column)) continue;
    const named = layout.header[column];
    if (named !== undefined && (named.text !== '' || named.unit !== undefined)) return undefined;
    const numbers = numbersOf(table, column);
    if (numbers === undefined) return undefined;
    if (numbers.length > 0) further.push(column);
  }
  const [next] = further;
  if (next === undefined) return undefined;
  const first = numbersOf(table, next) ?? [];
  if (next !== last.column + 1 || first.length * 3 < rows.length * 2 || rows.length < 2) {
    return undefined;
  }
  if (mayBeDecimals(table) || !areReadings(table, last.column, further)) return undefined;
  const columns = [...layout.readings.map(({ column }) => column), ...further];
  const readings = columns.map(
    (column, k): ReadingColumn => ({ column, panel: null, number: k + 1 }),
  );
  const header = [...layout.header];
  for (let k = header.length; k < width; k += 1) header.push({ text: '', label: '' });
  const kind = layout.kind === 'blocks' ? 'blocks' : 'repeats';
  tellAdopted(table, further, findings);
  return {
    table: { ...table, layout: { ...layout, kind, header, readings } },
    evidence: 'columns without a name beside the readings hold further readings as large',
  };
}

function tellAdopted(table: Table, further: readonly number[], findings: Findings): void {
  const [first = 0] = further;
  const { header, rows } = table;
  const row = header?.cells[first] === undefined ? rows.find(({ cells }) => cells[first]) : header;
  if (row === undefined) return;
  const last = further.at(-1) ?? first;
  const one = `column ${first + 1} has no name: its numbers are`;
  const several = `columns ${first + 1} to ${last + 1} have no name: their numbers are`;
  findings.add('warning', 'column-unnamed', () => ({
    message: `${last === first ? one : several} as large as the readings and read as further ones`,
    at: placeOf(table, row, first),
    hint: 'if they are something else, name it so or take it out; else call the columns reading 1, reading 2 …',
  }));
}

/**
 * Whether no row has more cells beyond the names than there are named readings: each of them may be the decimals
 * of one. A decimal point or a quoted cell shows that the file writes its decimals otherwise. One name alone may
 * be merged over the cells behind it; of several each has its own.
 */
function mayBeDecimals({ delimiter, layout, rows }: Table): boolean {
  const [first, second] = layout.readings;
  const named = layout.header.findLastIndex(({ text }) => text !== '') + 1;
  const isMerged = second === undefined && layout.header.length > named;
  if (delimiter !== ',' || isMerged) return false;
  return rows.every(({ cells, quoted }) => {
    const beyond = cells.findLastIndex((cell) => cell.trim() !== '') + 1 - named;
    const pointed = cells.slice(first?.column).some((cell) => cell.includes('.'));
    return !quoted && !pointed && beyond <= layout.readings.length;
  });
}

/** The numbers of a column, or undefined if it holds anything else. */
function numbersOf({ rows }: Table, column: number): readonly string[] | undefined {
  const texts = rows.map((row) => cellText(row, column)).filter((text) => text !== '');
  return texts.every((text) => numberShape(text) !== undefined) ? texts : undefined;
}

/** Whether numbers are as large as the readings, and no decimals of them. */
function areReadings(table: Table, first: number, further: readonly number[]): boolean {
  const texts = further.flatMap((column) => numbersOf(table, column) ?? []);
  if (table.delimiter === ',' && texts.some((text) => /^(?:\d{1,2}|0\d*)$/u.test(text)))
    return false;
  const own = middle(numbersOf(table, first) ?? []);
  return further.every((column) => {
    const ratio = middle(numbersOf(table, column) ?? []) / own;
    return ratio > 0.5 && ratio < 2;
  });
}

function middle(texts: readonly string[]): number {
  const values = texts.flatMap((text) => numberShape(text) ?? []).map(numberOf);
  return values.sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}
