/**
 * Conformance probability: the chance that a measured quantity lies within its limits (JCGM 106:2012, 7).
 *
 * P = F((upper − y)/u) − F((lower − y)/u), y the estimate, u its standard uncertainty, F the distribution
 * function of Student's t with the degrees of freedom of u: the normal one where those are infinite. An
 * open limit is ∓∞. Without uncertainty it is 1 within the limits, limits included, and 0 outside. NaN, a
 * negative u and limits in the wrong order throw a RangeError.
 */
import { studentTCdf } from './stats/student-t.ts';

export type Limits = { readonly lower: number; readonly upper: number };

export function conformanceProbability(
  estimate: number,
  { u, dof }: { readonly u: number; readonly dof: number },
  { lower, upper }: Limits,
): number {
  if (!(u >= 0)) throw new RangeError('a standard uncertainty is 0 or more');
  if (!(lower <= upper)) throw new RangeError('limits run from the lower to the upper');
  if (u === 0) return estimate >= lower && estimate <= upper ? 1 : 0;
  const at = (limit: number): number => studentTCdf((limit - estimate) / u, dof);
  return at(upper) - at(lower);
}
