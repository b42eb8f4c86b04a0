import { expect, test } from 'vitest';
import { doubtEnding } from '../../../src/cli/options/output-ending.ts';

const said = (out: string, more: object = {}, command: object = {}) =>
  doubtEnding(command, { out, ...more }).map(({ message, hint }) => [message, hint]);

test.each([
  ['quote.html', 'html'],
  ['QUOTE.HTM', 'html'],
  ['a/b.jsonl', 'ndjson'],
  ['r.json', 'json'],
  ['r.md', 'md'],
])(
  '%s, written as text, is told, with the option that makes it what it is called',
  (out, format) => {
    expect(said(out)).toEqual([
      [`"${out}" will hold text, for its name chooses no form`, `add --format ${format}`],
    ]);
  },
);

test.each([
  ['a text', 'report.txt', {}, {}],
  ['a name without an ending', 'html', {}, {}],
  ['a form that was asked for', 'quote.html', { format: 'text' }, {}],
  ['a form that the command does not give', 'rows.csv', {}, { formats: ['text', 'json'] }],
  ['an ending of none of the forms', 'quote.pdf', {}, {}],
])('%s is not', (_, out, more, command) => {
  expect(said(out, more, command)).toEqual([]);
});

test('what a command gives without being asked is told by its name', () => {
  const batch = { formats: ['ndjson', 'csv', 'text', 'html'] };
  expect(said('quotes.ndjson', {}, batch)).toEqual([]);
  expect(said('quotes.html', {}, batch)).toEqual([
    ['"quotes.html" will hold ndjson, for its name chooses no form', 'add --format html'],
  ]);
});

test('nor is standard output', () => {
  expect(doubtEnding({}, {})).toEqual([]);
});
