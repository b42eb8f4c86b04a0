import { expect, test } from 'vitest';
import { createSource } from '../../../src/intake/rows/source.ts';
import { cellSpan, tokenize } from '../../../src/intake/rows/tokens.ts';
import { brief } from '../helpers.ts';

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

test('a fault costs its own line: the next ones are told as well', () => {
  const text = 'a,b\nc,"d\ne,"f"\ng,"h"i\n';
  expect(split(text).diagnostics.map(brief)).toEqual([
    '2:3+1 error quote-unclosed',
    '4:5+1 error cell-invalid',
  ]);
});

test('a quoted cell may stand between blanks', () => {
  expect(split('a, "b,c" ,\t"d"\t').value?.[0]?.cells).toEqual(['a', 'b,c', 'd']);
  expect(placed('a , "b,c" , d')).toEqual([['a', '"b,c"', 'd']]);
});

test('a quote behind a sign that only looks blank is a quote within the cell', () => {
  const text = '\ufeff"a";"say ""b"""\n\u00a0"c","d"';
  const { value } = tokenize(createSource('f', text), ';', { offset: 0, line: 1 });
  expect(value?.map(({ cells }) => cells)).toEqual([['\ufeff"a"', 'say "b"'], ['\u00a0"c","d"']]);
});

test('inch marks within a cell are ordinary text', () => {
  const cells = ['12" disc', '3"', '5"x7"'];
  expect(split(cells.join(',')).value?.[0]?.cells).toEqual(cells);
});

test('a sign for "the same as above" does not swallow the next line', () => {
  const { diagnostics } = split('roof,1,100\n",2,101\n",3,102\n');
  expect(diagnostics.map(brief)).toEqual([
    '2:1+1 error quote-unclosed',
    '3:1+1 error quote-unclosed',
  ]);
});

test('the lines of a table drawn with | are no rows', () => {
  const text = '| a | b |\n|---|:-:|\n| 1 | 2 |\n+---+---+\n| -- | 3 |\n';
  const rows = tokenize(createSource('f', text), '|', { offset: 0, line: 1 }).value;
  expect(rows?.map(({ line, cells }) => [line, cells.map((cell) => cell.trim())])).toEqual([
    [1, ['', 'a', 'b', '']],
    [3, ['', '1', '2', '']],
    [5, ['', '--', '3', '']],
  ]);
});

test('more columns than the limit are refused with the row and the count', () => {
  const { diagnostics } = split(`a,b\n${'1,'.repeat(2_500)}\n${'"1",'.repeat(2_500)}`);
  expect(diagnostics.map(({ at, code }) => [at?.line, code])).toEqual([
    [2, 'row-too-long'],
    [3, 'row-too-long'],
  ]);
  expect(diagnostics[0]?.hint).toContain('--most-columns 2501');
});

test.each([
  ['a, "b"c,d', '1:4+1 error cell-invalid'],
  ['a,"b"c', '1:5+1 error cell-invalid'],
])('a quote in the wrong place is refused: %s', (text, told) => {
  expect(split(text).diagnostics.map(brief)).toEqual([told]);
});
