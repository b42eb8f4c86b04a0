import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  add,
  dot,
  identity,
  multiply,
  solveLinear,
  times,
  transpose,
} from '../../../src/base/stats/linear.ts';
import { evenly } from '../../evenly.ts';

describe('linear equations', () => {
  it('are solved as in the example of a textbook (Golub & Van Loan, Matrix Computations, 3.4)', () => {
    // The matrix of their example of partial pivoting, a right side with the answer 1, 1, 1.
    const a = [
      [3, 17, 10],
      [2, 4, -2],
      [6, 18, -12],
    ];
    const x = solveLinear(a, [[30], [4], [12]]);
    for (const [value] of x) expect(value).toBeCloseTo(1, 12);
  });

  it('are solved though the first pivot is nothing', () => {
    expect(
      solveLinear(
        [
          [0, 2],
          [4, 0],
        ],
        [[2], [8]],
      ),
    ).toEqual([[2], [1]]);
  });

  it('give the right side back, for several at once', () => {
    const entry = evenly(-1, 1);
    const matrix = (rows: number, columns: number) =>
      fc.array(fc.array(entry, { minLength: columns, maxLength: columns }), {
        minLength: rows,
        maxLength: rows,
      });
    fc.assert(
      fc.property(matrix(4, 4), matrix(4, 2), (some, b) => {
        // Well conditioned: every pivot outweighs its row.
        const a = add(
          some,
          multiply(identity(4), [
            [5, 0, 0, 0],
            [0, 5, 0, 0],
            [0, 0, 5, 0],
            [0, 0, 0, 5],
          ]),
        );
        const back = multiply(a, solveLinear(a, b));
        for (const [i, row] of back.entries()) {
          for (const [j, value] of row.entries()) expect(value).toBeCloseTo(b[i]?.[j] ?? 0, 12);
        }
      }),
    );
  });

  it('without an answer are a mistake of the caller', () => {
    expect(() =>
      solveLinear(
        [
          [1, 2],
          [2, 4],
        ],
        [[1], [2]],
      ),
    ).toThrow('no answer');
  });
});

it('products and transposes go by rows and columns', () => {
  const a = [
    [1, 2, 3],
    [4, 5, 6],
  ];
  expect(transpose(a)).toEqual([
    [1, 4],
    [2, 5],
    [3, 6],
  ]);
  expect(times(a, [1, 0, -1])).toEqual([-2, -2]);
  expect(multiply(a, transpose(a))).toEqual([
    [14, 32],
    [32, 77],
  ]);
  expect(multiply(identity(2), a)).toEqual(a);
  expect(dot([1, 2], [3, 4])).toBe(11);
  expect(transpose([])).toEqual([]);
});
