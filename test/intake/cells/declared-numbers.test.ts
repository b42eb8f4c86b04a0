import { expect, test } from 'vitest';
import { numberDeclaredBy } from '../../../src/intake/cells/declared-numbers.ts';
import { briefs, read, values } from '../helpers.ts';

const table = (odd: string, before = '', after = ''): string =>
  `${before}panel,point,reading_um\nroof,1,101\nroof,2,${odd}\nroof,3,104\nboot,1,99\nboot,2,98\n${after}`;
const numbers = (text: string) => values(text)?.map((one) => one[3]);

test.each([
  ['8888 = invalid', 8888],
  ['Ungültiger Wert wird als 8888 geschrieben', 8888],
  ['# 999 means no reading', 999],
  ['valeur non mesurée = 6000', 6000],
  ['-1: no contact', -1],
  ['无效值为8888', 8888],
  ['Error value,9998', 9998],
])('the line %j says of its number that it is no reading', (line, number) =>
  expect(numberDeclaredBy(line)).toBe(number),
);

test.each([
  'readings over 8888 are invalid',
  'invalid below 8888',
  'Number of invalid readings: 888',
  'Serial: 8888',
  '8888 or 9999 = invalid',
  '8888',
])('the line %j says of no number that it is no reading', (line) =>
  expect(numberDeclaredBy(line)).toBeUndefined(),
);

test('a number that the file calls invalid is left out, with the line as the reason', () => {
  const text = table('8888', 'Invalid values are stored as 8888\n\n');
  expect(numbers(text)).toEqual([101, 104, 99, 98]);
  expect(briefs(text)).toEqual(['5:8+4 warning reading-error']);
  const { value } = read(text);
  expect(value?.excluded[0]?.reason).toContain('"Invalid values are stored as 8888"');
  expect(value?.decisions.evidence.join()).toContain('"Invalid values are stored as 8888"');
  expect(numbers(table('999', '', '# 999 = no reading\n'))).toEqual([101, 104, 99, 98]);
});

test('a usual reading is kept whatever a line counts as invalid', () => {
  expect(numbers(table('111', 'Invalid: 111\n'))).toContain(111);
  expect(numbers(table('8888'))).toBeUndefined();
  expect(numbers(table('8888', 'readings over 8888 are invalid\n'))).toBeUndefined();
});
