import { expect, test } from 'vitest';
import { createSource } from '../../src/intake/source.ts';
import { cellSpan, tokenize } from '../../src/intake/tokens.ts';
import { brief } from './helpers.ts';

const split = (text: string) => tokenize(createSource('f', text), ',', { offset: 0, line: 1 });
const placed = (text: string) => {
  const source = createSource('f', text);
  return split(text).value?.map((row) =>
    row.cells.map((_, k) => {
      const { offset, length } = cellSpan(source, row, k, ',');
      return text.slice(offset, offset + length);
    }),
  );
};

test('blank lines and comment lines are no rows and still count as lines', () => {
  const rows = split('# "odd\na,b\n\n#\nc,d # e\n ,\nf').value;
  expect(rows?.map(({ cells, line }) => [line, cells])).toEqual([
    [2, ['a', 'b']],
    [5, ['c', 'd # e']],
    [7, ['f']],
  ]);
});

test('a quoted cell may hold the delimiter, quotes and line ends', () => {
  const rows = split('a,"b,""c""\nd",e\nf,g\n"#h",i').value;
  expect(rows?.map(({ cells, line }) => [line, cells])).toEqual([
    [1, ['a', 'b,"c"\nd', 'e']],
    [3, ['f', 'g']],
    [4, ['#h', 'i']],
  ]);
});

test('every cell is found where it stands, quotes included and blanks not', () => {
  expect(placed('a, bc ,"d,\n""e",f\n5" pad,,"",g')).toEqual([
    ['a', 'bc', '"d,\n""e"', 'f'],
    ['5" pad', '', '""', 'g'],
  ]);
});

test('an unclosed quote is told where it opens', () => {
  expect(split('a,b\nc,"d\ne,f\n').diagnostics.map(brief)).toEqual(['2:3+1 error quote-unclosed']);
});

test('a quote never closed in a long file is told where it opens, not where memory ends', () => {
  const text = `a,b\nc,"d\n${'e,f\n'.repeat(100_000)}g,"h"\n`;
  expect(split(text).diagnostics.map(brief)).toEqual(['2:3+1 error quote-unclosed']);
});

test('a line without end is refused', () => {
  expect(split(`a,b\n${'x'.repeat(300_000)}`).diagnostics.map(({ code }) => code)).toEqual([
    'row-too-long',
  ]);
});

test.each([
  ['a, "b,c"', '1:4+1 error cell-invalid'],
  ['a,"b"c', '1:5+1 error cell-invalid'],
])('a quote in the wrong place is refused: %s', (text, told) => {
  expect(split(text).diagnostics.map(brief)).toEqual([told]);
});
