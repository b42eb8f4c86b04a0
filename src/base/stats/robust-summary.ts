/**
 * Robust mean and standard deviation of few values or many.
 *
 * From eight values on by Algorithm A, which bears about a quarter of them far off. With fewer that quarter is less
 * than two, and at three and four it ends at the plain mean whatever the fourth reads. There the median stands in
 * its place, with the scaled median absolute deviation s* = 1.4826·b_n·MAD: both hold while less than half of the
 * values are off. b_n makes s* unbiased in few normal values (Croux & Rousseeuw 1992, Computational Statistics 1,
 * 411, table 1).
 *
 * Half of the values alike have s* = 0. Needs two finite values or more; throws a RangeError else.
 */
import { at } from '../at.ts';
import { algorithmA, type RobustSummary } from './algorithm-a.ts';
import { median, medianAbsoluteDeviation, SIGMA_OF_MAD } from './summary.ts';

/** Of fewer values Algorithm A is no longer robust. */
export const ENOUGH_FOR_ALGORITHM_A = 8;
/** b_n from two values on. */
const FOR_FEW = [1.196, 1.495, 1.363, 1.206, 1.2, 1.14] as const;

export function robustSummary(values: readonly number[]): RobustSummary {
  const count = values.length;
  if (count < 2) throw new RangeError('a robust spread needs two values or more');
  if (count >= ENOUGH_FOR_ALGORITHM_A) return algorithmA(values);
  return {
    mean: median(values),
    sd: SIGMA_OF_MAD * at(FOR_FEW, count - 2) * medianAbsoluteDeviation(values),
  };
}
