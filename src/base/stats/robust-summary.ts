/**
 * Robust mean and standard deviation of few values or many.
 *
 * From eight values on by Algorithm A, which bears about a quarter of them far off. With fewer that quarter is less
 * than two, and at three and four it ends at the plain mean whatever the fourth reads. There the median stands in
 * its place, with the scaled median absolute deviation: both hold while less than half of the values are off.
 *
 * Half of the values alike have no spread. Needs two finite values or more; throws a RangeError else.
 */
import { at } from '../at.ts';
import { algorithmA, type RobustSummary } from './algorithm-a.ts';
import { median, medianAbsoluteDeviation, SIGMA_OF_MAD } from './summary.ts';

/** Of fewer values Algorithm A is no longer robust. */
export const ENOUGH_FOR_ALGORITHM_A = 8;

export function robustSummary(values: readonly number[]): RobustSummary {
  if (values.length >= ENOUGH_FOR_ALGORITHM_A) return algorithmA(values);
  return { mean: median(values), sd: scaledDeviation(values).sd };
}

/** b_n of two to nine values, which makes the scaled deviation unbiased in normal ones. */
const FOR_FEW = [1.196, 1.495, 1.363, 1.206, 1.2, 1.14, 1.129, 1.107] as const;

/**
 * s* = 1.4826·b_n·MAD, b_n = n/(n − 0.8) over nine values (Croux & Rousseeuw 1992, Computational Statistics 1, 411,
 * table 1). It tells 37 % of what s does (Rousseeuw & Croux 1993, J. Am. Stat. Assoc. 88, 1273): by so much fewer
 * degrees of freedom.
 */
export function scaledDeviation(values: readonly number[]): {
  readonly sd: number;
  readonly dof: number;
} {
  const count = values.length;
  if (count < 2) throw new RangeError('a robust spread needs two values or more');
  const unbiased = count - 2 < FOR_FEW.length ? at(FOR_FEW, count - 2) : count / (count - 0.8);
  return {
    sd: SIGMA_OF_MAD * unbiased * medianAbsoluteDeviation(values),
    dof: 0.37 * (count - 1),
  };
}
