import { binomialUpperTail } from './incomplete-beta.ts';
import { halved } from './root.ts';

/**
 * The exact interval for a share, of x successes out of n (Clopper & Pearson 1934, Biometrika 26:404; method 5 of
 * Newcombe 1998, Statistics in Medicine 17:857): from the share under which x or more would come out with
 * (1 − confidence)/2, to the one under which x or fewer would. It covers the confidence at least, whatever the true
 * share is. It needs a whole number of successes out of one trial or more, and throws a RangeError else.
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
