import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

test.each([
  ['panel,point,reading_um,note\nroof,1,101,5,', '2:14+1 error row-too-long'],
  ['panel,reading_um,operator\nroof,101,5,ann', '2:12+3 error row-too-long'],
  ['bonnet_um,roof_um,note\n101,5,99,', '2:10+1 error row-too-long'],
  ['bonnet_um,roof_um\n101,5,99,3', '2:7+2 error row-too-long'],
])('a decimal comma that makes a row of %j too long is refused', (text, told) => {
  expect(briefs(text)).toEqual([told]);
  expect(read(text).diagnostics[0]?.hint).toMatch(/^a decimal comma\b.*quote/u);
});

test('blank cells at the ends of rows of whole numbers do no harm', () => {
  expect(values('panel,reading_um\nroof,101,,\nroof,102,,\n')).toHaveLength(2);
  expect(values('bonnet_um,roof_um\n101,99,\n102,98,\n')).toHaveLength(4);
  expect(values('panel;reading_um;note\nroof;101;5;\n')).toHaveLength(1);
});

test('a short number in a note behind a whole reading may be its decimals', () => {
  const text = 'panel,reading_um,note\nroof,101,5\nroof,99,\nroof,98,chip\n';
  expect(briefs(text)).toEqual(['2:6+5 error reading-ambiguous']);
  expect(read(text).diagnostics[0]?.message).toBe('"101,5" may be 101.5, or 101 with "5" as note');
  expect(briefs('panel,reading_um,operator\nroof,101,5\nroof,99,ann\n')).toHaveLength(1);
  expect(briefs('panel,reading_um,operator\nroof,101,5\nroof,99,0\n')).toHaveLength(2);
});

test('a note on a decimal reading, a trainee by number and a repeat are taken as they stand', () => {
  expect(values('panel,reading_um,note\nroof,101.5,5\n')).toHaveLength(1);
  expect(values('panel,reading_um,operator\nroof,101,5\nroof,99,7\n')).toHaveLength(2);
  expect(values('panel,reading_um,repeat\nroof,101,5\nroof,99,1\n')).toHaveLength(2);
  expect(values('panel;reading_um;note\nroof;101;5\n')).toHaveLength(1);
  expect(values('panel,reading_um,note\nroof,101,5\n', { decimal: '.' })).toHaveLength(1);
});

test('numbers in a column without a name are refused, an index in front is not', () => {
  expect(briefs('panel,reading_um,\nroof,101,5\n')).toEqual(['1:18+1 error column-unnamed']);
  expect(briefs('bonnet_um,,roof_um\n101,99,98\n')).toEqual(['1:11+1 error column-unnamed']);
  expect(briefs(',panel,reading_um\n98,roof,101\n97,roof,102\n')).toEqual([
    '1:1+1 error column-unnamed',
  ]);
  expect(values(',panel,reading_um\n0,roof,101\n1,roof,102\n')).toHaveLength(2);
  expect(values(',bonnet_um,roof_um\n1,101,102\n2,100,99\n')).toHaveLength(4);
  expect(values('panel,reading_um,\nroof,101,\nroof,102,chip\n')).toHaveLength(2);
});
