import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

test('a known panel behind any key names the rows below it', () => {
  const text =
    'Batch: bonnet\nn;Value (µm)\n1;104\n2;106\nBatch: roof\nn;Value (µm)\n1;111\n2;109\n';
  expect(values(text)?.map(([panel, , , value]) => `${panel} ${value}`)).toEqual([
    'bonnet 104',
    'bonnet 106',
    'roof 111',
    'roof 109',
  ]);
});

test('a text behind an unknown key that names no panel names none', () => {
  expect(briefs('Batch: seven\n1;104\n2;106\n')[0]).toContain('error');
});
