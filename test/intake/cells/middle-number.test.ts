import { expect, test } from 'vitest';
import { middleNumber } from '../../../src/intake/cells/middle-number.ts';

const often = (numbers: readonly number[]): readonly (readonly [number, number])[] =>
  numbers.map((number) => [number, 1]);

test('the middle of counted numbers is that of the numbers one by one, the lower of two', () => {
  expect(middleNumber(often([5, 1, 3]))).toBe(3);
  expect(middleNumber(often([4, 1, 3, 2]))).toBe(2);
  expect(
    middleNumber([
      [120, 7],
      [9999, 2],
      [110, 1],
    ]),
  ).toBe(120);
  expect(middleNumber([])).toBe(0);
});
