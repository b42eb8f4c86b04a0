/**
 * Moderated spread: the panels of a car share what little each says about how much film varies over a
 * panel (Smyth 2004, Stat. Appl. Genet. Mol. Biol. 3(1):3), so that five readings that happen to
 * agree do not pass for an even film.
 */
import { mean, sampleVariance } from '../base/stats/summary.ts';
import { fitVariancePrior } from '../base/stats/variance-prior.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { FilmModel } from './film-model.ts';

export type Spread = { readonly sd: Micrometres; readonly dof: number };

/** What the pooled panels say together; `dofCeiling` is the evidence there is in all. */
export type SpreadPrior = {
  readonly variance: number;
  readonly dof: number;
  readonly dofCeiling: number;
};

/** A panel's own evidence. Two points or fewer say nothing of their own: variance 0 on 0 degrees. */
export type OwnSpread = { readonly variance: number; readonly dof: number };

/** `leastVariance` is the part that the gauge's own noise must at least have put there. */
export function ownSpread(values: readonly Micrometres[], leastVariance: number): OwnSpread {
  if (values.length < 3) return { variance: 0, dof: 0 };
  return { variance: Math.max(sampleVariance(values), leastVariance), dof: values.length - 1 };
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

/** Prior from the panels that carry factory film and have three points or more. */
export function spreadPrior(
  spreads: readonly OwnSpread[],
  panelMeans: readonly number[],
  model: FilmModel['spread'],
): SpreadPrior {
  const telling = spreads.filter(({ dof }) => dof > 0);
  if (telling.length < model.leastPanels) return fallbackPrior(panelMeans, model);
  const fitted = fitVariancePrior(
    telling.map(({ variance }) => variance),
    telling.map(({ dof }) => dof),
  );
  const dofCeiling = telling.reduce((sum, { dof }) => sum + dof, 0);
  const weighted = telling.reduce((sum, { variance, dof }) => sum + variance * dof, 0);
  return {
    variance: weighted / dofCeiling,
    dof: Math.min(fitted.dof, model.priorDofCap),
    dofCeiling,
  };
}

/** s̃² = (d₀s₀² + d s²)/(d₀ + d) on min(d₀ + d, Σd) degrees of freedom. */
export function moderatedSpread(own: OwnSpread, prior: SpreadPrior): Spread {
  const dof = prior.dof + own.dof;
  const variance = (prior.dof * prior.variance + own.dof * own.variance) / dof;
  return { sd: micrometres(Math.sqrt(variance)), dof: Math.min(dof, prior.dofCeiling) };
}
