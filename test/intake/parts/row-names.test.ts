import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const text = (...numbers: readonly number[]) =>
  `"panel","point","reading_um"\n${numbers.map((n, k) => `"${n}","bonnet",${k + 1},${104 + k}\n`).join('')}`;

test('rows that begin with their number, which the header does not name, are read behind it', () => {
  expect(values(text(1, 2, 3))).toEqual([
    ['bonnet', '1', 1, 104],
    ['bonnet', '2', 1, 105],
    ['bonnet', '3', 1, 106],
  ]);
  const [reading] = read(text(1, 2, 3)).value?.readings ?? [];
  expect(reading?.origin).toMatchObject({ line: 2, column: 16 });
});

test('a first cell that does not count the rows is one too many', () => {
  expect(briefs(text(1, 2, 4))[0]).toContain('error row-too-long');
});
