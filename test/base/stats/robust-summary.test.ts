import { describe, expect, test } from 'vitest';
import { algorithmA } from '../../../src/base/stats/algorithm-a.ts';
import { robustSummary } from '../../../src/base/stats/robust-summary.ts';
import { mean } from '../../../src/base/stats/summary.ts';
import { creosote, fiveMeasurements } from '../../reference/proficiency.ts';
import { normal, seededRandom } from '../../samples/seeded-random.ts';

/** b_5 of Croux & Rousseeuw, which the printed MAD is without. */
const FOR_FIVE = 1.206;

describe('a robust mean and spread', () => {
  test('of five measurements are the median and the MAD that Rousseeuw and Hubert print, lost decimal mark or not', () => {
    for (const of of ['clean', 'slipped'] as const) {
      const found = robustSummary(fiveMeasurements[of]);
      expect(mean(fiveMeasurements[of])).toBeCloseTo(fiveMeasurements.mean[of], 2);
      expect(found.mean).toBe(fiveMeasurements.median[of]);
      expect(Math.abs(found.sd / FOR_FIVE - fiveMeasurements.mad)).toBeLessThan(0.0006);
    }
  });

  test.each([3, 4, 5, 6, 7])(
    'of %d values hold against one that is as far off as it likes',
    (p) => {
      const honest = Array.from({ length: p - 1 }, (_, i) => 110 + 0.3 * i);
      const near = robustSummary([...honest, 150]);
      const far = robustSummary([...honest, 15_000]);
      expect(far).toEqual(near);
      expect(far.mean).toBeGreaterThanOrEqual(Math.min(...honest));
      expect(far.mean).toBeLessThanOrEqual(Math.max(...honest));
    },
  );

  test('of six and seven values hold against two', () => {
    expect(robustSummary([110, 110.2, 110.4, 110.6, 900, 900]).mean).toBeLessThan(111);
    expect(robustSummary([110, 110.2, 110.4, 110.6, 110.8, 900, 900]).mean).toBe(110.6);
  });

  test.each([2, 3, 4, 5, 6, 7])(
    'have the standard deviation of the mother of %d normal values',
    (p) => {
      const random = seededRandom(1_992 + p);
      const draws = Array.from({ length: 20_000 }, () =>
        robustSummary(Array.from({ length: p }, () => 50 + 2 * normal(random))),
      );
      expect(Math.abs(mean(draws.map(({ sd }) => sd)) / 2 - 1)).toBeLessThan(0.02);
      expect(Math.abs(mean(draws.map((one) => one.mean)) - 50)).toBeLessThan(0.05);
    },
  );

  test('are those of Algorithm A from eight values on', () => {
    expect(robustSummary(creosote.values)).toEqual(algorithmA(creosote.values));
    expect(robustSummary(creosote.values.slice(0, 8))).toEqual(
      algorithmA(creosote.values.slice(0, 8)),
    );
    expect(robustSummary(creosote.values.slice(0, 7)).mean).toBe(20.155);
  });

  test('of values half of which are alike are that value and no spread; of one value there are none', () => {
    expect(robustSummary([5, 5, 9])).toEqual({ mean: 5, sd: 0 });
    expect(() => robustSummary([5])).toThrow(RangeError);
    expect(() => robustSummary([5, Number.NaN, 6])).toThrow(RangeError);
  });
});
