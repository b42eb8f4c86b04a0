/**
 * Robust mean and standard deviation by Algorithm A (ISO 13528, annex C; the same in ISO 5725-5).
 *
 * Start: x* = median, s* = 1.483·MAD, or the sample deviation where more than half of the values are one
 * and the MAD is 0. Then values beyond x* ± 1.5·s* are moved there, x* is the mean of the moved values and
 * s* = 1.134·√(Σ(x − x*)²/(p − 1)), over and over until neither moves any more. The standard stops at the
 * third figure that counts; this goes on to 1e-12 of s*, or for `iterations` rounds where they are given.
 *
 * Needs two finite values or more; throws a RangeError else. Values that are all one have s* = 0.
 */
import { mean, median, medianAbsoluteDeviation, sampleStandardDeviation } from './summary.ts';

export type RobustSummary = { readonly mean: number; readonly sd: number };

const REACH = 1.5;
const OF_MOVED_VALUES = 1.134;
const OF_MAD = 1.483;
const MOST_ROUNDS = 1000;

export function algorithmA(
  values: readonly number[],
  { iterations = MOST_ROUNDS }: { readonly iterations?: number } = {},
): RobustSummary {
  const deviation = sampleStandardDeviation(values);
  let found: RobustSummary = {
    mean: median(values),
    sd: OF_MAD * medianAbsoluteDeviation(values) || deviation,
  };
  for (let round = 0; round < iterations; round += 1) {
    const next = moved(values, found);
    const still =
      Math.abs(next.sd - found.sd) + Math.abs(next.mean - found.mean) <= 1e-12 * next.sd;
    found = next;
    if (still) break;
  }
  return found;
}

function moved(values: readonly number[], { mean: centre, sd }: RobustSummary): RobustSummary {
  const [low, high] = [centre - REACH * sd, centre + REACH * sd];
  const within = values.map((value) => Math.min(high, Math.max(low, value)));
  return { mean: mean(within), sd: OF_MOVED_VALUES * sampleStandardDeviation(within) };
}
