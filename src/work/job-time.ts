/** Stage times → the time of the whole, as a distribution. */
import { normalQuantile } from '../base/stats/normal.ts';
import { type Minutes, minutes } from '../base/units.ts';
import type { ThreePoint, WorkModel } from './work-model.ts';

/** Mean and variance of the PERT-beta: (a + 4m + b)/6 and (μ − a)(b − μ)/7. */
export function threePointMoments({ least, likely, most }: ThreePoint): {
  readonly mean: number;
  readonly variance: number;
} {
  const mean = (least + 4 * likely + most) / 6;
  return { mean, variance: ((mean - least) * (most - mean)) / 7 };
}

/** A lognormal by its median and the SD of its logarithm. */
export type JobTime = { readonly mean: Minutes; readonly median: Minutes; readonly logSd: number };

/**
 * The sum of the stages: a share of each stage's variance stands alone, the rest is the pace they
 * share; on top a noise of the job. Product of a sum and two lognormal factors, matched by a
 * lognormal of equal mean and variance (Fenton–Wilkinson).
 */
export function jobTime(
  stages: readonly ThreePoint[],
  { paceLogSd, jobLogSd, aloneShare }: Pick<WorkModel, 'paceLogSd' | 'jobLogSd' | 'aloneShare'>,
): JobTime {
  const moments = stages.map(threePointMoments);
  const mean = moments.reduce((sum, stage) => sum + stage.mean, 0);
  if (mean === 0) return { mean: minutes(0), median: minutes(0), logSd: 0 };
  const alone = moments.reduce((sum, { variance }) => sum + aloneShare * variance, 0);
  const logVariance = Math.log(1 + alone / mean ** 2) + paceLogSd ** 2 + jobLogSd ** 2;
  return {
    mean: minutes(mean),
    median: minutes(mean * Math.exp(-logVariance / 2)),
    logSd: Math.sqrt(logVariance),
  };
}

export const jobTimeQuantile = ({ median, logSd }: JobTime, p: number): Minutes =>
  minutes(median * Math.exp(normalQuantile(p) * logSd));
