import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const text = (...rows: readonly string[]) =>
  `panel,point,reading_um\nroof,1,118\nroof,2,119\nbonnet,1,120\n${rows.join('\n')}\n`;

test('a point called after a place is read as one of the face, and told in each of its cells', () => {
  expect(briefs(text('roof,edge,96', 'bonnet,Edge,97', 'bonnet,shut,88'))).toEqual([
    '5:6+4 warning reading-doubted',
    '6:8+4 warning reading-doubted',
    '7:8+4 warning reading-doubted',
  ]);
  expect(values(text('roof,edge,96'))?.at(-1)).toEqual(['roof', 'edge', 1, 96]);
});

test('the hint names the place to write', () => {
  const hints = read(text('roof,seam,96', 'roof,shut,90')).diagnostics.map(({ hint }) => hint);
  expect(hints[0]).toContain('add a column place with edge in this row');
  expect(hints[1]).toContain('add a column place with shut in this row');
});

test('where a column says the place of each point, or the name says more, nothing is asked', () => {
  const placed = 'panel,point,reading_um,place\nroof,1,118,\nroof,2,119,\nroof,edge,96,edge\n';
  expect(briefs(placed)).toEqual([]);
  expect(briefs(text('roof,edge 2 cm in,96', 'roof,3,117'))).toEqual([]);
});
