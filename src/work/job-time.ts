/** Stage times → the time of the whole, as a distribution. */
import { normalQuantile } from '../base/stats/normal.ts';
import { type Minutes, minutes } from '../base/units.ts';
import { type Pace, unknownPace } from './pace.ts';
import type { ThreePoint, WorkModel } from './work-model.ts';

export type Moments = { readonly mean: number; readonly variance: number };

/** Mean and variance of the PERT-beta: (a + 4m + b)/6 and (μ − a)(b − μ)/7. */
export function threePointMoments({ least, likely, most }: ThreePoint): Moments {
  const mean = (least + 4 * likely + most) / 6;
  return { mean, variance: ((mean - least) * (most - mean)) / 7 };
}

/** Sum of independent times: means and variances add. */
export const addedMoments = (parts: readonly Moments[]): Moments => ({
  mean: parts.reduce((sum, { mean }) => sum + mean, 0),
  variance: parts.reduce((sum, { variance }) => sum + variance, 0),
});

/** A lognormal by its median and the SD of its logarithm. */
export type JobTime = { readonly mean: Minutes; readonly median: Minutes; readonly logSd: number };

type Spread = Pick<WorkModel, 'paceLogSd' | 'jobLogSd' | 'aloneShare'>;

/** ln-variance of a sum of which a share of the variance stands alone. */
const aloneLogVariance = ({ mean, variance }: Moments, aloneShare: number): number =>
  Math.log(1 + (aloneShare * variance) / mean ** 2);

/**
 * The sum of the stages: a share of each stage's variance stands alone, the rest is the pace they
 * share; on top a noise of the job. Product of a sum and two lognormal factors, matched by a
 * lognormal of equal mean and variance (Fenton 1960). A shop's own hours move the middle by its pace
 * and narrow it by what is now known of it.
 */
export function jobTime(
  stages: readonly Moments[],
  { paceLogSd, jobLogSd, aloneShare }: Spread,
  pace: Pace = unknownPace(paceLogSd),
): JobTime {
  const total = addedMoments(stages);
  if (total.mean === 0) return { mean: minutes(0), median: minutes(0), logSd: 0 };
  const own = aloneLogVariance(total, aloneShare) + jobLogSd ** 2;
  const estimated = total.mean * Math.exp(-(own + paceLogSd ** 2) / 2);
  const median = estimated * Math.exp(pace.overall.mean);
  const logVariance = own + pace.overall.sd ** 2;
  return {
    mean: minutes(median * Math.exp(logVariance / 2)),
    median: minutes(median),
    logSd: Math.sqrt(logVariance),
  };
}

export const jobTimeQuantile = ({ median, logSd }: JobTime, p: number): Minutes =>
  minutes(median * Math.exp(normalQuantile(p) * logSd));

/** The same in hours. */
export const jobHours = (time: JobTime, p: number): number => jobTimeQuantile(time, p) / 60;

/** Where the spread of the whole comes from. */
export type SpreadShares = {
  /**
   * Of each stage, in their order, adding up to 1: what its time has in common with the whole, the pace
   * and the job that it shares included, Cov(stage, whole)/Var(whole).
   */
  readonly stages: readonly number[];
  /** The same spread by its grounds, adding up to 1: the stages' own, the pace, the single job. */
  readonly own: number;
  readonly pace: number;
  readonly job: number;
};

/**
 * With S the sum of the stages and F the factor that all share, of mean 1 and ln-variance q:
 * Cov(XᵢF, SF) = (Var Xᵢ + E[Xᵢ]E[S])·e^q − E[Xᵢ]E[S].
 */
export function spreadShares(
  stages: readonly Moments[],
  { paceLogSd, jobLogSd, aloneShare }: Spread,
  pace: Pace = unknownPace(paceLogSd),
): SpreadShares {
  const total = addedMoments(stages);
  if (total.mean === 0) return { stages: stages.map(() => 0), own: 0, pace: 0, job: 0 };
  const [paceVariance, jobVariance] = [pace.overall.sd ** 2, jobLogSd ** 2];
  const own = aloneLogVariance(total, aloneShare);
  const shared = Math.exp(paceVariance + jobVariance);
  const common = ({ mean, variance }: Moments): number =>
    (aloneShare * variance + mean * total.mean) * shared - mean * total.mean;
  const whole = own + paceVariance + jobVariance;
  return {
    stages: stages.map((stage) => common(stage) / common(total)),
    own: own / whole,
    pace: paceVariance / whole,
    job: jobVariance / whole,
  };
}
