import { expect, test } from 'vitest';
import { cohenKappa } from '../../../src/base/stats/kappa.ts';

test('kappa refuses a count under nothing among others, and a table of nothing', () => {
  const refused = 'kappa needs a square table of counts that is not empty';
  for (const table of [
    [
      [8, -1],
      [2, 5],
    ],
    [
      [0, 0],
      [0, 0],
    ],
    [[1, 2]],
  ]) {
    expect(() => cohenKappa(table)).toThrow(refused);
  }
  expect(
    cohenKappa([
      [8, 0],
      [2, 5],
    ]).observed,
  ).toBe(13 / 15);
});
