/**
 * The interval for a share by Wilson’s score (Wilson 1927; method 3 of Newcombe 1998, Statistics in Medicine
 * 17:857): (2np + z² ∓ z·√(z² + 4np(1 − p)))/(2(n + z²)). It holds up where trials are few or the share is 0
 * or 1. Needs a whole number of successes out of one trial or more; throws a RangeError else.
 */
import { normalQuantile } from './normal.ts';

export function wilsonInterval(
  successes: number,
  trials: number,
  confidence = 0.95,
): readonly [low: number, high: number] {
  const whole = Number.isInteger(successes) && Number.isInteger(trials);
  if (!(whole && trials >= 1 && successes >= 0 && successes <= trials)) {
    throw new RangeError('a share needs whole numbers, of one trial or more');
  }
  const z = normalQuantile((1 + confidence) / 2);
  const middle = 2 * successes + z ** 2;
  const reach = z * Math.sqrt(z ** 2 + 4 * successes * (1 - successes / trials));
  const below = 2 * (trials + z ** 2);
  return [
    successes === 0 ? 0 : (middle - reach) / below,
    successes === trials ? 1 : (middle + reach) / below,
  ];
}
