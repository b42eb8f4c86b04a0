import { expect, test } from 'vitest';
import { groupBy } from '../../src/base/group-by.ts';

test('items are gathered by key, keys in the order in which they first appear, items in theirs', () => {
  const groups = groupBy(['roof', 'boot', 'bonnet', 'rail', 'bumper'], ([first]) => first);
  expect([...groups]).toEqual([
    ['r', ['roof', 'rail']],
    ['b', ['boot', 'bonnet', 'bumper']],
  ]);
});

test('any iterable is gathered, and of nothing there are no groups', () => {
  const even = groupBy(new Set([1, 2, 3, 4]), (n) => n % 2 === 0);
  expect([...even]).toEqual([
    [false, [1, 3]],
    [true, [2, 4]],
  ]);
  expect(groupBy([], () => 1).size).toBe(0);
});
