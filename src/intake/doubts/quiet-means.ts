/**
 * Means that no word gives away: the last number of a row without column names, or a row whose point has
 * no number while the others of its panel are numbered.
 *
 * A number that is the mean of the readings beside it may be a reading by chance. Where it is so on every
 * panel that has one, on three and more, it is a mean: read as a reading it would count the others twice.
 * The file is refused there; on fewer panels it is a doubt, told aloud.
 */

import { groupBy } from '../../base/group-by.ts';
import { readReadingCell } from '../cells/reading-cell.ts';
import type { Findings } from '../findings.ts';
import { startsAsNumber } from '../parts/section-state.ts';
import type { SettledTable } from '../readings/readings.ts';
import { someText } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { isMean } from '../statistics/mean-of.ts';
import { placeOf } from '../tables/table.ts';

/** Panels on which chance does not explain it any more. */
const PROOF = 3;

type Suspect = { readonly row: Row; readonly column: number };

export function tellQuietMeans(tables: readonly SettledTable[], findings: Findings): void {
  for (const settled of tables) {
    const suspects = [...lastOfNamelessRows(settled), ...rowsWithoutPoint(settled)];
    const [first] =
      suspects.length > 0 ? suspects : [...meanOfAll(settled), ...lastOfNamedColumns(settled)];
    if (first === undefined) continue;
    const count = suspects.length;
    const panels = count < 2 ? 'one panel' : `all ${count} panels that have one`;
    const [severity, code, hint] =
      count >= PROOF
        ? ([
            'error',
            'statistics-unnamed',
            'take the means out, or name their column or row',
          ] as const)
        : (['warning', 'statistics-unnamed', 'if it is a mean, take it out'] as const);
    findings.add(severity, code, () => ({
      message: `a number without a name of its own is the mean of the readings beside it${count === 0 ? '' : `, on ${panels}`}`,
      at: placeOf(settled.table, first.row, first.column),
      hint,
    }));
  }
}

/** Every one of them, or none: a single row that is otherwise is a row of readings. */
function lastOfNamelessRows({ table, rules }: SettledTable): readonly Suspect[] {
  const columns = table.layout.readings.map(({ column }) => column);
  const last = columns.at(-1);
  if (table.header !== undefined || columns.length < 3 || last === undefined) return [];
  const told = table.rows.map((row) => {
    const values = columns.map((column) => thicknessOf(row, column, rules));
    return isMean(values.at(-1), values.slice(0, -1)) ? [{ row, column: last }] : [];
  });
  return told.every((one) => one.length > 0) ? told.flat() : [];
}

function rowsWithoutPoint({ table, rules }: SettledTable): readonly Suspect[] {
  const { columns, readings, kind } = table.layout;
  const [pointAt, panelAt] = [columns.get('point'), columns.get('panel')];
  const [reading] = readings;
  if (kind !== 'long' || pointAt === undefined || panelAt === undefined) return [];
  if (reading === undefined) return [];
  const numbered = someText(table.rows, pointAt, startsAsNumber);
  const isName = (point: string): boolean => (numbered ? startsAsNumber(point) : point !== '');
  if (!someText(table.rows, pointAt, (point) => !isName(point))) return [];
  const named = (row: Row): boolean => isName(cellText(row, pointAt));
  const groups = groupBy(table.rows, (row) => cellText(row, panelAt));
  const told = [...groups.values()].flatMap((rows) => {
    const without = rows.filter((row) => !named(row));
    const [only] = without;
    if (only === undefined) return [];
    const others = rows.filter(named).map((row) => thicknessOf(row, reading.column, rules));
    const mean = without.length === 1 && isMean(thicknessOf(only, reading.column, rules), others);
    return [mean ? { row: only, column: reading.column } : undefined];
  });
  return told.every((one) => one !== undefined) ? told.flatMap((one) => one ?? []) : [];
}

/** The last of several columns of readings, where it is the mean of the others in every row. */
function lastOfNamedColumns({ table, rules }: SettledTable): readonly Suspect[] {
  const { header, layout, rows } = table;
  const columns = layout.readings.map(({ column }) => column);
  const last = columns.at(-1);
  if (header === undefined || layout.kind !== 'repeats' || columns.length < 4) return [];
  const own = rows.map((row) => columns.map((column) => thicknessOf(row, column, rules)));
  const all = own.length >= PROOF && own.every((row) => isMean(row.at(-1), row.slice(0, -1)));
  return all && last !== undefined ? [{ row: header, column: last }] : [];
}

/** The last row, without a point where all others have one, and the mean of them all. */
function meanOfAll({ table, rules }: SettledTable): readonly Suspect[] {
  const { columns, readings, kind } = table.layout;
  const [pointAt, [reading]] = [columns.get('point'), readings];
  const last = table.rows.at(-1);
  if (kind !== 'long' || pointAt === undefined || reading === undefined || last === undefined)
    return [];
  const hasPoint = (row: Row): boolean => cellText(row, pointAt) !== '';
  const others = table.rows.slice(0, -1);
  if (hasPoint(last) || !others.every(hasPoint)) return [];
  const values = others.map((row) => thicknessOf(row, reading.column, rules));
  const mean = isMean(thicknessOf(last, reading.column, rules), values);
  return mean ? [{ row: last, column: reading.column }] : [];
}

function thicknessOf(row: Row, column: number, rules: SettledTable['rules']): number | undefined {
  const told = readReadingCell(cellText(row, column), rules);
  return told.kind === 'reading' ? told.thickness : undefined;
}
