/**
 * Moderated spread: the panels of a car share what little each says about how much film varies over a
 * panel (Smyth 2004, Stat. Appl. Genet. Mol. Biol. 3(1):3), so that five readings that happen to
 * agree do not pass for an even film.
 */
import { pooledVariance } from '../base/stats/pooled-variance.ts';
import { mean, median, sampleVariance } from '../base/stats/summary.ts';
import { fitVariancePrior, moderateVariance } from '../base/stats/variance-prior.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { FilmModel } from './film-model.ts';

export type Spread = { readonly sd: Micrometres; readonly dof: number };

/** What the pooled panels say together; `dofCeiling` is the evidence there is in all. */
export type PooledSpread = { readonly variance: number; readonly dofCeiling: number };

/** The same as a panel is drawn towards it, by as much as `dof`. */
export type SpreadPrior = PooledSpread & { readonly dof: number };

/** A panel's own evidence. Two points or fewer say nothing of their own: variance 0 on 0 degrees. */
export type OwnSpread = {
  /** At least what the gauge's own noise must have put there. */
  readonly variance: number;
  /** As it was read. */
  readonly sample: number;
  readonly dof: number;
};

/** `leastVariance` is the part that the gauge's own noise must at least have put there. */
export function ownSpread(values: readonly Micrometres[], leastVariance: number): OwnSpread {
  if (values.length < 3) return { variance: 0, sample: 0, dof: 0 };
  const sample = sampleVariance(values);
  return { variance: Math.max(sample, leastVariance), sample, dof: values.length - 1 };
}

/** Variance of the gauge that even a perfectly even film would show between points, in µm². */
export const leastPointVariance = (
  repeatability: Micrometres,
  repeatsPerPoint: number,
  step: Micrometres,
): number => Math.max(repeatability ** 2 / Math.max(1, repeatsPerPoint), step ** 2 / 12);

/** Too few panels to pool: the assumption alone. */
export function fallbackPrior(
  panelMeans: readonly number[],
  model: FilmModel['spread'],
): SpreadPrior {
  const share = panelMeans.length === 0 ? 0 : model.fallbackShare * mean(panelMeans);
  const sd = Math.max(share, model.fallbackLeast);
  return { variance: sd ** 2, dof: model.priorDofCap, dofCeiling: Number.POSITIVE_INFINITY };
}

/**
 * Prior from the panels that carry factory film and have three points or more.
 *
 * How alike the panels vary is judged by their variances as read, those under a share of the median
 * counted as that: one panel that happens to read even is no proof that panels differ. Raised to the
 * gauge's noise instead, they would look the more alike the noisier the gauge is held to be, the pool
 * would weigh more, and a worse gauge would prove a thicker film. Panels that all read without any spread
 * say nothing against each other.
 */
export function spreadPrior(
  spreads: readonly OwnSpread[],
  panelMeans: readonly number[],
  model: FilmModel['spread'],
): SpreadPrior {
  const pooled = pooledSpread(spreads, model);
  if (pooled === null) return fallbackPrior(panelMeans, model);
  const telling = spreads.filter(tellsSpread);
  const samples = telling.map(({ sample }) => sample);
  const least = model.leastShareOfMedian * median(samples);
  const { dof } = samples.some((sample) => sample > 0)
    ? fitVariancePrior(
        samples.map((sample) => Math.max(sample, least)),
        telling.map((own) => own.dof),
      )
    : { dof: model.priorDofCap };
  return { ...pooled, dof: Math.min(dof, model.priorDofCap) };
}

/** The mean of the panels' variances, each by its degrees of freedom; null where too few panels tell theirs. */
export function pooledSpread(
  spreads: readonly OwnSpread[],
  { leastPanels }: Pick<FilmModel['spread'], 'leastPanels'>,
): PooledSpread | null {
  const telling = spreads.filter(tellsSpread);
  const pooled = telling.length < leastPanels ? undefined : pooledVariance(telling);
  return pooled === undefined ? null : { variance: pooled.variance, dofCeiling: pooled.dof };
}

const tellsSpread = ({ dof }: OwnSpread): boolean => dof > 0;

/** s̃² = (d₀s₀² + d s²)/(d₀ + d) on min(d₀ + d, Σd) degrees of freedom. */
export function moderatedSpread(own: OwnSpread, prior: SpreadPrior): Spread {
  const sd = micrometres(Math.sqrt(moderateVariance(own.variance, own.dof, prior)));
  return { sd, dof: Math.min(prior.dof + own.dof, prior.dofCeiling) };
}
