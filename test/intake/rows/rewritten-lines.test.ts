import { expect, test } from 'vitest';
import { read } from '../helpers.ts';

const rows = 'bonnet;1;112.4\nbonnet;2;113.1\nroof;1;119.2\n';

test.each([
  ['behind a #', '#panel;point;reading'],
  ['with other marks than its rows', 'panel,point,reading'],
  ['behind a # and with other marks than its rows', '#panel,point,reading'],
])('a header %s is shown as the user wrote it', (_, header) => {
  const { diagnostics } = read(`${header}\n${rows}`);
  expect(diagnostics).toMatchObject([
    { code: 'unit-missing', at: { line: 1, column: header.length - 6, lineText: header } },
  ]);
});
