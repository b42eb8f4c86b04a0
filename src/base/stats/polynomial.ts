/** Value of a polynomial by Horner's rule; coefficients run from the highest power down. */
import { at } from '../at.ts';

export const polynomial = (coefficients: readonly number[], x: number): number => {
  let sum = 0;
  for (let k = 0; k < coefficients.length; k += 1) sum = sum * x + at(coefficients, k);
  return sum;
};
