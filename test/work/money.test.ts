import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apportioned, roundedTogether, sumRounded } from '../../src/work/apportion.ts';
import {
  divided,
  isExactNumber,
  percentOfShare,
  type RoundingMode,
  shareOfPercent,
  toCash,
} from '../../src/work/money.ts';

describe('a quotient is rounded as it is asked for', () => {
  const table: readonly (readonly [
    dividend: bigint,
    ...(readonly [halfUp: bigint, halfEven: bigint, down: bigint, up: bigint]),
  ])[] = [
    [24n, 2n, 2n, 2n, 3n],
    [25n, 3n, 2n, 2n, 3n],
    [26n, 3n, 3n, 2n, 3n],
    [35n, 4n, 4n, 3n, 4n],
    [30n, 3n, 3n, 3n, 3n],
    [0n, 0n, 0n, 0n, 0n],
    [-25n, -3n, -2n, -2n, -3n],
    [-35n, -4n, -4n, -3n, -4n],
    [-24n, -2n, -2n, -2n, -3n],
  ];
  test.each(table)('%s tenths', (tenths, halfUp, halfEven, down, up) => {
    const by = (mode: RoundingMode): bigint => divided(tenths, 10n, mode);
    expect([by('half-up'), by('half-even'), by('down'), by('up')]).toEqual([
      halfUp,
      halfEven,
      down,
      up,
    ]);
  });

  test('1.005 of a hundred, which binary fractions get wrong, is a half', () => {
    expect(divided(1005n, 10n, 'half-up')).toBe(101n);
    expect(divided(1005n, 10n, 'half-even')).toBe(100n);
  });
});

test('a per cent of up to four decimals is an exact share', () => {
  for (const [percent, share] of [
    [20, 200_000n],
    [17.5, 175_000n],
    [8.875, 88_750n],
    [0.0001, 1n],
    [100, 1_000_000n],
  ] as const) {
    expect(shareOfPercent(percent)).toBe(share);
    expect(percentOfShare(share)).toBe(percent);
  }
});

test('what coins cannot pay goes to the nearest that they can, a half upwards', () => {
  // Swiss practice of 5 Rappen: 1.02 → 1.00, 1.03 → 1.05, 1.075 has no meaning in whole Rappen.
  expect([102n, 103n, 107n, 108n, 100n].map((amount) => toCash(amount, 5n))).toEqual([
    100n,
    105n,
    105n,
    110n,
    100n,
  ]);
  expect(toCash(25n, 10n)).toBe(30n);
});

test('an amount is exact as a number up to 2^53 − 1 on either side, and no further', () => {
  expect(isExactNumber(9_007_199_254_740_991n)).toBe(true);
  expect(isExactNumber(9_007_199_254_740_992n)).toBe(false);
  expect(isExactNumber(-9_007_199_254_740_991n)).toBe(true);
  expect(isExactNumber(-9_007_199_254_740_992n)).toBe(false);
});

const apart = (sum: bigint, weights: readonly bigint[]): readonly bigint[] =>
  apportioned(sum, weights, (weight) => weight).map(({ amount }) => amount);

describe('shares of a sum by the largest remainder', () => {
  test('100 in three equal parts is 34, 33, 33', () => {
    expect(apart(100n, [1n, 1n, 1n])).toEqual([34n, 33n, 33n]);
  });

  test('of equal remainders the larger part is raised', () => {
    // 1/2 and 3/2: both remainders are a half.
    expect(apart(2n, [1n, 3n])).toEqual([0n, 2n]);
  });

  /** 21 seats by 5117, 4400, 162, 161 and 160 votes of 10,000; quota 476.19: the ten-thousandth seats
   *  10.746, 9.240, .340, .338, .336 leave two seats, for .746 and .340. */
  test('seats by votes, reckoned by hand with quotas and remainders', () => {
    expect(apart(21n, [5117n, 4400n, 162n, 161n, 160n])).toEqual([11n, 9n, 1n, 0n, 0n]);
  });

  test('parts below nothing are shared out with the others', () => {
    const fractions = [
      { dividend: -5n, divisor: 2n },
      { dividend: 7n, divisor: 3n },
    ];
    // −2.5 + 2.333 = −0.167 → 0: floors −3 and 2 leave one, for the remainder .5 over .333.
    expect(sumRounded(fractions, 'half-up')).toBe(0n);
    expect(
      roundedTogether(
        fractions.map((fraction) => ({ of: null, ...fraction })),
        0n,
      ).map(({ amount }) => amount),
    ).toEqual([-2n, 2n]);
  });

  test('always adds up, and no part is a whole unit off its exact share', () => {
    const fraction = fc.record({
      dividend: fc.bigInt({ min: -(10n ** 15n), max: 10n ** 15n }),
      divisor: fc.bigInt({ min: 1n, max: 2n * 10n ** 6n }),
    });
    const modes = fc.constantFrom<RoundingMode>('half-up', 'half-even', 'down', 'up');
    fc.assert(
      fc.property(fc.array(fraction, { maxLength: 8 }), modes, (fractions, mode) => {
        const sum = sumRounded(fractions, mode);
        const parts = roundedTogether(
          fractions.map((fraction) => ({ of: null, ...fraction })),
          sum,
        ).map(({ amount }) => amount);
        expect(parts.reduce((together, part) => together + part, 0n)).toBe(sum);
        for (const [i, { dividend, divisor }] of fractions.entries()) {
          const off = (parts[i] ?? 0n) * divisor - dividend;
          expect(off < divisor && off > -divisor).toBe(true);
        }
      }),
    );
  });
});
