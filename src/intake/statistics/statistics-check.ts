/**
 * The statistics a file states of its readings, held against the readings themselves.
 *
 * They are the best witness there is: a mean that its readings do not give tells of a reading that
 * is missing, or of a decimal mark taken wrongly. Which readings a statistic is of is not written,
 * so all that it may be of are tried, and only a value that none of them gives is told.
 */
import { mean as meanOf } from '../../base/stats/summary.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';
import { statisticOfTotals, type Totals, totalsWith } from './earlier-totals.ts';
import type { Statistic } from './statistic-vocabulary.ts';

/** A number of the file that is said to be a statistic of one of several groups of readings. */
export type Claim = {
  readonly table: Pick<Table, 'source' | 'delimiter'>;
  readonly row: Row;
  readonly column: number;
  readonly text: string;
  readonly statistic: Statistic;
  readonly groups: readonly (readonly string[])[];
};

const names: Partial<Record<Statistic, string>> = {
  mean: 'mean',
  median: 'median',
  deviation: 'standard deviation',
  least: 'least value',
  most: 'largest value',
  count: 'count',
  sum: 'sum',
};

/**
 * Off by more than this, the numbers are of another unit or another decimal mark, and the readings cannot be trusted. A
 * reading more or less, or one mistyped, moves the spread of three further than it moves their mean.
 */
const SCALE = 2;
const SCALE_OF_SPREAD = 5;

/** `earlier`: what the pieces of a long file before this one add up to. */
export function checkClaim(claim: Claim, findings: Findings, earlier?: Totals): void {
  const { statistic, text } = claim;
  const shape = numberShape(text);
  const name = names[statistic];
  if (shape === undefined || name === undefined) return;
  const stated = numberOf(shape);
  const answers = answersTo(claim, earlier);
  if (answers.length === 0 || answers.some((answer) => isStated(answer, stated, text))) return;
  const [nearest = Number.NaN] = answers
    .map(({ value }) => value)
    .sort((a, b) => Math.abs(a - stated) - Math.abs(b - stated));
  if (statistic === 'deviation' && withinFactor(stated, nearest, 1.5)) return;
  const isScale = !withinFactor(
    stated,
    nearest,
    statistic === 'deviation' ? SCALE_OF_SPREAD : SCALE,
  );
  const severity = statistic !== 'count' && isScale ? 'error' : 'warning';
  findings.add(severity, 'statistics-disagree', () => ({
    message: `the ${name} in the file, ${text}, disagrees with its readings, which give ${shown(nearest)}`,
    at: placeOf(claim.table, claim.row, claim.column),
    hint: 'is a reading missing or changed, or a decimal mark not what it seems?',
  }));
}

const answersTo = ({ statistic, groups }: Claim, earlier: Totals | undefined): readonly Answer[] =>
  groups.flatMap((group) => [
    ...answersOf(statistic, group),
    ...(earlier === undefined ? [] : answersWithEarlier(statistic, group, earlier)),
  ]);

const isStated = ({ value, rounding }: Answer, stated: number, text: string): boolean =>
  Math.abs(value - stated) <= step(text) / 2 + rounding;

/** Whether the readings give what is claimed of them; undefined where nothing is computed. */
export function agrees(claim: Claim): boolean | undefined {
  const shape = numberShape(claim.text);
  const answers = shape === undefined ? [] : answersTo(claim, undefined);
  if (shape === undefined || answers.length === 0) return undefined;
  return answers.some((answer) => isStated(answer, numberOf(shape), claim.text));
}

const shown = (value: number): string => String(Number(value.toFixed(2)));
const withinFactor = (a: number, b: number, factor: number): boolean =>
  a === b || (a / b < factor && b / a < factor && a / b > 0);

/** No film in any unit: a mark of a gauge, such as 9.9E37, that no statistic is of. */
const largestNumber = 10_000;

export type Answer = { readonly value: number; readonly rounding: number };

/** What a group gives; the readings themselves were rounded before they were written. */
export function answersOf(statistic: Statistic, texts: readonly string[]): readonly Answer[] {
  if (statistic === 'count') return countsOf(texts);
  // `Total;3` counts the readings, or adds them up; `Gesamt;115` is the mean of all.
  if (statistic === 'sum')
    return [...countsOf(texts), ...computed(statistic, texts), ...computed('mean', texts)];
  return computed(statistic, texts);
}

function computed(statistic: Statistic, texts: readonly string[]): readonly Answer[] {
  const numbers = texts.flatMap((text) => {
    const shape = numberShape(text);
    const value = shape === undefined ? Number.NaN : numberOf(shape);
    return Math.abs(value) <= largestNumber ? [{ value, step: step(text) }] : [];
  });
  if (numbers.length === 0) return [];
  const rounding = numbers.reduce((most, number) => Math.max(most, number.step), 0) / 2 + 1e-9;
  const all = numbers.map(({ value }) => value);
  const films = all.filter((value) => value > 0);
  return [all, films].flatMap((values) =>
    values.length === 0
      ? []
      : valuesOfStatistic(statistic, values).map((value) => ({
          value,
          rounding: statistic === 'sum' ? rounding * values.length : rounding,
        })),
  );
}

/** The same of the earlier pieces and a group of this one; half a digit of it is all that rounding explains. */
function answersWithEarlier(
  statistic: Statistic,
  texts: readonly string[],
  earlier: Totals,
): readonly Answer[] {
  const filled = texts.filter((text) => text !== '');
  const values = filled.flatMap((text) => {
    const shape = numberShape(text);
    const value = shape === undefined ? 0 : numberOf(shape);
    return value > 0 && value <= largestNumber ? [value] : [];
  });
  const all = totalsWith(earlier, values, filled.length - values.length);
  return statisticOfTotals(statistic, all).map((value) => ({ value, rounding: 1e-6 }));
}

function countsOf(texts: readonly string[]): readonly Answer[] {
  const filled = texts.filter((text) => text !== '');
  const numbers = filled.filter((text) => numberShape(text) !== undefined);
  const films = numbers.filter((text) => {
    const shape = numberShape(text);
    return shape !== undefined && numberOf(shape) > 0;
  });
  return [filled, numbers, films].map(({ length }) => ({ value: length, rounding: 1e-9 }));
}

function valuesOfStatistic(statistic: Statistic, values: readonly number[]): readonly number[] {
  const sorted = [...values].sort((a, b) => a - b);
  const mean = meanOf(values);
  switch (statistic) {
    case 'mean':
      return [mean];
    case 'least':
      return sorted.slice(0, 1);
    case 'most':
      return sorted.slice(-1);
    case 'sum':
      return [mean * values.length];
    case 'median':
      return [((sorted[(values.length - 1) >> 1] ?? 0) + (sorted[values.length >> 1] ?? 0)) / 2];
    case 'deviation': {
      if (values.length < 2) return [];
      const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
      return [Math.sqrt(squares / (values.length - 1)), Math.sqrt(squares / values.length)];
    }
    default:
      return [];
  }
}

/** One unit of the last digit written: 0.1 for `101,5`. */
export function step(text: string): number {
  const shape = numberShape(text);
  return shape === undefined ? 1 : 10 ** -shape.fraction.length;
}
