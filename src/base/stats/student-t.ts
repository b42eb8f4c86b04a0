/**
 * Student's t distribution with real degrees of freedom ν > 0; ν = ∞ is the standard normal.
 *
 * The tail beyond t is ½·I_{ν/(ν+t²)}(ν/2, ½), with the regularised incomplete beta function by its
 * continued fraction (Abramowitz & Stegun 1964, 26.5.8 and 26.7.1). Quantiles by Halley's method from the
 * expansion in 1/ν (26.7.5). Accuracy: 1e-13 relative for the
 * distribution function in either tail, 1e-12 for the quantile (ν from 0.1 to 1e9). Quantiles of 0 and 1
 * are ∓∞. NaN or arguments outside the domain throw a RangeError.
 */
import { logGammaHalfStep } from './gamma.ts';
import { betaFraction } from './incomplete-beta.ts';
import { normalCdf, normalQuantile } from './normal.ts';
import { solveIncreasing } from './root.ts';

/** Above this the continued fraction loses digits and the normal equivalent has them all. */
const LARGE_DOF = 5000;

const demandDof = (dof: number): void => {
  if (!(dof > 0)) throw new RangeError("Student's t needs degrees of freedom above zero");
};

/** Logarithm of the density at t. */
const logDensity = (t: number, dof: number): number =>
  logGammaHalfStep(dof / 2) -
  0.5 * Math.log(dof * Math.PI) -
  ((dof + 1) / 2) * Math.log1p((t / dof) * t);

/**
 * The normal value of the same tail for t ≥ 0 and large ν (Hill 1970, CACM 13: 617, algorithm 395). The
 * terms left out fall with ν⁻⁴.
 */
const normalEquivalent = (t: number, dof: number): number => {
  const a = dof - 0.5;
  const b = 48 * a * a;
  const y = a * Math.log1p((t / dof) * t);
  const correction = (((-0.4 * y - 3.3) * y - 24) * y - 85.5) / (0.8 * y * y + 100 + b) + y + 3;
  return (correction / b + 1) * Math.sqrt(y);
};

/** `front` is t times the density there. */
type Split = { readonly centre: number; readonly tail: number; readonly front: number };

/** For t ≥ 0: the chance of [0, t] and of (t, ∞), the smaller of the two with all its digits. */
const split = (t: number, dof: number): Split => {
  // xᵃ(1−x)ᵇ/B(a, b) at x = ν/(ν+t²), a = ν/2, b = ½ equals t·density(t).
  const front = t * Math.exp(logDensity(t, dof));
  if (dof > LARGE_DOF) {
    const z = normalEquivalent(t, dof);
    return { centre: normalCdf(z) - 0.5, tail: normalCdf(-z), front };
  }
  const square = t * t;
  if (square < 3) {
    const centre = front * betaFraction(0.5, dof / 2, square / (dof + square));
    return { centre, tail: 0.5 - centre, front };
  }
  const tail = (front / dof) * betaFraction(dof / 2, 0.5, 1 / (1 + square / dof));
  return { centre: 0.5 - tail, tail, front };
};

/** Abramowitz & Stegun 26.7.5: the t of a tail from its normal value, for tails of half or less. */
const expandedQuantile = (tail: number, dof: number): number => {
  const z = -normalQuantile(tail);
  const square = z * z;
  const first = (square + 1) / 4;
  const second = ((5 * square + 16) * square + 3) / 96;
  const third = (((3 * square + 19) * square + 17) * square - 15) / 384;
  return z * Math.max(1, 1 + (first + (second + third / dof) / dof) / dof);
};

/** How near a step of Halley's method has to be: what it leaves goes with the cube. */
const LAST_STEP = 1e-5;

/** The chance that a t value with `dof` degrees of freedom is at most t. */
export const studentTCdf = (t: number, dof: number): number => {
  demandDof(dof);
  if (Number.isNaN(t)) throw new RangeError('studentTCdf needs a number');
  if (dof === Infinity) return normalCdf(t);
  if (!Number.isFinite(t)) return t < 0 ? 0 : 1;
  const { centre, tail } = split(Math.abs(t), dof);
  return t < 0 ? tail : 0.5 + centre;
};

/** For a tail no heavier than a quarter: ln t solves the logarithm of the tail, nearly a straight line. */
const fromTail = (tail: number, dof: number): number => {
  const logOfTail = (logT: number) => {
    const t = Math.exp(logT);
    const there = split(t, dof);
    const slope = there.front / there.tail;
    const curvature = slope * (1 - ((dof + 1) * t * t) / (dof + t * t) + slope);
    return { value: Math.log(tail / there.tail), slope, curvature };
  };
  const start = Math.log(expandedQuantile(tail, dof));
  return Math.exp(
    solveIncreasing(logOfTail, { start, low: -10, high: 350, relative: 0, absolute: LAST_STEP }),
  );
};

const fromCentre = (centre: number, dof: number): number =>
  solveIncreasing(
    (t) => ({ value: split(t, dof).centre - centre, slope: Math.exp(logDensity(t, dof)) }),
    { start: normalQuantile(0.5 + centre), low: 0, relative: 1e-15 },
  );

/** The t that a value with `dof` degrees of freedom stays below with probability p. */
export const studentTQuantile = (p: number, dof: number): number => {
  demandDof(dof);
  if (!(p >= 0 && p <= 1)) throw new RangeError('studentTQuantile needs a probability');
  if (dof === Infinity) return normalQuantile(p);
  const tail = Math.min(p, 1 - p);
  if (tail === 0) return p === 0 ? -Infinity : Infinity;
  const size = tail <= 0.25 ? fromTail(tail, dof) : fromCentre(Math.abs(p - 0.5), dof);
  return p < 0.5 ? -size : size;
};
