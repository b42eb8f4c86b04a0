import { expect, test } from 'vitest';
import { error, note, warning } from '../../src/base/diagnostics.ts';
import { renderDiagnostic } from '../../src/render/diagnostic-text.ts';

const at = (lineText: string, column: number, length: number) => ({
  file: 'a.csv',
  line: 3,
  column,
  length,
  lineText,
});

test('a diagnostic is place, severity, code, sentence, the line with its caret, and the way out', () => {
  const one = error('reading-not-a-number', '"12O" is not a number', {
    at: at('bonnet,12O', 8, 3),
    hint: 'correct the cell',
  });
  expect(renderDiagnostic(one)).toBe(
    [
      'a.csv:3:8: error[reading-not-a-number]: "12O" is not a number',
      '  bonnet,12O',
      '         ^^^',
      '  hint: correct the cell',
      '',
    ].join('\n'),
  );
});

test('without a place the program speaks, and a place may be a file alone', () => {
  expect(renderDiagnostic(warning('file-empty', 'nothing'))).toBe(
    'leastcut: warning[file-empty]: nothing\n',
  );
  expect(renderDiagnostic(note('file-empty', 'nothing', { at: { file: 'b.csv' } }))).toBe(
    'b.csv: note[file-empty]: nothing\n',
  );
});

test('the caret stands under the cell, also after wide and unprintable characters', () => {
  const lineAndCaret = (lineText: string, word: string): readonly string[] =>
    renderDiagnostic(
      error('cell-invalid', 'x', { at: at(lineText, lineText.indexOf(word) + 1, word.length) }),
    )
      .split('\n')
      .slice(1, 3);
  expect(lineAndCaret('車体,12O', '12O')).toEqual(['  車体,12O', '       ^^^']);
  expect(lineAndCaret('a\tb,12O', '12O')).toEqual(['  a b,12O', '      ^^^']);
  expect(lineAndCaret('a\u001bb,12O', '12O')).toEqual(['  a\\u{1b}b,12O', '           ^^^']);
});

test('of a long line the part about the place is shown, with the caret in it', () => {
  const long = `${'a,'.repeat(300)}12O,${'b,'.repeat(300)}`;
  const [, line = '', caret = ''] = renderDiagnostic(
    error('cell-invalid', 'x', { at: at(long, 601, 3) }),
  ).split('\n');
  expect(line.length).toBeLessThanOrEqual(102);
  expect(line.slice(caret.indexOf('^'), caret.lastIndexOf('^') + 1)).toBe('12O');
});

test('a file name or message cannot forge a line', () => {
  const forged = error('file-missing', 'no\nb.csv: error', { at: { file: 'a\n\u001b[31m' } });
  expect(renderDiagnostic(forged)).toBe(
    'a\\u{a}\\u{1b}[31m: error[file-missing]: no\\u{a}b.csv: error\n',
  );
});

test('at a terminal it is folded between words, so that no number is broken into two', () => {
  const one = error('reading-ambiguous', '"1.234" may be 1.234 or 1,234', {
    at: { file: 'a-long-name-of-a-file.csv', line: 2, column: 3, length: 5, lineText: 'b;1.234' },
    hint: 'write 1234, or fewer digits after the decimal mark',
  });
  for (const width of [40, 60, 80]) {
    const lines = renderDiagnostic(one, false, { width }).trimEnd().split('\n');
    const folded = lines.filter((line) => !line.includes('error['));
    for (const line of folded) expect(line.length).toBeLessThanOrEqual(width);
    const numbers = lines.join('\n').match(/\d[\d.,]*\d/g) ?? [];
    expect(numbers).toEqual(expect.arrayContaining(['1.234', '1,234', '1234']));
    expect(lines.join(' ').replaceAll(/\s+/g, ' ')).toBe(
      renderDiagnostic(one).replaceAll(/\s+/g, ' ').trim(),
    );
  }
});

test('its head stands out where there is a way to', () => {
  const strong = (text: string): string => `<${text}>`;
  expect(renderDiagnostic(error('file-empty', 'nothing'), false, { strong })).toBe(
    '<leastcut: error[file-empty]:> nothing\n',
  );
});

test('a line without anything in it is not shown', () => {
  const empty = error('file-empty', 'nothing', { at: at('', 1, 1) });
  expect(renderDiagnostic(empty)).toBe('a.csv:3:1: error[file-empty]: nothing\n');
});
