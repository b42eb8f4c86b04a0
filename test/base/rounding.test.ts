import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figure, finePercent, rangeShown, roundTo, shown } from '../../src/base/rounding.ts';

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
    // So large that a hundred times it lies under the half, which its digits do not.
    [138900000000.895, 2, '138900000000.90'],
  ])('%f with %i decimals is %s', (value, digits, text) => {
    expect(shown(value, digits)).toBe(text);
  });

  test('what is not finite is not made a number of', () => {
    expect(roundTo(Number.NaN, 2)).toBeNaN();
    expect(roundTo(Number.POSITIVE_INFINITY, 2)).toBe(Number.POSITIVE_INFINITY);
  });

  test('a number is rounded as its shortest decimal digits are, at a tie and beside one', () => {
    // The definition itself: the digits are shifted, the whole number rounded, and shifted back.
    const byDigits = (value: number, digits: number): number => {
      const [mantissa = '0', exponent = '0'] = Math.abs(value).toString().split('e');
      const [whole = '0', power = '0'] = Math.round(
        Number(`${mantissa}e${Number(exponent) + digits}`),
      )
        .toString()
        .split('e');
      return Math.sign(value) * Number(`${whole}e${Number(power) - digits}`);
    };
    const tie = fc
      .tuple(fc.integer({ min: -2e6, max: 2e6 }), fc.integer({ min: 0, max: 7 }))
      .map(([whole, digits]) => Number(`${whole}5e-${digits + 1}`));
    const beside = tie.chain((value) =>
      fc.constantFrom(value, value * (1 + 2 ** -52), value * (1 - 2 ** -53), value + 1e-8),
    );
    const any = fc.oneof(
      beside,
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.double({ min: -1e4, max: 1e4, noNaN: true }),
    );
    fc.assert(
      fc.property(any, fc.integer({ min: -2, max: 12 }), (value, digits) => {
        expect(roundTo(value, digits)).toBe(byDigits(value, digits));
      }),
      { numRuns: 5000 },
    );
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

describe('a share', () => {
  test.each([
    [0, '0.0 %'],
    [0.0004, '0.0 %'],
    [0.0005, '0.1 %'],
    [0.0126, '1.3 %'],
    [0.0994, '9.9 %'],
    // 9.95 % would be written as 10.0: ten and more have no figure behind the point.
    [0.0995, '10 %'],
    [0.1, '10 %'],
    [0.126, '13 %'],
    [1, '100 %'],
  ])('of %d is told as %s', (share, text) => {
    expect(finePercent(share)).toBe(text);
  });
});

test('a number of the model has the figures that count, and no noughts behind them', () => {
  expect([figure(12.7), figure(0.05), figure(25.40001), figure(1234.5), figure(2, 2)]).toEqual([
    '12.7',
    '0.05',
    '25.4',
    '1235',
    '2',
  ]);
  expect(figure(0.123456, 2)).toBe('0.12');
});

test('a range is from the least to the most, and one figure where both are written alike', () => {
  const whole = (value: number): string => shown(value, 0);
  expect(rangeShown([3, 1, 2], whole)).toBe('1–3');
  expect(rangeShown([2.4, 1.6], whole, ' to ')).toBe('2');
  expect(rangeShown([-1, 4], whole, ' to ')).toBe('-1 to 4');
});
