/**
 * The one unit of a file's readings: from the header of their columns, the cells, or an option.
 *
 * Statements that contradict each other are refused: a wrong unit is a factor of 25.4.
 */
import { error, found, type Outcome, refused } from '../base/diagnostics.ts';
import { numberShape } from './numbers.ts';
import type { Table } from './readings.ts';
import { cellSpan, type Row } from './tokens.ts';
import { type ReadingUnit, unitNamed, unitSign } from './unit.ts';

export type UnitDecision = { readonly unit: ReadingUnit; readonly evidence: string };

export function decideUnit(
  table: Table,
  header: Row,
  texts: ReadonlyMap<string, number>,
  given: ReadingUnit | undefined,
): Outcome<UnitDecision> {
  const { source, delimiter, layout } = table;
  const at = (column: number) => {
    const { offset, length } = cellSpan(source, header, column, delimiter);
    return source.placeAt(offset, length);
  };
  let stated: ReadingUnit | undefined;
  for (const { column } of layout.readings) {
    const cell = layout.header[column];
    if (cell?.unit === undefined) continue;
    if (cell.unit === 'other') {
      const message = `"${cell.unitText ?? cell.text}" is not a unit of film thickness`;
      const hint = 'readings are taken in µm or mil';
      return refused(error('unit-unknown', message, { at: at(column), hint }));
    }
    const before = stated ?? given;
    if (before !== undefined && before !== cell.unit) {
      const other = stated === undefined ? 'the unit asked for' : 'a column before';
      const message = `"${cell.text}" is in ${unitSign[cell.unit]}, ${other} is ${unitSign[before]}`;
      return refused(error('unit-conflict', message, { at: at(column) }));
    }
    stated = cell.unit;
  }
  if (stated !== undefined) {
    return found({ unit: stated, evidence: `the header says ${unitSign[stated]}` });
  }
  if (given !== undefined) return found({ unit: given, evidence: `${unitSign[given]} as asked` });
  const inCells = unitOfCells(texts);
  if (inCells !== undefined) {
    return found({ unit: inCells, evidence: `every reading is followed by ${unitSign[inCells]}` });
  }
  return refused(
    error('unit-missing', 'nothing says whether the readings are in µm or mil', {
      at: at(layout.readings[0]?.column ?? 0),
      hint: '--reading-unit um',
    }),
  );
}

/** The unit written after every number of the column, if it is one and the same. */
function unitOfCells(texts: ReadonlyMap<string, number>): ReadingUnit | undefined {
  let unit: ReadingUnit | undefined;
  for (const text of texts.keys()) {
    const shape = numberShape(text);
    if (shape === undefined) continue;
    const named = unitNamed(shape.suffix);
    if (named === undefined || named === 'other' || (unit ?? named) !== named) return undefined;
    unit = named;
  }
  return unit;
}
