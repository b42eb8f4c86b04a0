import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const text = (...readings: readonly string[]) =>
  `panel,point,reading_um\n${readings.map((value, k) => `bonnet,${k + 1},${value}\n`).join('')}`;

test('a reading five times the middle of its panel is read, and told', () => {
  expect(briefs(text('104.6', '1055', '107.2'))).toEqual(['3:10+4 warning reading-implausible']);
  expect(values(text('104.6', '1055', '107.2'))?.[1]).toEqual(['bonnet', '2', 1, 1055]);
  expect(briefs(text('100', '500', '100'))).toEqual(['3:10+3 warning reading-implausible']);
  expect(briefs(text('100', '499', '100'))).toEqual([]);
});

test('a reading of a quarter of the middle of its panel is told as well', () => {
  expect(briefs(text('104', '26', '106'))).toEqual(['3:10+2 warning reading-implausible']);
  expect(briefs(text('104', '27', '106'))).toEqual([]);
});

test('of two readings neither is the odd one', () => {
  expect(briefs(text('104', '1055'))).toEqual([]);
});

test('a panel of filler is no odd reading of the car', () => {
  const filled = `${text('104', '106', '103')}roof,1,900\nroof,2,1100\nroof,3,950\n`;
  expect(briefs(filled)).toEqual([]);
});
