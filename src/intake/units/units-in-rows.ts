/** Rows whose unit a column names, one in µm and the next in mil, or not at all: held against the other rows. */

import { error, found, type Outcome, refused, warning } from '../../base/diagnostics.ts';
import { type TableUnit, unitNamed, unitSign } from '../cells/unit.ts';
import { meansNoReading } from '../cells/words.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';
import { fitsOtherUnit, isSlipOfUnit, sizesOf } from './size-in-units.ts';
import type { UnitDecision } from './units-in-cells.ts';

/**
 * A row without a unit in a column of units, whose number is like those of the other rows in the other
 * unit only. One that is like them as it stands is taken to be in theirs.
 */
export function unitlessOfOtherSize({ layout, rows, ...table }: Table, unit: TableUnit) {
  const column = layout.columns.get('unit') ?? -1;
  const isNamed = (row: Row): boolean => !meansNoReading(cellText(row, column));
  const textsOf = ({ cells }: Row): readonly string[] =>
    layout.readings.map(({ column: k }) => cells[k] ?? '');
  const nameless = rows.filter((row) => !isNamed(row));
  const sizes = nameless.length === 0 ? undefined : sizesOf(rows.filter(isNamed).flatMap(textsOf));
  if (sizes === undefined) return undefined;
  const row = nameless.find((own) => textsOf(own).some((text) => fitsOtherUnit(text, unit, sizes)));
  if (row === undefined) return undefined;
  const other = unitSign[unit === 'um' ? 'mil' : 'um'];
  return error(
    'unit-missing',
    `the row names no unit: the others are in ${unitSign[unit]}, and its number would be like theirs in ${other}`,
    { at: placeOf({ ...table }, row, column), hint: 'write um or mil in the row' },
  );
}

/**
 * Rows in µm among rows in mil, each read in its own. Of `121 mil` among 98 to 119 µm the unit is wrong, or the number:
 * where no row in that unit is like the others the file is refused, else such a row is told.
 */
export function ofTwoUnits(table: Table, decision: UnitDecision): Outcome<UnitDecision> {
  const { layout, rows } = table;
  const column = layout.columns.get('unit') ?? -1;
  const textsOf = ({ cells }: Row): readonly string[] =>
    layout.readings.map(({ column: k }) => cells[k] ?? '');
  const rowsIn = (unit: TableUnit): readonly Row[] =>
    rows.filter((row) => unitNamed(cellText(row, column)) === unit);
  const [fewer, more] = (['um', 'mil'] as const)
    .map((unit) => ({ unit, own: rowsIn(unit) }))
    .sort((a, b) => a.own.length - b.own.length);
  const sizes = more === undefined ? undefined : sizesOf(more.own.flatMap(textsOf));
  if (fewer === undefined || more === undefined || sizes === undefined) return found(decision);
  const doubted = fewer.own.filter((row) =>
    textsOf(row).some((text) => isSlipOfUnit(text, fewer.unit, more.unit, sizes)),
  );
  const [row] = doubted;
  if (row === undefined) return found(decision);
  const at = placeOf(table, row, column);
  const [own, others] = [unitSign[fewer.unit], unitSign[more.unit]];
  const message = `the row says ${own}, in which its number is far from all others: in ${others} it would be like them`;
  const hint = `if the unit is wrong, write ${others} there; else correct the number`;
  return doubted.length === fewer.own.length
    ? refused(error('unit-conflict', message, { at, hint }))
    : found(
        decision,
        doubted.map((each) =>
          warning('reading-doubted', message, { at: placeOf(table, each, column), hint }),
        ),
      );
}
