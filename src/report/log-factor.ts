/** A factor whose logarithm is normal, as its middle and the range of nine cases of ten. */
import { shown } from '../base/rounding.ts';
import { Z_95 } from '../base/stats/normal.ts';
import type { LogFactor } from '../correction/spot/trial-observation.ts';
import { recorded } from './recorded.ts';

function rangeOf({ mean, sd }: LogFactor) {
  const reach = Z_95 * sd;
  return { factor: Math.exp(mean), low: Math.exp(mean - reach), high: Math.exp(mean + reach) };
}

/** `×0.62 (0.40–0.95)`. */
export function factorText(of: LogFactor): string {
  const { factor, low, high } = rangeOf(of);
  return `×\u00a0${shown(factor, 2)} (${shown(low, 2)}–${shown(high, 2)})`;
}

export function factorRecord(of: LogFactor) {
  const { factor, low, high } = rangeOf(of);
  return { factor: recorded(factor), low: recorded(low), high: recorded(high) };
}
