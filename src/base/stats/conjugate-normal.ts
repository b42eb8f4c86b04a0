/**
 * What is known of a mean, updated by observations of known noise: precisions add, means are weighted
 * by them (the conjugate normal). Source: Bolstad, Introduction to Bayesian Statistics, ch. 11. No
 * observation leaves the prior. Exact to rounding.
 */
export type NormalKnowledge = { readonly mean: number; readonly sd: number };

/** An observation of the mean, with the SD of its noise. */
export type NoisyValue = { readonly value: number; readonly sd: number };

export function updatedNormal(
  prior: NormalKnowledge,
  observations: readonly NoisyValue[],
): NormalKnowledge {
  const all = [{ value: prior.mean, sd: prior.sd }, ...observations];
  const precision = all.reduce((sum, { sd }) => sum + sd ** -2, 0);
  const weighted = all.reduce((sum, { value, sd }) => sum + value * sd ** -2, 0);
  return { mean: weighted / precision, sd: 1 / Math.sqrt(precision) };
}
