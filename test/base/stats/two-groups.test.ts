import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mean } from '../../../src/base/stats/summary.ts';
import { ashmanD, splitInTwo } from '../../../src/base/stats/two-groups.ts';
import { modesExample, oldFaithful } from '../../reference/mixtures.ts';

const squares = (values: readonly number[]): number => {
  const centre = values.length === 0 ? 0 : mean(values);
  return values.reduce((sum, value) => sum + (value - centre) ** 2, 0);
};

describe('a sample cut in two', () => {
  test('keeps every value and no other cut has a smaller sum of squares', () => {
    const sample = fc.array(fc.integer({ min: 40, max: 400 }), { minLength: 2, maxLength: 15 });
    fc.assert(
      fc.property(sample, (values) => {
        const sorted = [...values].sort((a, b) => a - b);
        const groups = splitInTwo(values);
        if (groups === undefined) {
          expect(new Set(values).size).toBe(1);
          return;
        }
        expect([...groups.lower, ...groups.upper]).toEqual(sorted);
        const best = Math.min(
          ...sorted
            .slice(1)
            .map((_, k) => squares(sorted.slice(0, k + 1)) + squares(sorted.slice(k + 1))),
        );
        expect(squares(groups.lower) + squares(groups.upper)).toBeCloseTo(best, 6);
      }),
    );
  });
  test('is none where all values are one', () => {
    expect(splitInTwo([7, 7, 7])).toBeUndefined();
  });
  test('refuses a single value and values that are not finite', () => {
    expect(() => splitInTwo([1])).toThrow(RangeError);
    expect(() => splitInTwo([1, Number.NaN])).toThrow(RangeError);
  });
});

describe('Ashman’s D', () => {
  test.each([
    ['the formula’s example (R package modes)', modesExample],
    ['Old Faithful waiting times', oldFaithful.waiting],
    ['Old Faithful eruptions', oldFaithful.eruptions],
  ])('has its published value for %s', (_, { means, sds, ashmanD: expected }) => {
    const [one, other] = [
      { mean: means[0], sd: sds[0] },
      { mean: means[1], sd: sds[1] },
    ];
    expect(ashmanD(one, other)).toBeCloseTo(expected, 9);
    expect(ashmanD(other, one)).toBe(ashmanD(one, other));
  });
});
