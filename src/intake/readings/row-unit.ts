/** The unit that a row names for itself, in a table whose rows name different ones. */
import { numberOf, numberShape } from '../cells/numbers.ts';
import { provesOwnUnit } from '../cells/own-unit.ts';
import { otherUnitHint, type TableUnit, unitNamed, unitSign } from '../cells/unit.ts';
import type { Findings } from '../findings.ts';
import { cellText, type Row } from '../rows/row.ts';
import { placeOf, type Table } from '../tables/table.ts';

export function unitOfRow(row: Row, table: Table, findings: Findings): TableUnit | undefined {
  const column = table.layout.columns.get('unit') ?? 0;
  const named = unitNamed(row.cells[column] ?? '');
  if (named === 'um' || named === 'mil') return named;
  if (named !== undefined && named !== 'other') {
    if (provedInRow(row, table, named)) return named;
    findings.add('error', 'unit-unknown', () => ({
      message: `the row is in ${unitSign[named]}, and its number is no paint in it`,
      at: placeOf(table, row, column),
      hint: otherUnitHint(row.cells[column] ?? ''),
    }));
    return undefined;
  }
  findings.add('error', 'unit-missing', () => ({
    message: 'the row names no unit, and other rows name different ones',
    at: placeOf(table, row, column),
    hint: 'write um or mil in the row',
  }));
  return undefined;
}

/** Millimetres and inches in a row of their own: every number of it must be paint in them. */
const provedInRow = (row: Row, { layout }: Table, unit: TableUnit): boolean =>
  layout.readings.every(({ column }) => {
    const shape = numberShape(cellText(row, column));
    return shape === undefined || provesOwnUnit(numberOf(shape), unit, 'um');
  });
