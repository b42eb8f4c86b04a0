/**
 * The one unit of a file's readings: from the header of their columns, a line above it, a column of
 * units, the cells, or an option.
 *
 * Statements that contradict each other are refused: a wrong unit is a factor of 25.4.
 */
import { error, found, type Outcome, type Place, refused } from '../base/diagnostics.ts';
import { numberShape } from './numbers.ts';
import type { Table } from './table.ts';
import { cellSpan, type Row } from './tokens.ts';
import { type NamedUnit, type ReadingUnit, unitNamed, unitSign } from './unit.ts';
import { meansNoReading } from './words.ts';

export type UnitDecision = { readonly unit: ReadingUnit; readonly evidence: string };

/** One place of the file that names a unit, or a word where a unit should stand. */
type Statement = {
  readonly unit: NamedUnit | undefined;
  readonly text: string;
  readonly at: () => Place;
  readonly evidence: string;
};

/** `above` are the rows before the header, where a device may name the unit. */
export function decideUnit(
  table: Table,
  header: Row,
  above: readonly Row[],
  texts: ReadonlyMap<string, number>,
  given: ReadingUnit | undefined,
): Outcome<UnitDecision> {
  let stated: { readonly unit: ReadingUnit; readonly evidence: string } | undefined;
  const statements = [
    ...statedByHeader(table, header),
    ...statedAbove(table, above),
    ...statedByColumn(table),
  ];
  for (const { unit, text, at, evidence } of statements) {
    if (unit === undefined || unit === 'other') {
      const message = `"${text}" is not a unit of film thickness`;
      const hint = 'readings are taken in µm or mil';
      return refused(error('unit-unknown', message, { at: at(), hint }));
    }
    const before = stated?.unit ?? given;
    if (before !== undefined && before !== unit) {
      const other = stated === undefined ? 'the unit asked for is' : stated.evidence;
      const message = `"${text}" says ${unitSign[unit]}, ${other} ${unitSign[before]}`;
      return refused(error('unit-conflict', message, { at: at() }));
    }
    stated ??= { unit, evidence };
  }
  if (stated !== undefined) {
    const { unit, evidence } = stated;
    return found({ unit, evidence: `${evidence} ${unitSign[unit]}` });
  }
  if (given !== undefined) return found({ unit: given, evidence: `${unitSign[given]} as asked` });
  const inCells = unitOfCells(texts);
  if (inCells !== undefined) {
    return found({ unit: inCells, evidence: `every reading is followed by ${unitSign[inCells]}` });
  }
  return refused(
    error('unit-missing', 'nothing says whether the readings are in µm or mil', {
      at: placeOf(table, header, table.layout.readings[0]?.column ?? 0),
      hint: `--reading-unit ${namesMil(texts) ? 'mil' : 'um'}`,
    }),
  );
}

function placeOf({ source, delimiter }: Table, row: Row, column: number): Place {
  const { offset, length } = cellSpan(source, row, column, delimiter);
  return source.placeAt(offset, length);
}

const statedByHeader = (table: Table, header: Row): readonly Statement[] =>
  table.layout.readings.flatMap(({ column }) => {
    const cell = table.layout.header[column];
    if (cell?.unit === undefined) return [];
    const text = cell.unit === 'other' ? (cell.unitText ?? cell.text) : cell.text;
    const at = () => placeOf(table, header, column);
    return [{ unit: cell.unit, text, at, evidence: 'the header says' }];
  });

/** `Unit,mil` or `Units: µm` in a line of its own. */
const statedAbove = (table: Table, above: readonly Row[]): readonly Statement[] =>
  above.flatMap((row) => {
    const line = row.cells.join(' ').trim();
    const text = /^(?:\w+ )?units?[\s:=,;]+([^\s:=,;]+)$/iu.exec(line)?.[1];
    if (text === undefined) return [];
    const column = row.cells.findLastIndex((cell) => cell.trim() !== '');
    const at = () => placeOf(table, row, column);
    return [{ unit: unitNamed(text), text, at, evidence: `line ${row.line} says` }];
  });

/** What a column of units says, each text once. */
function statedByColumn(table: Table): readonly Statement[] {
  const column = table.layout.columns.get('unit');
  if (column === undefined) return [];
  const firsts = new Map<string, Row>();
  for (const row of table.rows) {
    const text = (row.cells[column] ?? '').trim();
    if (!meansNoReading(text) && !firsts.has(text)) firsts.set(text, row);
  }
  const evidence = `the column "${table.layout.header[column]?.text ?? ''}" says`;
  return [...firsts].map(([text, row]) => {
    const at = () => placeOf(table, row, column);
    return { unit: unitNamed(text), text, at, evidence };
  });
}

/** Whether some cell among the readings names mil: not proof enough, but a likely option. */
const namesMil = (texts: ReadonlyMap<string, number>): boolean =>
  [...texts.keys()].some(
    (text) => (unitNamed(text) ?? unitNamed(numberShape(text)?.suffix ?? '')) === 'mil',
  );

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
