import { expect, test } from 'vitest';
import { briefs } from '../helpers.ts';

const text = (heading: string, first: string, second: string) =>
  `panel,point,${heading},reading_um\n${['roof,1', 'roof,2']
    .map((place, k) => `${place},${first},${114 + k}\n${place},${second},${111 + k}\n`)
    .join('')}`;

test('a column of before and after that parts the readings of every point is refused', () => {
  expect(briefs(text('Stage', 'before', 'after'))).toContain('3:8+5 error tables-apart');
  expect(briefs(text('Zustand', 'vorher', 'nachher'))).toContain('3:8+7 error tables-apart');
});

test('other words under which every point stands once are told', () => {
  expect(briefs(text('By', 'Ann', 'Ben'))).toContain('3:8+3 warning reading-doubted');
});

test('words that do not part the points say nothing of them', () => {
  const colours = 'panel,point,Shade,reading_um\nroof,1,before,114\nroof,2,after,115\n';
  expect(briefs(colours)).toEqual(['1:13+5 warning column-unknown']);
});
