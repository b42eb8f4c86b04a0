/**
 * The mean difference of pairs with its t interval.
 *
 * A RangeError is thrown for fewer than two pairs, for lists of unequal length, and for a confidence
 * outside 0 to 1.
 */
import { at } from '../at.ts';
import { studentTQuantile } from './student-t.ts';
import { mean, sampleVariance } from './summary.ts';

export type MeanDifference = {
  readonly difference: number;
  readonly standardError: number;
  readonly dof: number;
};

/** Mean of x − y over pairs, s/√n on n − 1 degrees of freedom. */
export function pairedDifference(x: readonly number[], y: readonly number[]): MeanDifference {
  if (x.length !== y.length) throw new RangeError('pairs need lists of equal length');
  const differences = x.map((value, i) => value - at(y, i));
  return {
    difference: mean(differences),
    standardError: Math.sqrt(sampleVariance(differences) / differences.length),
    dof: differences.length - 1,
  };
}

/** The interval that holds the true difference with the given confidence. */
export function differenceInterval(
  { difference, standardError, dof }: MeanDifference,
  confidence: number,
): readonly [low: number, high: number] {
  if (!(confidence > 0 && confidence < 1)) {
    throw new RangeError('a confidence must lie between 0 and 1');
  }
  const reach = studentTQuantile((1 + confidence) / 2, dof) * standardError;
  return [difference - reach, difference + reach];
}
