/**
 * What the earlier pieces of a long file add up to: a statistic at its end is of all of them, and only the
 * last piece is at hand when it is read. A median cannot be carried on so.
 */
import type { Reading } from '../../film/reading.ts';
import { micrometresPer, type TableUnit } from '../cells/unit.ts';
import type { Statistic } from './statistic-vocabulary.ts';

/** In the unit of the file. */
export type Totals = {
  readonly count: number;
  /** Cells that gave no reading: a program may have counted them. */
  readonly excluded: number;
  readonly sum: number;
  readonly squares: number;
  readonly least: number;
  readonly most: number;
};

export const noTotals: Totals = {
  ...{ count: 0, excluded: 0, sum: 0, squares: 0 },
  ...{ least: Number.POSITIVE_INFINITY, most: Number.NEGATIVE_INFINITY },
};

export function totalsWith(before: Totals, values: readonly number[], left: number): Totals {
  let { sum, squares, least, most } = before;
  for (const value of values) {
    sum += value;
    squares += value ** 2;
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  const count = before.count + values.length;
  return { count, excluded: before.excluded + left, sum, squares, least, most };
}

export const valuesIn = (readings: readonly Reading[], unit: TableUnit): readonly number[] =>
  readings.map(({ thickness }) => thickness / micrometresPer[unit]);

/** What a statistic of all of them may be. */
export function statisticOfTotals(
  statistic: Statistic,
  { count, excluded, sum, squares, least, most }: Totals,
): readonly number[] {
  const centre = sum / count;
  const spread = Math.max(0, squares - count * centre ** 2);
  switch (statistic) {
    case 'mean':
      return [centre];
    case 'least':
      return [least];
    case 'most':
      return [most];
    case 'sum':
      return [sum];
    case 'count':
      return [count, count + excluded];
    case 'deviation':
      return count < 2 ? [] : [Math.sqrt(spread / (count - 1)), Math.sqrt(spread / count)];
    default:
      return [];
  }
}
