import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plainCells } from '../../../src/intake/rows/plain-cells.ts';

const cell = fc.constantFrom('', ' ', '1', '12', 'roof', 'roof ', 'roof panel', '104.5', 'µm', '|');
const cells = fc.array(cell, { minLength: 1, maxLength: 6 });

test('a line is cut at each of its delimiters, whatever stands in the row above and around it', () => {
  fc.assert(
    fc.property(cells, cells, fc.constantFrom(',', ';', '\t'), (own, above, mark) => {
      const line = own.join(mark);
      const text = `x${mark}y\n${line}\nroof${mark}1`;
      const start = 4;
      expect(plainCells(text, mark, { start, end: start + line.length }, above)).toEqual(own);
    }),
    { numRuns: 2000 },
  );
});

test('the last line of a text ends with it, also where the row above goes on as the text does not', () => {
  expect(plainCells('a,ro', ',', { start: 0, end: 4 }, ['a', 'roof'])).toEqual(['a', 'ro']);
  expect(plainCells('a,roof', ',', { start: 0, end: 6 }, ['a', 'ro'])).toEqual(['a', 'roof']);
  expect(plainCells('', ',', { start: 0, end: 0 }, ['a'])).toEqual(['']);
});
