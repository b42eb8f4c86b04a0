import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packs } from '../../src/work/packs.ts';

describe('packs to buy', () => {
  it.each([
    [250, 1000, 0, 1],
    [1000, 1000, 0, 1],
    [1001, 1000, 0, 2],
    [1001, 1000, 500, 1],
    [1001, 1000, 2000, 0],
    [0, 1000, 0, 0],
    [0.1 + 0.2, 0.3, 0, 1],
  ])('of a need of %d in packs of %d with %d in stock are %d', (need, size, stock, count) => {
    expect(packs(need, size, stock)).toBe(count);
  });

  it('cover the need, and are never one too many', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        fc.double({ min: 0.1, max: 5000, noNaN: true }),
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        (need, size, stock) => {
          const count = packs(need, size, stock);
          expect(Number.isInteger(count)).toBe(true);
          expect(stock + count * size).toBeGreaterThanOrEqual(need - 1e-6 * size);
          if (count > 0) expect(stock + (count - 1) * size).toBeLessThan(need);
        },
      ),
    );
  });
});
