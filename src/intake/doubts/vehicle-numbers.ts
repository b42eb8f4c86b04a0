/**
 * `Bonnet;Roof;Car` above `112;101;106.5`: behind the panels `Car` may be all of it, a mean, and no name of a vehicle.
 * It is told by its numbers, which all lie among the readings of their rows.
 */
import { numberOf, numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import { cellText, type Row } from '../rows/row.ts';
import { placeOf, type Table } from '../tables/table.ts';

export function doubtVehicleNumbers(table: Table, findings: Findings): void {
  const { layout, rows } = table;
  const column = layout.columns.get('vehicle') ?? -1;
  const [first, second] = layout.readings;
  if (layout.kind !== 'wide' || first === undefined || second === undefined) return;
  if (column < first.column) return;
  const named = (row: Row): boolean => cellText(row, column) !== '';
  const some = rows.find(named);
  if (some === undefined) return;
  const own = layout.readings.map((reading) => reading.column);
  if (!rows.every((row) => !named(row) || liesAmong(row, column, own))) return;
  findings.add('error', 'reading-ambiguous', () => ({
    message: `the numbers under "${layout.header[column]?.text}" lie among the readings of their rows: they may be means, and no names of vehicles`,
    at: placeOf(table, some, column),
    hint: 'if they are means, take the column out; if they name vehicles, move it before those of the panels',
  }));
}

function liesAmong(row: Row, column: number, readings: readonly number[]): boolean {
  const [number] = numbersIn(row, [column]);
  const films = numbersIn(row, readings);
  return number !== undefined && Math.min(...films) <= number && number <= Math.max(...films);
}

const numbersIn = (row: Row, columns: readonly number[]): readonly number[] =>
  columns.flatMap((column) => numberShape(cellText(row, column)) ?? []).map(numberOf);
