/**
 * The unit of a table's readings: from the header of their columns, a row of units under it, a line
 * above, a column of units, the cells, or an option. Millimetres and inches must be proved by the
 * numbers as well.
 *
 * Statements about one thing that contradict each other are refused: a wrong unit is a factor of
 * 25.4. A column of units may name one unit in one row and another in the next, and is then obeyed
 * row by row.
 */

import {
  error,
  found,
  type Outcome,
  type Place,
  refused,
  warning,
} from '../../base/diagnostics.ts';
import type { Micrometres } from '../../base/units.ts';
import { factorSentence, isCoarse, whyNotCoarse } from '../cells/coarse-units.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import {
  isLostMicro,
  largestIn,
  micrometresPer,
  type NamedUnit,
  otherUnitHint,
  type TableUnit,
  unitNamed,
  unitSign,
} from '../cells/unit.ts';
import { ditto, meansNoReading } from '../cells/words.ts';
import type { UnitLine } from '../parts/section-state.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';
import { fitsOtherUnit, isSlipOfUnit, sizesOf } from './size-in-units.ts';
import { unitsByColumn, unitsByColumnSentence } from './units-by-column.ts';
import { headOf, type UnitDecision, unitOfCells } from './units-in-cells.ts';
import { unitTextAt } from './units-row.ts';

/** One place of the file that names a unit, or a word where a unit should stand. */
type Statement = {
  readonly unit: NamedUnit | undefined;
  readonly text: string;
  readonly at: () => Place;
  readonly evidence: string;
  /** `0.001 mm`: µm, or how finely a gauge reads millimetres. */
  readonly factored?: true;
};

/** Where a table's unit may be named besides the table itself. */
export type UnitSources = {
  readonly above: readonly UnitLine[];
  /** The last line of the table before, 0 for the first. */
  readonly since: number;
  readonly unitsRow: Row | undefined;
  readonly texts: ReadonlyMap<string, number>;
  readonly given: TableUnit | undefined;
  /** More than this no gauge for vehicle paint shows. */
  readonly largest: Micrometres;
  /** The middle of a column of film lies between them. */
  readonly film: { readonly least: Micrometres; readonly most: Micrometres };
};

export function decideUnit(table: Table, sources: UnitSources): Outcome<UnitDecision> {
  const { texts, given } = sources;
  const elsewhere = [
    ...statedByHeader(table),
    ...statedByUnitsRow(table, sources.unitsRow),
    ...statedAbove(table, sources),
  ];
  const inColumn = statedByColumn(table);
  const columns = given === undefined ? unitsByColumn(table, sources.film) : undefined;
  if (columns !== undefined && elsewhere.length + inColumn.length === columns.size) {
    const evidence = unitsByColumnSentence(table, columns);
    const unit = columns.get(table.layout.readings[0]?.column ?? -1) ?? 'um';
    return found({ unit, evidence, byRow: false, byColumn: columns, cellsNameUnits: false });
  }
  const mixed = elsewhere.length === 0 && given === undefined && namesBoth(inColumn);
  const stated = agreed([...elsewhere, ...inColumn], given, mixed);
  if (stated.value === undefined) return refused(...stated.diagnostics);
  const [first] = stated.value;
  if (first !== undefined) {
    const { unit } = first;
    const nameless = elsewhere.length === 0 && given === undefined && !mixed;
    const doubted = nameless ? unitlessOfOtherSize(table, unit) : undefined;
    if (doubted !== undefined) return refused(doubted);
    const evidence = mixed
      ? `${first.evidence} ${unitsOf(stated.value)}, each row is read in its own`
      : `${first.evidence} ${unitSign[unit]}${factorSentence(unit)}`;
    const decision = { unit, evidence, byRow: mixed, cellsNameUnits: false };
    // A row in mm proves itself: see `unitOfRow`.
    if (mixed) return ofTwoUnits(table, decision);
    const factor = stated.value.find(({ factored }) => factored === true);
    if (factor !== undefined && !isFilm(sources, unit)) {
      return refused(noUnit(factor.text, factor.at()));
    }
    return provedByNumbers(decision, first.at, sources);
  }
  const atHead = () => headOf(table);
  if (given !== undefined) {
    const evidence = `${unitSign[given]} as asked${factorSentence(given)}`;
    const decision = { unit: given, evidence, byRow: false, cellsNameUnits: false };
    return provedByNumbers(decision, atHead, sources);
  }
  const inCells = unitOfCells(table, texts);
  return inCells.value === undefined ? inCells : provedByNumbers(inCells.value, atHead, sources);
}

/**
 * A row without a unit in a column of units, whose number is like those of the other rows in the other
 * unit only. One that is like them as it stands is taken to be in theirs.
 */
