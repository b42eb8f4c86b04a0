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

test('before and after are refused where no column names the points, and where not every point stands under both', () => {
  const rows = ['roof,before,114', 'roof,after,111', 'boot,before,104', ''];
  expect(briefs(`panel,When,reading_um\n${rows.join('\n')}`)).toContain('3:6+5 error tables-apart');
  const some = ['roof,1,before,114', 'roof,1,after,111', 'boot,1,before,104', ''];
  expect(briefs(`panel,point,Stage,reading_um\n${some.join('\n')}`)).toContain(
    '3:8+5 error tables-apart',
  );
});

test('a column that numbers the visits is refused where it parts the readings of a panel', () => {
  const rows = (first: string, second: string) =>
    ['roof', 'boot'].flatMap((panel) => [`${panel},${first},114`, `${panel},${second},111`]);
  const of = (heading: string, ...own: readonly string[]) =>
    briefs(`panel,${heading},reading_um\n${own.join('\n')}\n`);
  expect(of('Visit', ...rows('1', '2'))).toContain('3:6+1 error tables-apart');
  expect(of('Besuch Nr', ...rows('1', '2'))).toContain('3:6+1 error tables-apart');
  expect(of('Visit', ...rows('1', '1'))).toEqual(['1:7+5 warning column-unknown']);
  expect(of('Visit', 'roof,1,114', 'boot,2,111')).toEqual(['1:7+5 warning column-unknown']);
  expect(of('Coat', ...rows('NA', 'ok'))).not.toContain('3:6+2 error tables-apart');
});
