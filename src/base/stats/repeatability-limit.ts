/**
 * Repeatability limit r = z·√2·s (ISO 5725-6, 4.1): two readings of one thing under the same conditions differ by more
 * than it in 1 case of 20. `s` is the repeatability standard deviation; r is in the unit of `s`. z is the 97.5 %
 * quantile of the normal distribution, so that r = 2.77·s.
 */
const Z_975 = 1.959963984540054;

export const repeatabilityLimit = (s: number): number => Z_975 * Math.SQRT2 * s;
