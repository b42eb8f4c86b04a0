/**
 * One-sided tolerance limits: a bound that a stated share of a population keeps, stated with a confidence.
 *
 * Normal: mean − k·s bounds the share `content` from below with the given confidence when
 *   k = t′_{γ; ν, δ}/√n, δ = z_p·√n
 * with t′ the noncentral t quantile (Owen 1968, Technometrics 10: 445–478; NIST/SEMATECH e-Handbook
 * 7.2.6.3). ν are the degrees of freedom of s, n − 1 unless s is pooled or moderated; for ν = ∞, s known,
 * k = z_p + z_γ/√n. Accuracy 1e-10 relative, n to 2000 and content to .999.
 *
 * Distribution-free: the smallest of n values is such a bound at confidence 1 − pⁿ (Wilks 1941, Ann. Math.
 * Stat. 12: 91–96). Shares and confidences lie strictly between 0 and 1; anything else throws a RangeError.
 */
import { kept } from '../kept.ts';
import { noncentralTQuantile } from './noncentral-t.ts';
import { normalQuantile } from './normal.ts';

const demandShare = (name: string, share: number): void => {
  if (!(share > 0 && share < 1)) throw new RangeError(`${name} must lie between 0 and 1`);
};

const demandCount = (count: number): void => {
  if (!(Number.isInteger(count) && count >= 1))
    throw new RangeError('count must be a whole number above zero');
};

export type ToleranceRequest = {
  /** Share of the population that keeps the limit. */
  readonly content: number;
  readonly confidence: number;
  /** Values behind the mean. */
  readonly count: number;
  /** Degrees of freedom behind the standard deviation; count − 1 if not given. */
  readonly dof?: number;
};

/** Kept, since the panels of a car mostly share count and degrees of freedom. */
const factorOf = kept((content: number, confidence: number, count: number, dof: number) => {
  const root = Math.sqrt(count);
  return noncentralTQuantile(confidence, dof, normalQuantile(content) * root) / root;
}, 4096);

/** The k of the one-sided limit mean − k·s. */
export const toleranceFactor = ({
  content,
  confidence,
  count,
  dof = count - 1,
}: ToleranceRequest): number => {
  demandShare('content', content);
  demandShare('confidence', confidence);
  demandCount(count);
  return factorOf(content, confidence, count, dof);
};

/** Confidence with which the smallest of `count` values bounds the share `content` from below. */
export const distributionFreeConfidence = (content: number, count: number): number => {
  demandShare('content', content);
  demandCount(count);
  return -Math.expm1(count * Math.log(content));
};

/** The fewest values whose smallest bounds the share `content` with at least the given confidence. */
export const distributionFreeCount = (content: number, confidence: number): number => {
  demandShare('content', content);
  demandShare('confidence', confidence);
  const real = Math.log1p(-confidence) / Math.log(content);
  const rounded = Math.round(real);
  // A whole number found exactly must not be lifted by a rounding in its last digit.
  return Math.max(1, Math.abs(real - rounded) < 1e-9 * rounded ? rounded : Math.ceil(real));
};
