import { expect, test } from 'vitest';
import { decode } from '../../../src/intake/bytes/decode.ts';
import { tokenize } from '../../../src/intake/rows/tokens.ts';
import { utf8 } from '../helpers.ts';

function split(text: string) {
  const { value } = decode({ name: 'f', bytes: utf8(text) });
  if (value === undefined) return undefined;
  const rows = tokenize(value.source, ',', { offset: 0, line: 1 }).value;
  return { cells: rows?.map(({ cells }) => cells), evidence: value.evidence };
}

test('cells quoted with an apostrophe all the way down a column are taken out of them', () => {
  const read = split("'panel','reading'\n'roof','101,5'\n'driver''s door','99'\n");
  expect(read?.cells).toEqual([
    ['panel', 'reading'],
    ['roof', '101,5'],
    ["driver's door", '99'],
  ]);
  expect(read?.evidence[0]).toContain('every cell of column 1 stands in them');
});

test('the head of such a column may stand without', () => {
  expect(split("panel,reading\n'roof',101\n'boot, outer',99\n")?.cells?.[2]).toEqual([
    'boot, outer',
    '99',
  ]);
});

test.each([
  ['an apostrophe that starts a word', "panel,reading\n'til,101\n'boot',99\n"],
  ['one quoted cell among bare ones', "panel,reading\n'roof',101\nboot,99\n'bonnet',98\n"],
  ['feet and inches', "panel,size\nroof,5'\nboot,6' 2\n"],
  ['a file that quotes with the usual mark', 'panel,reading\n"roof",\'101\'\n"boot",\'99\'\n'],
])('%s leaves the cells as they are written', (_, text) => {
  const read = split(text);
  expect(read?.evidence).toEqual([]);
  expect(read?.cells?.flat().some((cell) => cell.includes("'"))).toBe(true);
});
