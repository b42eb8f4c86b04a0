/**
 * Limits of agreement of two ways of measuring the same things (Bland & Altman 1986, Lancet 327:307).
 *
 * Of the differences d: mean d̄ with its t interval, limits d̄ ± z·s between which a share of the
 * differences lies (z = 1.96: 95 %), and the t interval of each limit with the standard error √(3s²/n) of
 * that paper. Speaks of differences that are about normal. Needs two finite differences or more; throws a
 * RangeError else.
 */
import { studentTQuantile } from './student-t.ts';
import { mean, sampleStandardDeviation } from './summary.ts';

type Interval = readonly [low: number, high: number];

export type Agreement = {
  readonly count: number;
  readonly mean: number;
  readonly sd: number;
  readonly meanInterval: Interval;
  readonly limits: Interval;
  readonly lowerInterval: Interval;
  readonly upperInterval: Interval;
};

export function limitsOfAgreement(
  differences: readonly number[],
  { z = 1.96, confidence = 0.95 }: { readonly z?: number; readonly confidence?: number } = {},
): Agreement {
  const n = differences.length;
  const [centre, sd] = [mean(differences), sampleStandardDeviation(differences)];
  const t = studentTQuantile((1 + confidence) / 2, n - 1);
  const around = (value: number, standardError: number): Interval => [
    value - t * standardError,
    value + t * standardError,
  ];
  const limits: Interval = [centre - z * sd, centre + z * sd];
  const ofLimit = Math.sqrt((3 * sd ** 2) / n);
  return {
    count: n,
    mean: centre,
    sd,
    meanInterval: around(centre, sd / Math.sqrt(n)),
    limits,
    lowerInterval: around(limits[0], ofLimit),
    upperInterval: around(limits[1], ofLimit),
  };
}
