/** Value of a polynomial by Horner's rule; coefficients run from the highest power down. */
export const polynomial = (coefficients: readonly number[], x: number): number => {
  let sum = 0;
  for (const coefficient of coefficients) sum = sum * x + coefficient;
  return sum;
};
