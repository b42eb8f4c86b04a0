/**
 * Tests for values that stand out from a normal sample.
 *
 * Both speak of one normal population: on skewed or mixed samples they flag more than they say. The
 * input is never changed. A RangeError is thrown for fewer values than a test can work on, for a level
 * outside 0 to 1, and for values that are not finite.
 */
import { at } from '../at.ts';
import { studentTQuantile } from './student-t.ts';
import { mean, sampleStandardDeviation } from './summary.ts';

const demandLevel = (level: number): void => {
  if (!(level > 0 && level < 1)) throw new RangeError('a level must lie between 0 and 1');
};

/** The value farthest from the mean: its place in the sample, and its distance in standard deviations. */
export type Extreme = { readonly index: number; readonly distance: number };

/** G = max |xᵢ − x̄|/s (Grubbs 1969), for n ≥ 3. A sample without spread has distance 0. */
export function farthest(values: readonly number[]): Extreme {
  if (values.length < 3) throw new RangeError('a test for outliers needs three values or more');
  const centre = mean(values);
  const spread = sampleStandardDeviation(values);
  const distances = values.map((value) => Math.abs(value - centre));
  const largest = Math.max(...distances);
  return {
    index: distances.indexOf(largest),
    distance: spread === 0 ? 0 : largest / spread,
  };
}

/**
 * Critical value of Grubbs' G for n values at a level:
 * (n − 1)/√n · √(t²/(n − 2 + t²)), t = t(1 − level/(sides·n); n − 2)
 * (NIST/SEMATECH e-Handbook 1.3.5.17.1).
 */
export function grubbsCritical(n: number, level: number, sides: 1 | 2): number {
  demandLevel(level);
  if (!(Number.isInteger(n) && n >= 3)) throw new RangeError('Grubbs’ test needs n of 3 or more');
  const t = studentTQuantile(1 - level / (sides * n), n - 2);
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt(t ** 2 / (n - 2 + t ** 2));
}

export type EsdStep = {
  /** Place in the sample of the value that this step takes away. */
  readonly index: number;
  readonly distance: number;
  readonly critical: number;
};

/**
 * Generalised extreme studentised deviate (Rosner 1983, Technometrics 25:165): the farthest value is
 * taken away `most` times over; as many values are outliers as the *last* step that passes its critical
 * value, whatever the steps before it did. λᵢ = (n − i)·t/√((n − i − 1 + t²)(n − i + 1)),
 * t = t(1 − level/(2(n − i + 1)); n − i − 1).
 */
export function generalisedEsd(
  values: readonly number[],
  { most, level }: { readonly most: number; readonly level: number },
): { readonly steps: readonly EsdStep[]; readonly outliers: readonly number[] } {
  demandLevel(level);
  if (!(Number.isInteger(most) && most >= 1 && values.length - most >= 2)) {
    throw new RangeError('each step must leave two values or more');
  }
  let left = values.map((value, index) => ({ value, index }));
  const steps: EsdStep[] = [];
  for (let i = 1; i <= most; i += 1) {
    const { index: place, distance } = farthest(left.map(({ value }) => value));
    steps.push({
      index: at(left, place).index,
      distance,
      critical: esdCritical(values.length, i, level),
    });
    left = left.filter((_, k) => k !== place);
  }
  const last = steps.findLastIndex(({ distance, critical }) => distance > critical);
  return { steps, outliers: steps.slice(0, last + 1).map(({ index }) => index) };
}

function esdCritical(n: number, i: number, level: number): number {
  const t = studentTQuantile(1 - level / (2 * (n - i + 1)), n - i - 1);
  return ((n - i) * t) / Math.sqrt((n - i - 1 + t ** 2) * (n - i + 1));
}
