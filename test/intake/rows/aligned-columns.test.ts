import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alignByBlanks } from '../../../src/intake/rows/aligned-columns.ts';

const isHeader = (cells: readonly string[]): boolean => cells[0] === 'panel' && cells.length > 1;
const cellsIn = (text: string | undefined): readonly (readonly string[])[] | undefined =>
  text?.split('\n').map((line) => line.split('\t').map((cell) => cell.trim()));

test('every cell of an aligned table keeps its column and its place, empty cells included', () => {
  const word = fc.constantFrom('a', 'bb', 'door front left', '101.5', '7');
  const row = fc.tuple(word, fc.oneof(word, fc.constant('')), word);
  fc.assert(
    fc.property(fc.array(row, { minLength: 2, maxLength: 8 }), (rows) => {
      const all = [['panel', 'point', 'reading_um'], ['x', 'y', 'z'], ...rows];
      const widths = [0, 1, 2].map((k) => Math.max(...all.map((one) => one[k]?.length ?? 0)));
      const text = all
        .map((one) => one.map((cell, k) => cell.padEnd((widths[k] ?? 0) + 2)).join(''))
        .join('\n');
      const aligned = alignByBlanks(text, isHeader)?.text;
      expect(cellsIn(aligned)).toEqual(all);
      expect(aligned?.replaceAll('\t', ' ')).toBe(text);
    }),
    { numRuns: 100 },
  );
});

test('a short row of a table that is not aligned is told by its line', () => {
  expect(
    alignByBlanks('panel  point  um\nroof  1  101\nbonnet  104\nroof  2  99', isHeader),
  ).toEqual({
    odd: 2,
  });
});

test('a text without such a header is no table between blanks', () => {
  expect(alignByBlanks('roof  1  101\nroof  2  104', isHeader)).toBeUndefined();
});

test.each([
  '--------------------',
  '====================',
  '-----  -----  ---',
  '____________________',
])('a rule of %s under the names is drawn, and no row', (rule) => {
  const text = `panel  point  um\n${rule}\nroof   1      101\nroof   2      104`;
  expect(cellsIn(alignByBlanks(text, isHeader)?.text)).toEqual([
    ['panel', 'point', 'um'],
    [''],
    ['roof', '1', '101'],
    ['roof', '2', '104'],
  ]);
});
