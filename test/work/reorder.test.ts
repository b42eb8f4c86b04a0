import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Need, reorderOf, together } from '../../src/work/reorder.ts';

const wax: Need = {
  ...{ id: 'wax', material: 'wax', unit: 'ml', lasts: false, jobs: 1, mostReady: 0 },
  usedUp: 27.2,
  listed: { pack: 250, stock: 60, price: 2600 },
};
const pads: Need = {
  ...{ id: 'foam-soft-150', material: 'soft foam pad', unit: 'pieces', lasts: true, jobs: 1 },
  ...{ usedUp: 0.3, mostReady: 3 },
  listed: { pack: 2, stock: 0, price: 1150 },
};
const times = (count: number, need: Need): Need =>
  Array.from({ length: count - 1 }, () => need).reduce(together, need);

describe('what many jobs need together', () => {
  test('is rounded to packs once for all of them, and not for each', () => {
    // 2 × 27.2 = 54.4 of 60 ml; 12 × 27.2 = 326.4, of which 266.4 are wanting: two packs of 250.
    expect(reorderOf(times(2, wax))).toMatchObject({ jobs: 2, toBuy: 0 });
    expect(reorderOf(times(12, wax))).toMatchObject({ jobs: 12, toBuy: 2 });
    expect(reorderOf(times(12, wax)).needed).toBeCloseTo(326.4, 9);
  });

  test('counts shares of a piece, so that a clay block that does three cars is bought for three', () => {
    const clay: Need = { ...wax, id: 'clay', unit: 'pieces', usedUp: 0.333333 };
    const blocks = [1, 3, 4, 6, 7, 300].map((count) => reorderOf(times(count, clay)).needed);
    expect(blocks).toEqual([1, 1, 2, 2, 3, 100]);
    // Recorded to a millionth, two thirds are a little more than they are.
    expect(reorderOf(times(3, { ...clay, usedUp: 0.666667 })).needed).toBe(2);
  });

  test('has pads for the largest job, and more only when that many are worn out', () => {
    const larger = { ...pads, mostReady: 7, usedUp: 0.5 };
    expect(reorderOf(together(pads, larger))).toMatchObject({ needed: 7, toBuy: 4 });
    expect(reorderOf(times(10, pads))).toMatchObject({ needed: 3, toBuy: 2 });
    expect(reorderOf(times(40, pads))).toMatchObject({ needed: 12, toBuy: 6 });
  });

  test('has towels for the largest job, as they are washed in between', () => {
    const towels: Need = { ...pads, id: 'towels', usedUp: 0, mostReady: 18 };
    expect(reorderOf(times(30, towels)).needed).toBe(18);
  });

  test('says nothing of packs where nobody says what is in stock', () => {
    expect(reorderOf({ ...wax, listed: null }).toBuy).toBeNull();
    const uncounted = { ...wax, listed: { pack: 250, stock: null, price: 2600 } };
    expect(reorderOf(uncounted).toBuy).toBeNull();
  });

  test('is covered by stock and packs, and by no pack fewer', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 5_000_000 }), { minLength: 1, maxLength: 30 }),
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 0, max: 20_000 }),
        (millionths, pack, stock) => {
          const need = millionths
            .map((used) => ({
              ...wax,
              usedUp: used / 1e3,
              listed: { pack, stock, price: 100 },
            }))
            .reduce<Need | undefined>(
              (all, one) => (all === undefined ? one : together(all, one)),
              undefined,
            );
          if (need === undefined) return;
          const { toBuy, needed } = reorderOf(need);
          const bought = toBuy ?? Number.NaN;
          expect(stock + bought * pack).toBeGreaterThanOrEqual(needed - 1e-4);
          if (bought > 0) expect(stock + (bought - 1) * pack).toBeLessThan(needed);
        },
      ),
    );
  });
});
