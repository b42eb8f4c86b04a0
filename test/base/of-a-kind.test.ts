import { expect, test } from 'vitest';
import { type Diagnostic, error, warning } from '../../src/base/diagnostics.ts';
import { cutOfAKind, moreLike, mostTold, standsFor } from '../../src/base/of-a-kind.ts';

const faults = (count: number, file = 'a.csv'): readonly Diagnostic[] =>
  Array.from({ length: count }, (_, i) =>
    error('cell-invalid', `fault ${i}`, { at: { file, line: i + 1 } }),
  );

test('as many as are told of a kind stay as they are', () => {
  expect(cutOfAKind(faults(mostTold))).toEqual(faults(mostTold));
});

test('of more the first are told and the rest counted, file by file', () => {
  const other = warning('cell-invalid', 'a warning', { at: { file: 'a.csv', line: 9 } });
  const all = [...faults(mostTold + 7), other, ...faults(3, 'b.csv')];
  expect(cutOfAKind(all)).toEqual([
    ...faults(mostTold),
    other,
    ...faults(3, 'b.csv'),
    error('cell-invalid', 'and 7 more of this kind', { at: { file: 'a.csv' } }),
  ]);
});

test('what has no line is kept, as a count of others is', () => {
  const counts = Array.from({ length: mostTold + 5 }, () =>
    error('cell-invalid', 'and 980 more of this kind', { at: { file: 'a.csv' } }),
  );
  expect(cutOfAKind(counts)).toEqual(counts);
});

test('more of a fault that is of no file is of none', () => {
  expect(moreLike(error('cell-invalid', 'a fault'), 3)).toEqual(
    error('cell-invalid', 'and 3 more of this kind'),
  );
});

test('a count of others stands for as many, and anything else for itself', () => {
  const one = { severity: 'warning', code: 'reading-doubted', message: 'a reading of 0' } as const;
  expect([standsFor(one), standsFor(moreLike(one, 70))]).toEqual([1, 70]);
});
