import { describe, expect, test } from 'vitest';
import {
  differenceInterval,
  pairedDifference,
  welchDifference,
} from '../../../src/base/stats/mean-difference.ts';
import { auto83b, sleep } from '../../reference/mean-differences.ts';

/** A sample of n values with exactly this mean and standard deviation. */
function sampleWith({ n, mean, sd }: { n: number; mean: number; sd: number }): readonly number[] {
  const raw = Array.from({ length: n }, (_, k) => k - (n - 1) / 2);
  const spread = Math.sqrt(raw.reduce((sum, x) => sum + x * x, 0) / (n - 1));
  return raw.map((x) => mean + (sd * x) / spread);
}

describe('a difference of means', () => {
  test('over pairs has the interval of Student’s sleep data', () => {
    const found = pairedDifference(sleep.x, sleep.y);
    expect(found.difference).toBeCloseTo(sleep.paired.difference, 12);
    expect(found.difference / found.standardError).toBeCloseTo(sleep.paired.t, 9);
    expect(found.dof).toBe(sleep.paired.dof);
    const [low, high] = differenceInterval(found, 0.95);
    expect(low).toBeCloseTo(sleep.paired.interval95[0], 9);
    expect(high).toBeCloseTo(sleep.paired.interval95[1], 9);
  });
  test('of two samples has the Welch interval of Student’s sleep data', () => {
    const found = welchDifference(sleep.x, sleep.y);
    expect(found.difference / found.standardError).toBeCloseTo(sleep.welch.t, 9);
    expect(found.dof).toBeCloseTo(sleep.welch.dof, 9);
    const [low, high] = differenceInterval(found, 0.95);
    expect(low).toBeCloseTo(sleep.welch.interval95[0], 9);
    expect(high).toBeCloseTo(sleep.welch.interval95[1], 9);
  });
  test('of AUTO83B has the Welch interval (NIST e-Handbook 1.3.5.3)', () => {
    const found = welchDifference(sampleWith(auto83b.first), sampleWith(auto83b.second));
    expect(found.difference / found.standardError).toBeCloseTo(auto83b.welch.t, 6);
    expect(found.dof).toBeCloseTo(auto83b.welch.dof, 6);
    const [low, high] = differenceInterval(found, 0.95);
    expect(low).toBeCloseTo(auto83b.welch.interval95[0], 6);
    expect(high).toBeCloseTo(auto83b.welch.interval95[1], 6);
  });
  test('of samples without spread is known exactly', () => {
    const found = welchDifference([3, 3], [1, 1, 1]);
    expect(differenceInterval(found, 0.95)).toEqual([2, 2]);
  });
  test('refuses pairs that do not match, single values and impossible confidences', () => {
    expect(() => pairedDifference([1, 2], [1])).toThrow(RangeError);
    expect(() => welchDifference([1], [1, 2])).toThrow(RangeError);
    expect(() => differenceInterval(pairedDifference([1, 2], [2, 4]), 1)).toThrow(RangeError);
  });
});
