/**
 * Summaries of a sample: location, spread, order.
 *
 * Behind them stands simple-statistics (compensated sums; variance in two passes). Mean and
 * sample standard deviation reproduce the NIST StRD univariate sets to the digits their data leave in
 * double precision. The input is never changed, skipped or repaired: an empty sample, a NaN or an infinity
 * throws a RangeError, and so does a spread of fewer than two values.
 */
import * as library from 'simple-statistics';

const demandSample = (values: readonly number[], least = 1): number[] => {
  if (values.length < least) throw new RangeError(`a sample of ${least} or more values is needed`);
  if (!values.every(Number.isFinite))
    throw new RangeError('a sample must hold finite numbers only');
  return values as number[];
};

/** Arithmetic mean. */
export const mean = (values: readonly number[]): number => library.mean(demandSample(values));

/** s² = Σ(x − x̄)²/(n − 1), for n ≥ 2. */
export const sampleVariance = (values: readonly number[]): number =>
  library.sampleVariance(demandSample(values, 2));

/** s = √s², for n ≥ 2. */
export const sampleStandardDeviation = (values: readonly number[]): number =>
  Math.sqrt(sampleVariance(values));

/** √(Σx²/n): how far values lie from nothing. */
export const rootMeanSquare = (values: readonly number[]): number =>
  Math.sqrt(demandSample(values).reduce((sum, value) => sum + value ** 2, 0) / values.length);

/** Middle value, or the mean of the two middle values. */
export const median = (values: readonly number[]): number => library.median(demandSample(values));

/** Of normal values σ is so many times their median absolute deviation. */
export const SIGMA_OF_MAD = 1.4826;

/** Median of the distances from the median, without the factor that estimates a normal σ. */
export const medianAbsoluteDeviation = (values: readonly number[]): number =>
  library.medianAbsoluteDeviation(demandSample(values));

export const minimum = (values: readonly number[]): number => library.min(demandSample(values));

export const maximum = (values: readonly number[]): number => library.max(demandSample(values));
