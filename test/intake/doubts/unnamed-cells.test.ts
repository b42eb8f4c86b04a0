import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const table = (...marks: readonly string[]) =>
  `panel,point,reading_um,\n${marks.map((mark, k) => `bonnet,${k + 1},10${k}.4,${mark}\n`).join('')}`;

test.each(['deleted', 'gelöscht', 'x', '?', 'wrong panel', 'mil'])(
  'a reading beside "%s" under no name is kept and told',
  (mark) => {
    expect(briefs(table('', mark, ''))).toEqual([`3:16+${mark.length} warning reading-doubted`]);
    expect(values(table('', mark, ''))).toHaveLength(3);
  },
);

test('so is one in a table with a column for each panel, and where the column stands first', () => {
  const wide = 'point,bonnet (µm),roof (µm),\n1,102.4,98.6,\n2,104.2,97.1,deleted\n';
  expect(briefs(wide)).toEqual(['3:14+7 warning reading-doubted']);
  const first = ',panel,point,reading_um\n,bonnet,1,102.4\nx,bonnet,2,104.2\n';
  expect(briefs(first)).toEqual(['3:1+1 warning reading-doubted']);
});

test('one and the same text in every row, or none at all, tells no reading from the others', () => {
  expect(briefs(table('ok', 'ok', 'ok'))).toEqual([]);
  expect(briefs(table('', '', ''))).toEqual([]);
});
