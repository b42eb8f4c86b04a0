/** The best matching against all there are. */
import { describe, expect, test } from 'vitest';
import { bestMatching } from '../../src/base/best-matching.ts';
import { seededRandom } from '../samples/seeded-random.ts';

const orders = (items: readonly number[]): readonly (readonly number[])[] =>
  items.length === 0
    ? [[]]
    : items.flatMap((item) =>
        orders(items.filter((other) => other !== item)).map((rest) => [item, ...rest]),
      );
const worthOf = (worth: readonly (readonly number[])[], taken: readonly number[]): number =>
  taken.reduce((total, thing, i) => total + (worth[i]?.[thing] ?? Number.NaN), 0);

describe('a matching', () => {
  test('is worth as much as the best of all there are, and gives everybody one', () => {
    const random = seededRandom(1955);
    const sizes = [1, 2, 3, 4, 5, 6];
    for (let k = 0; k < 300; k += 1) {
      const n = sizes[k % sizes.length] ?? 1;
      const worth = Array.from({ length: n }, (_, i) =>
        Array.from({ length: n }, (__, j) =>
          i !== j && random() < 0.3 ? Number.NEGATIVE_INFINITY : Math.round(20 * random() - 10),
        ),
      );
      const all = orders(Array.from({ length: n }, (_, i) => i));
      const taken = bestMatching(worth);
      expect([...taken].sort()).toEqual(Array.from({ length: n }, (_, i) => i));
      expect(worthOf(worth, taken)).toBe(Math.max(...all.map((one) => worthOf(worth, one))));
    }
  });

  test('of nobody is none', () => {
    expect(bestMatching([])).toEqual([]);
  });

  test('moves three on where that is worth more than any two changed', () => {
    const worth = [
      [0, 5, 4],
      [4, 0, 5],
      [5, 4, 0],
    ];
    expect(bestMatching(worth)).toEqual([1, 2, 0]);
  });
});
