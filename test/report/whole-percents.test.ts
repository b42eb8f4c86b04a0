import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sum } from '../../src/base/sum.ts';
import { wholePercents } from '../../src/report/whole-percents.ts';

describe('parts in whole per cent', () => {
  test('add up to the whole, and none is a per cent off its part', () => {
    const weights = fc.array(fc.double({ min: 0, max: 10, noNaN: true }), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(weights, (some) => {
        fc.pre(sum(some) > 0);
        const parts = some.map((one) => (100 * one) / sum(some));
        const whole = wholePercents(parts, 100);
        expect(sum(whole)).toBe(100);
        whole.forEach((one, i) => {
          expect(Math.abs(one - (parts[i] ?? 0))).toBeLessThan(1);
        });
      }),
    );
  });

  test('of ninths are 34, 11, 22, 22 and 11', () => {
    const ninths = [3, 1, 2, 2, 1].map((one) => (100 * one) / 9);
    expect(wholePercents(ninths, 100)).toEqual([34, 11, 22, 22, 11]);
  });
});
