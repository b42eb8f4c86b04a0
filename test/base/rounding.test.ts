import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundTo, shown } from '../../src/base/rounding.ts';

describe('a number as a person reads it', () => {
  test.each([
    // Half away from zero in decimal, where the nearest binary number lies under the half.
    [2.675, 2, '2.68'],
    [1.005, 2, '1.01'],
    [8.345, 2, '8.35'],
    [-2.675, 2, '-2.68'],
    [0.5, 0, '1'],
    [-0.5, 0, '-1'],
    [2.5, 0, '3'],
    [99.95, 1, '100.0'],
    [0, 2, '0.00'],
    [-0, 1, '0.0'],
    [-0.04, 1, '0.0'],
    [-0.4, 0, '0'],
    [1e-7, 2, '0.00'],
    [1.5e-7, 7, '0.0000002'],
    [1234567.891, 1, '1234567.9'],
    [114, 1, '114.0'],
  ])('%f with %i decimals is %s', (value, digits, text) => {
    expect(shown(value, digits)).toBe(text);
  });

  test('what is not finite is not made a number of', () => {
    expect(roundTo(Number.NaN, 2)).toBeNaN();
    expect(roundTo(Number.POSITIVE_INFINITY, 2)).toBe(Number.POSITIVE_INFINITY);
  });

  test('rounding moves no value by more than half a digit, and rounding again moves none', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 0, max: 6 }),
        (value, digits) => {
          const rounded = roundTo(value, digits);
          expect(Math.abs(rounded - value)).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-9);
          expect(roundTo(rounded, digits)).toBe(rounded);
        },
      ),
    );
  });
});
