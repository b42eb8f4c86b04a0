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