function unitlessOfOtherSize({ layout, rows, ...table }: Table, unit: TableUnit) {
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
function ofTwoUnits(table: Table, decision: UnitDecision): Outcome<UnitDecision> {
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

/** Millimetres and inches are believed only where the numbers can be nothing else. */
function provedByNumbers(
  decision: UnitDecision,
  at: () => Place,
  { texts, largest }: UnitSources,
): Outcome<UnitDecision> {
  const { unit } = decision;
  const why = isCoarse(unit) ? whyNotCoarse(texts, unit, largestIn(unit, largest)) : undefined;
  if (why === undefined) return found(decision);
  return refused(error('unit-unknown', why.message, { at: at(), hint: why.hint }));
}

/** Whether the middle of the numbers is a film in the unit. */
function isFilm({ texts, film }: UnitSources, unit: TableUnit): boolean {
  const numbers = [...texts].flatMap(([text, count]) => {
    const shape = numberShape(text);
    return shape === undefined
      ? []
      : Array.from({ length: Math.min(count, 1000) }, () => numberOf(shape));
  });
  const middle = numbers.toSorted((a, b) => a - b)[numbers.length >> 1];
  if (middle === undefined) return false;
  const um = middle * micrometresPer[unit];
  return um >= film.least && um <= film.most;
}

/** `µm in some rows and mil in others`. */
function unitsOf(known: readonly Known[]): string {
  const [first = '', ...others] = new Set(known.map(({ unit }) => unitSign[unit]));
  return `${first} in some rows and ${others.join(' or ')} in others`;
}

type Known = Statement & { readonly unit: TableUnit };

/** The statements, or the first that is no unit or contradicts one before it. */
function agreed(
  statements: readonly Statement[],
  given: TableUnit | undefined,
  mixed: boolean,
): Outcome<readonly Known[]> {
  const known: Known[] = [];
  for (const statement of statements) {
    const { unit, text, at } = statement;
    if (unit === undefined && isLostMicro(text) && given !== undefined) continue;
    if (unit === undefined || unit === 'other') return refused(noUnit(text, at()));
    const [first] = known;
    const before = first?.unit ?? given;
    if (before !== undefined && before !== unit && !mixed) {
      const other = first === undefined ? 'the unit asked for is' : first.evidence;
      const message = `"${text}" says ${unitSign[unit]}, ${other} ${unitSign[before]}`;
      const hint = 'name one unit, the right one, in one place';
      return refused(error('unit-conflict', message, { at: at(), hint }));
    }
    known.push({ ...statement, unit });
  }
  return found(known);
}

const noUnit = (text: string, at: Place) =>
  error('unit-unknown', `"${text}" is not a unit of film thickness`, {
    at,
    hint: otherUnitHint(text),
  });

const namesBoth = (statements: readonly Statement[]): boolean =>
  statements.every(({ unit }) => unit !== undefined && unit !== 'other') &&
  new Set(statements.map(({ unit }) => unit)).size > 1;

function statedByHeader(table: Table): readonly Statement[] {
  const stated = statedByNames(
    table,
    table.layout.readings.map(({ column }) => column),
  );
  const { columns, kind } = table.layout;
  const corner = columns.get('panel') ?? (kind === 'wide' ? columns.get('point') : undefined);
  // `Panel (µm)`, the corner of the table: a panel has no unit, the readings beside it have.
  return stated.length > 0 || corner === undefined ? stated : statedByNames(table, [corner]);
}

const statedByNames = (table: Table, columns: readonly number[]): readonly Statement[] =>
  columns.flatMap((column): readonly Statement[] => {
    // Keys of values stand in every row.
    const row = table.header ?? table.rows[0];
    const cell = table.layout.header[column];
    if (row === undefined || cell?.unit === undefined) return [];
    const at = () => placeOf(table, row, column);
    const known = cell.unit === 'um' || cell.unit === 'mil';
    const text = known ? cell.text : (cell.unitText ?? cell.text);
    if (known && /\d/u.test(cell.unitText ?? '')) {
      const evidence = `the header says ${cell.unitText}, which is`;
      return [{ unit: cell.unit, text: cell.unitText ?? '', at, evidence, factored: true }];
    }
    return [{ unit: cell.unit, text, at, evidence: 'the header says' }];
  });

const statedByUnitsRow = (table: Table, units: Row | undefined): readonly Statement[] =>
  units === undefined
    ? []
    : table.layout.readings.flatMap(({ column }) => {
        const { text, column: named } = unitTextAt(units, column);
        if (meansNoReading(text)) return [];
        const at = () => placeOf(table, units, named);
        return [
          { unit: unitNamed(text), text, at, evidence: `the units in line ${units.line} say` },
        ];
      });

/**
 * `Unit,mil` or `Units: µm` in a line of its own: those since the table before, else the last one above. Two
 * that no table parts are said of one and the same.
 */
function statedAbove(table: Table, { above, since }: UnitSources): readonly Statement[] {
  const first = table.rows[0]?.line ?? 0;
  const before = above.filter(({ row, ofAll }) => ofAll === true || row.line < first);
  const own = before.filter(({ row }) => row.line > since);
  return (own.length > 0 ? own : before.slice(-1)).map(({ row, saying }) => ({
    unit: unitNamed(saying.value),
    text: saying.value,
    at: () => placeOf(table, row, saying.column),
    evidence: `line ${row.line} says`,
  }));
}

/** What a column of units says, each text once. */
function statedByColumn(table: Table): readonly Statement[] {
  const column = table.layout.columns.get('unit');
  if (column === undefined) return [];
  const firsts = new Map<string, Row>();
  for (const row of table.rows) {
    const text = cellText(row, column);
    if (!firsts.has(text) && !meansNoReading(text) && !ditto.test(text)) firsts.set(text, row);
  }
  const name = table.layout.header[column]?.text;
  const evidence = name === undefined ? 'the numbers are followed by' : `the column "${name}" says`;
  return [...firsts].map(([text, row]) => {
    const at = () => placeOf(table, row, column);
    return { unit: unitNamed(text), text, at, evidence };
  });
}
