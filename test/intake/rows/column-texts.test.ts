import fc from 'fast-check';
import { expect, test } from 'vitest';
import { columnTexts, someText } from '../../../src/intake/rows/column-texts.ts';
import type { Row } from '../../../src/intake/rows/row.ts';

const rowsOf = (lines: readonly (readonly string[])[]): readonly Row[] =>
  lines.map((cells, k) => ({ cells, line: k + 1, start: 0, quoted: false }));

const lines = fc.array(
  fc.array(fc.constantFrom('', ' ', 'roof', ' roof', 'roof ', 'boot', '1'), { maxLength: 3 }),
  { maxLength: 30 },
);

test('each text of a column stands once, with its first row and the number of its rows', () => {
  fc.assert(
    fc.property(lines, fc.integer({ min: 0, max: 3 }), (all, column) => {
      const texts = all.map((cells) => (cells[column] ?? '').trim());
      const told = [...columnTexts(rowsOf(all), column)].map(([text, { row, count }]) => ({
        text,
        line: row.line,
        count,
      }));
      expect(told).toEqual(
        [...new Set(texts)].map((text) => ({
          text,
          line: texts.indexOf(text) + 1,
          count: texts.filter((other) => other === text).length,
        })),
      );
    }),
  );
});

test('the texts of one column are not taken for those of another, nor one table’s for another’s', () => {
  const rows = rowsOf([['roof', '1']]);
  expect([...columnTexts(rows, 0).keys(), ...columnTexts(rows, 1).keys()]).toEqual(['roof', '1']);
  expect([...columnTexts(rowsOf([['boot', '2']]), 0).keys()]).toEqual(['boot']);
  expect(someText(rows, 1, (text) => text === '1')).toBe(true);
  expect(someText(rows, 1, (text) => text === 'roof')).toBe(false);
});
