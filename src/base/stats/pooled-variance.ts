/** What several samples of one variance say of it together. */
import { sampleVariance } from './summary.ts';

/** A variance and the degrees of freedom behind it. */
export type VarianceOf = { readonly variance: number; readonly dof: number };

/**
 * s_p² = Σ νᵢ·sᵢ²/Σ νᵢ on Σ νᵢ degrees of freedom (ISO 3534-1; NIST/SEMATECH e-Handbook, section 7.3.1). Undefined
 * without any: nothing is said of a spread then, which is not that there is none.
 */
export function pooledVariance(samples: readonly VarianceOf[]): VarianceOf | undefined {
  const dof = samples.reduce((sum, one) => sum + one.dof, 0);
  if (dof === 0) return undefined;
  const squares = samples.reduce((sum, one) => sum + one.dof * one.variance, 0);
  return { variance: squares / dof, dof };
}

/** The same of samples as they were read: one of a single value says nothing. */
export const pooledVarianceOf = (samples: readonly (readonly number[])[]): VarianceOf | undefined =>
  pooledVariance(
    samples.flatMap((values) =>
      values.length < 2 ? [] : [{ variance: sampleVariance(values), dof: values.length - 1 }],
    ),
  );
