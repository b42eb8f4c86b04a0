/**
 * A table separated by commas whose numbers have decimal commas that nobody quoted.
 *
 * `roof,1,101,5` has one cell more than its header for each reading. Where that holds in every row and
 * the part after each whole number is as long as in all others, there is one way left to read the rows if
 *
 * - the parts differ as decimals do: they begin with a 0 now and then, or lie over most of their range. A temperature,
 *   a grade, a humidity in a further cell does neither;
 * - or there are several columns of readings: a further cell would be one, and not as many as they are;
 * - or the columns behind the reading hold what they are called only once the parts are joined: `Jan` under
 *   operator, a panel under panel, points that count from 1.
 *
 * One row that does not fit, and none is read so.
 */

import { numberShape } from '../cells/numbers.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import type { Table } from './table.ts';

const fewestRows = 2;
/** So few rows prove nothing by how their decimals differ. */
const fewestDecimals = 3;

/** The table with its split numbers joined, or undefined where they are not proved to be split. */
export function joinDecimalCommas(
  table: Table,
): { readonly table: Table; readonly evidence: string } | undefined {
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
  const [first = ''] = parts;
  if ([...parts].some(({ length }) => length !== first.length)) return undefined;
  const joined = { ...table, rows: rows.map((row) => joinRow(row, columns)) };
  const byDecimals = rows.length >= fewestDecimals && areDecimals([...parts]);
  if (!byDecimals && columns.length < 2 && !fitsBehind(table, joined)) return undefined;
  return {
    table: joined,
    evidence: 'every row has one cell too many for each reading: unquoted decimal commas, joined',
  };
}

/** The share of their range that parts must lie over: grades from 1 to 6 lie over 0.5. */
const widestOther = 0.5;

function areDecimals(parts: readonly string[]): boolean {
  const [first = ''] = parts;
  if (parts.length < 2) return false;
  const values = parts.map(Number);
  const range = (Math.max(...values) - Math.min(...values)) / 10 ** first.length;
  return range > widestOther || parts.some((part) => part.startsWith('0'));
}

/** Columns whose cells are words, or dates: never a digit or two. */
const wordy: ReadonlySet<GaugeRole | undefined> = new Set([
  ...(['panel', 'operator', 'unit', 'time', 'vehicle', 'substrate', 'status'] as const),
]);

/** Whether what stands behind the reading is at its place only where the parts are joined. */
function fitsBehind(split: Table, joined: Table): boolean {
  const { header, readings } = split.layout;
  const behind = [...header.keys()].filter((k) => k > (readings[0]?.column ?? 0));
  const words = behind.find((k) => wordy.has(header[k]?.role));
  const isNumeral = (table: Table, column: number): boolean =>
    table.rows.every((row) => numberShape(cellText(row, column))?.suffix === '');
  const isWord = (table: Table, column: number): boolean =>
    table.rows.every((row) => {
      const text = cellText(row, column);
      return text !== '' && (numberShape(text) === undefined || numberShape(text)?.suffix !== '');
    });
  if (
    words !== undefined &&
    words === behind[0] &&
    isNumeral(split, words) &&
    isWord(joined, words)
  )
    return true;
  const point = behind.find((k) => header[k]?.role === 'point');
  return (
    point !== undefined && point === behind[0] && countsUp(joined, point) && !countsUp(split, point)
  );
}

/** The points of each panel count from 1, and some panel has two. */
function countsUp({ layout, rows }: Table, column: number): boolean {
  const panelAt = layout.columns.get('panel');
  if (panelAt === undefined) return false;
  const last = new Map<string, number>();
  const counts = rows.every((row) => {
    const panel = cellText(row, panelAt);
    const number = Number(cellText(row, column));
    const next = (last.get(panel) ?? 0) + 1;
    last.set(panel, number);
    return number === next;
  });
  return counts && [...last.values()].some((number) => number > 1);
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
