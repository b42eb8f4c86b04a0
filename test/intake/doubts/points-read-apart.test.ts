import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const rows = (second: number) =>
  `panel,point,reading_um\nbonnet,1,104\nbonnet,1,${second}\nbonnet,2,106\nroof,1,111\nroof,2,109\n`;

test('two readings of one point too far apart for one place are read, and told', () => {
  expect(briefs(rows(189))).toEqual(['3:10+3 warning reading-doubted']);
  expect(read(rows(189)).diagnostics[0]?.message).toContain('too far apart for one place');
  expect(values(rows(189))?.[1]).toEqual(['bonnet', '1', 2, 189]);
});

// 2·(1 + 0.02·104) + 1.96·√2·1.5 = 10.3 µm: see the doc block of the rule for the terms.
test('how far apart two readings of one place may be follows from the gauge and its repeatability', () => {
  const often = (second: number) =>
    `panel,point,reading_um\nbonnet,1,100\nbonnet,1,${second}\nbonnet,2,100\nbonnet,2,101\n`;
  expect(briefs(often(110))).toEqual([]);
  expect(briefs(often(111))).toEqual(['3:10+3 warning reading-doubted']);
});

test('a point read twice where the others were read once is told, whatever it read', () => {
  expect(read(rows(104)).diagnostics[0]?.message).toBe(
    'point 1 of "bonnet" was read in line 2 as well, and other points were read once',
  );
});

test('points that were all read twice are no slip', () => {
  const twice = 'panel,point,reading_um\nroof,1,104\nroof,1,105\nroof,2,106\nroof,2,105\n';
  expect(briefs(twice)).toEqual([]);
});
