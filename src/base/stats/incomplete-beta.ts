/**
 * The regularised incomplete beta function, and the tails of two distributions that it is.
 *
 * I_x(a, b) = xᵃ(1 − x)ᵇ/(a·B(a, b)) times a continued fraction, taken from the side where that converges
 * (Abramowitz & Stegun 1964, 26.5.8). Accuracy: 1e-12 for a and b up to some thousands. a or b not above
 * zero, x outside 0 to 1 and NaN throw a RangeError.
 */
import { logGamma } from './gamma.ts';

/** Continued fraction of the incomplete beta function by the modified Lentz method. */
export const betaFraction = (a: number, b: number, x: number): number => {
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m < 100_000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d);
    c = 1 + even / c;
    value *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d);
    c = 1 + odd / c;
    const factor = c * d;
    value *= factor;
    if (factor === 1) break;
  }
  return value;
};

/** I_x(a, b): the chance that a beta variable of a and b is at most x. */
export function regularisedBeta(x: number, a: number, b: number): number {
  if (!(a > 0 && b > 0 && x >= 0 && x <= 1)) {
    throw new RangeError('the incomplete beta function needs a, b above 0 and x from 0 to 1');
  }
  if (x > (a + 1) / (a + b + 2)) return 1 - fromBelow(1 - x, b, a);
  return fromBelow(x, a, b);
}

function fromBelow(x: number, a: number, b: number): number {
  const logBeta = logGamma(a) + logGamma(b) - logGamma(a + b);
  return (
    Math.exp(a * Math.log(x) + b * Math.log1p(-x) - logBeta - Math.log(a)) * betaFraction(a, b, x)
  );
}

/** P(F > f) of Fisher’s F on d₁ and d₂ degrees of freedom: I_{d₂/(d₂ + d₁f)}(d₂/2, d₁/2). */
export function fUpperTail(f: number, dof1: number, dof2: number): number {
  if (!(f >= 0)) throw new RangeError('F is 0 or more');
  return regularisedBeta(dof2 / (dof2 + dof1 * f), dof2 / 2, dof1 / 2);
}

/** P(X ≥ k) of n independent trials that succeed with probability p each: I_p(k, n − k + 1). */
export function binomialUpperTail(k: number, n: number, p: number): number {
  if (!(Number.isInteger(n) && n >= 0 && Number.isInteger(k))) {
    throw new RangeError('a binomial tail needs whole numbers');
  }
  if (k <= 0) return 1;
  return k > n ? 0 : regularisedBeta(p, k, n - k + 1);
}
