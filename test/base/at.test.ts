import { expect, test } from 'vitest';
import { at, valueAt } from '../../src/base/at.ts';

test('an item is taken by its place, of lists and of typed arrays', () => {
  expect(at(['a', 'b'], 1)).toBe('b');
  expect(at(Float64Array.of(0, 2.5), 0)).toBe(0);
});

test('a place outside the list is no silent nothing', () => {
  expect(() => at([1, 2], 2)).toThrow(RangeError);
  expect(() => at([1, 2], -1)).toThrow(RangeError);
  expect(() => at([], 0)).toThrow('there is no place 0 among 0');
});

test('a value is taken by its key, and a key that is not there is no silent nothing', () => {
  const values = new Map([['roof', 0]]);
  expect(valueAt(values, 'roof')).toBe(0);
  expect(() => valueAt(values, 'boot')).toThrow(new RangeError('there is no boot among 1'));
});
