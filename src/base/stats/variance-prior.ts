/**
 * Variances that share what they know: a scaled inverse chi-square prior fitted to sample variances by
 * moments of their logarithms, and the variance moderated by it.
 *
 * With eᵢ = ln sᵢ² − ψ(dᵢ/2) + ln(dᵢ/2): ψ′(d₀/2) = var(e) − mean ψ′(dᵢ/2), and
 * s₀² = exp(mean(e) + ψ(d₀/2) − ln(d₀/2)); where the spread of e is no more than chance gives, d₀ = ∞ and
 * s₀² is the plain mean. Source: Smyth 2004, Stat. Appl. Genet. Mol. Biol. 3(1):3. Variances below 1e-5
 * of the median count as that, as zero has no logarithm (as in R limma `fitFDist`).
 *
 * One variance leaves nothing to compare: dof 0, no pull. No variance, all zero, lists of unequal
 * length, or values outside the domain throw a RangeError. Accuracy 1e-11 relative.
 */
import { at } from '../at.ts';
import { digamma, inverseTrigamma, trigamma } from './gamma.ts';
import { mean, median, sampleVariance } from './summary.ts';

export type VariancePrior = {
  /** Degrees of freedom the prior is worth; ∞ when all variances are one. */
  readonly dof: number;
  readonly variance: number;
};

const demandVariances = (variances: readonly number[], dofs: readonly number[]): void => {
  if (variances.length !== dofs.length)
    throw new RangeError('each variance needs its degrees of freedom');
  if (!variances.every((variance) => variance >= 0) || !variances.some((variance) => variance > 0))
    throw new RangeError('variances must not be below zero nor all be zero');
  if (!dofs.every((dof) => dof > 0 && dof < Infinity))
    throw new RangeError('degrees of freedom must be finite and above zero');
};

/** Prior fitted to sample variances with their degrees of freedom. */
export const fitVariancePrior = (
  variances: readonly number[],
  dofs: readonly number[],
): VariancePrior => {
  demandVariances(variances, dofs);
  const middle = median(variances);
  const least = 1e-5 * (middle > 0 ? middle : 1);
  const raised = variances.map((variance) => Math.max(variance, least));
  if (raised.length === 1) return { dof: 0, variance: mean(raised) };
  const centred = raised.map((variance, index) => {
    const half = at(dofs, index) / 2;
    return Math.log(variance) - digamma(half) + Math.log(half);
  });
  const excess = sampleVariance(centred) - mean(dofs.map((dof) => trigamma(dof / 2)));
  if (!(excess > 0)) return { dof: Infinity, variance: mean(raised) };
  const half = inverseTrigamma(excess);
  return { dof: 2 * half, variance: Math.exp(mean(centred) + digamma(half) - Math.log(half)) };
};

/** (d₀s₀² + d·s²)/(d₀ + d): the variance of one sample pulled towards the prior. */
export const moderateVariance = (variance: number, dof: number, prior: VariancePrior): number => {
  if (!(variance >= 0 && dof >= 0))
    throw new RangeError('moderateVariance needs a variance and its dof');
  if (prior.dof === Infinity) return prior.variance;
  if (!(prior.dof + dof > 0)) throw new RangeError('moderateVariance needs degrees of freedom');
  return (prior.dof * prior.variance + dof * variance) / (prior.dof + dof);
};
