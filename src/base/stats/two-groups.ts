/** A sample seen as two groups of values. */
import { ckmeans } from 'simple-statistics';
import { at } from '../at.ts';

export type TwoGroups = { readonly lower: readonly number[]; readonly upper: readonly number[] };

/**
 * The cut into two groups with the least sum of squares within them: optimal one-dimensional k-means
 * (Wang & Song 2011, The R Journal 3(2):29). Undefined where all values are one. Values in order.
 */
export function splitInTwo(values: readonly number[]): TwoGroups | undefined {
  if (values.length < 2) throw new RangeError('two groups need two values or more');
  if (!values.every(Number.isFinite))
    throw new RangeError('a sample must hold finite numbers only');
  const groups = ckmeans([...values], 2);
  return groups.length < 2 ? undefined : { lower: at(groups, 0), upper: at(groups, 1) };
}

/**
 * D = |m₁ − m₂|/√((s₁² + s₂²)/2): how far two normal components stand apart; over 2 they are clearly two
 * (Ashman, Bird & Zepf 1994, Astron. J. 108:2348). It speaks of fitted components: after a cut in two,
 * which no value may cross, most samples of one population pass it as well. ∞ where neither has a spread.
 */
export const ashmanD = (
  one: { readonly mean: number; readonly sd: number },
  other: { readonly mean: number; readonly sd: number },
): number => Math.abs(one.mean - other.mean) / Math.sqrt((one.sd ** 2 + other.sd ** 2) / 2);
