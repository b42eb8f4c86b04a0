import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { Reading } from '../../../src/film/reading.ts';
import { doubtNines } from '../../../src/intake/doubts/row-of-nines.ts';

const readingsOf = (...values: number[]) =>
  values.map((value, k) => {
    const origin = { file: 'r.csv', line: k + 2, column: 6 };
    return { thickness: micrometres(value), origin } as Reading;
  });

test('a 999 far above all other readings is told, at its place', () => {
  expect(doubtNines(readingsOf(101, 999, 104.5), 'um')).toMatchObject([
    {
      severity: 'warning',
      message: '999 may be a full display, written for no reading: no other is over 105 µm',
      at: { file: 'r.csv', line: 3, column: 6 },
    },
  ]);
  expect(doubtNines(readingsOf(101, 1999, 999), 'um')).toHaveLength(2);
});

test('a 999 among filler, alone, or in another unit is not doubted', () => {
  expect(doubtNines(readingsOf(101, 999, 640), 'um')).toEqual([]);
  expect(doubtNines(readingsOf(999), 'um')).toEqual([]);
  expect(doubtNines(readingsOf(101, 999, 104), 'mil')).toEqual([]);
  expect(doubtNines(readingsOf(101, 998, 104), 'um')).toEqual([]);
});
