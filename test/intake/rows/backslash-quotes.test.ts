import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

test('a backslash before each quote within a cell is taken for a doubled quote', () => {
  const text = 'panel,point,reading_um,note\nroof,1,104,"chip at \\"A\\" line"\nroof,2,106,\n';
  expect(values(text)?.map((one) => one[3])).toEqual([104, 106]);
  expect(read(text).value?.readings[0]?.note).toBe('chip at "A" line');
});

test('a backslash before the quote that closes its cell is part of the text', () => {
  const text = 'panel,point,reading_um,note\nroof,1,104,"C:\\cars\\"\nroof,2,106,"a "b""\n';
  expect(briefs(text)).toEqual(['3:15+1 error cell-invalid']);
});
