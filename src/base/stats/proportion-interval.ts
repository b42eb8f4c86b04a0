/**
 * Intervals for a share, of x successes out of n.
 *
 * Both need a whole number of successes out of one trial or more; they throw a RangeError else.
 */
import { binomialUpperTail } from './incomplete-beta.ts';
import { normalQuantile } from './normal.ts';
import { halved } from './root.ts';

/**
 * By Wilson’s score (Wilson 1927; method 3 of Newcombe 1998, Statistics in Medicine 17:857):
 * (2np + z² ∓ z·√(z² + 4np(1 − p)))/(2(n + z²)). It holds up where trials are few or the share is 0 or 1, and
 * covers the confidence on average.
 */
export function wilsonInterval(
  successes: number,
  trials: number,
  confidence = 0.95,
): readonly [low: number, high: number] {
  assertShare(successes, trials);
  const z = normalQuantile((1 + confidence) / 2);
  const square = z * z;
  const middle = 2 * successes + square;
  // Of no successes it is z² to the last digit: the root of a rounded square is the number itself.
  const reach = z * Math.sqrt(square + 4 * successes * (1 - successes / trials));
  const below = 2 * (trials + square);
  return [(middle - reach) / below, successes === trials ? 1 : (middle + reach) / below];
}

/**
 * The exact one (Clopper & Pearson 1934, Biometrika 26:404; method 5 of Newcombe 1998): from the share under which
 * x or more would come out with (1 − confidence)/2, to the one under which x or fewer would. It covers the
 * confidence at least, whatever the true share is.
 */
export function exactInterval(
  successes: number,
  trials: number,
  confidence = 0.95,
): readonly [low: number, high: number] {
  assertShare(successes, trials);
  const tail = (1 - confidence) / 2;
  const shareWith = (least: number, chance: number): number =>
    halved((share) => binomialUpperTail(least, trials, share) - chance, 0, 1);
  return [shareWith(successes, tail), shareWith(successes + 1, 1 - tail)];
}

function assertShare(successes: number, trials: number): void {
  const whole = Number.isInteger(successes) && Number.isInteger(trials);
  if (!(whole && trials >= 1 && successes >= 0 && successes <= trials)) {
    throw new RangeError('a share needs whole numbers, of one trial or more');
  }
}
