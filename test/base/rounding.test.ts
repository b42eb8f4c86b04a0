import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundTo, shown } from '../../src/base/rounding.ts';

describe('rounding for people', () => {
  test('halves go away from zero in decimal, where toFixed would not', () => {
    expect(shown(2.675, 2)).toBe('2.68');
    expect(shown(1.005, 2)).toBe('1.01');
    expect(shown(-2.675, 2)).toBe('-2.68');
  });

  test('nothing is ever shown as minus zero', () => {
    expect(shown(-0.001, 2)).toBe('0.00');
    expect(shown(-0, 0)).toBe('0');
  });

  test('small and large numbers keep their size', () => {
    expect(roundTo(1.5e-9, 6)).toBe(0);
    expect(roundTo(1.23e21, 2)).toBe(1.23e21);
    expect(roundTo(Number.NaN, 2)).toBeNaN();
  });

  test('a rounded number is never further away than half a unit of its last digit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 0, max: 6 }),
        (value, digits) => {
          expect(Math.abs(roundTo(value, digits) - value)).toBeLessThanOrEqual(
            0.5 * 10 ** -digits + 1e-9,
          );
        },
      ),
    );
  });
});
