/**
 * Root of an increasing function by Newton's method kept inside a bracket (as `rtsafe` in Press et al.,
 * Numerical Recipes, 9.4): a step that leaves the bracket, or a slope of no use, is replaced by halving.
 * Where the second derivative is told too, Halley's method: what is left after a step goes with its cube.
 *
 * `at` gives value and slope. `low` may be −∞ and `high` ∞: a missing side is looked for by doubling the
 * distance from `start`. Converges to `relative` of the root (of `absolute` near zero).
 */
export type Slope = {
  readonly value: number;
  readonly slope: number;
  readonly curvature?: number;
};

type Search = {
  readonly start: number;
  readonly low?: number;
  readonly high?: number;
  readonly relative?: number;
  readonly absolute?: number;
};

const MOST_STEPS = 300;

export const solveIncreasing = (
  at: (x: number) => Slope,
  { start, low = -Infinity, high = Infinity, relative = 4e-16, absolute = 1e-300 }: Search,
): number => {
  let below = low;
  let above = high;
  let reach = Math.max(1, Math.abs(start));
  let x = start;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const { value, slope, curvature = 0 } = at(x);
    const stepped = x - value / (slope - (value * curvature) / (2 * slope));
    if (Math.abs(stepped - x) <= relative * Math.abs(x) + absolute) return stepped;
    if (value < 0) below = x;
    else above = x;
    const isInside = stepped > below && stepped < above;
    let next = stepped;
    if (Number.isFinite(above - below)) {
      if (!isInside) next = below + (above - below) / 2;
    } else if (!isInside || Math.abs(stepped - x) > 8 * reach) {
      next = value < 0 ? x + reach : x - reach;
      reach *= 2;
    }
    if (Math.abs(next - x) <= relative * Math.abs(next) + absolute) return next;
    x = next;
  }
  return x;
};

/** Root of an increasing function between two points where it lies on either side, to the last digit, by halving. */
export function halved(at: (x: number) => number, low: number, high: number): number {
  let [below, above] = [low, high];
  for (;;) {
    const middle = below + (above - below) / 2;
    if (middle <= below || middle >= above) return middle;
    if (at(middle) < 0) below = middle;
    else above = middle;
  }
}
