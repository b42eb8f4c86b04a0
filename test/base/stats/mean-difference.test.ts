import { describe, expect, test } from 'vitest';
import { differenceInterval, pairedDifference } from '../../../src/base/stats/mean-difference.ts';
import { sleep } from '../../reference/mean-differences.ts';

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
  test('of pairs that all differ alike is known exactly', () => {
    expect(differenceInterval(pairedDifference([3, 4], [1, 2]), 0.95)).toEqual([2, 2]);
  });
  test('refuses pairs that do not match, a single pair and impossible confidences', () => {
    expect(() => pairedDifference([1, 2], [1])).toThrow(RangeError);
    expect(() => pairedDifference([1], [2])).toThrow(RangeError);
    for (const confidence of [0, 1])
      expect(() => differenceInterval(pairedDifference([1, 2], [2, 4]), confidence)).toThrow(
        RangeError,
      );
  });
});
