/**
 * The unit of a table's readings: from the header of their columns, a row of units under it, a line
 * above, a column of units, the cells, or an option. Millimetres and inches must be proved by the
 * numbers as well.
 *
 * Statements about one thing that contradict each other are refused: a wrong unit is a factor of
 * 25.4. A column of units may name one unit in one row and another in the next, and is then obeyed
 * row by row.
 */

import { error, found, type Outcome, type Place, refused } from '../../base/diagnostics.ts';
import type { Micrometres } from '../../base/units.ts';
import { factorSentence, isCoarse, whyNotCoarse } from '../cells/coarse-units.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import {
  isLostMicro,
  largestIn,
  micrometresPer,
  otherUnitHint,
  type TableUnit,
  unitNamed,
  unitSign,
} from '../cells/unit.ts';
import type { Claim } from '../statistics/statistics-check.ts';
import type { Table } from '../tables/table.ts';
import { unitOfStatistics } from './unit-of-statistics.ts';
import {
  type Statement,
  statedByColumn,
  statedElsewhere,
  type UnitPlaces,
} from './unit-statements.ts';
import { unitsByColumn, unitsByColumnSentence } from './units-by-column.ts';
import { headOf, type UnitDecision, unitOfCells } from './units-in-cells.ts';
import { ofTwoUnits, unitlessOfOtherSize } from './units-in-rows.ts';

/** Where a table's unit may be named besides the table itself. */
export type UnitSources = UnitPlaces & {
  readonly texts: ReadonlyMap<string, number>;
  /** The statistics beside the readings. */
  readonly claims: readonly Claim[];
  readonly given: TableUnit | undefined;
  /** More than this no gauge for vehicle paint shows. */
  readonly largest: Micrometres;
  /** The middle of a column of film lies between them. */
  readonly film: { readonly least: Micrometres; readonly most: Micrometres };
};

export function decideUnit(table: Table, sources: UnitSources): Outcome<UnitDecision> {
  const { texts, given, claims } = sources;
  const elsewhere = statedElsewhere(table, sources);
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
  if (inCells.value !== undefined) return provedByNumbers(inCells.value, atHead, sources);
  const { unit, name } = namesNoUnit(texts) ? (unitOfStatistics(table, claims) ?? none) : none;
  if (unit === undefined) return inCells;
  const evidence = `"${name}" is in ${unitSign[unit]}, and the readings give its numbers: they are in`;
  return found({
    ...{ unit, evidence: `${evidence} ${unitSign[unit]}` },
    ...{ byRow: false, cellsNameUnits: false },
  });
}

const none = { unit: undefined, name: '' };

const namesNoUnit = (texts: ReadonlyMap<string, number>): boolean =>
  [...texts.keys()].every((text) => unitNamed(numberShape(text)?.suffix ?? '') === undefined);

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
