import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const rows = 'panel,point,reading_um\nbonnet,1,112.4\nbonnet,2,109.1\nroof,1,98.6\n';

test('a last reading with fewer decimals than all others and no line end is left out and told', () => {
  expect(briefs(`${rows}roof,2,102`)).toEqual(['5:8+3 warning reading-doubted']);
  expect(values(`${rows}roof,2,102`)).toHaveLength(3);
  expect(read(`${rows}roof,2,102`).value?.excluded).toMatchObject([
    { text: '102', class: 'error' },
  ]);
});

test('so is one that is less than a third of all others', () => {
  const whole = 'panel,reading_um\nbonnet,112\nbonnet,109\nroof,121\n';
  expect(values(`${whole}roof,9`)).toHaveLength(3);
  expect(values(`${whole}roof,98`)).toHaveLength(4);
});

test('and one in a row that ends before the columns which all others fill', () => {
  const whole = 'panel,reading_um,time\nbonnet,112,10:01\nbonnet,109,10:02\nroof,121,10:03\n';
  expect(values(`${whole}roof,98`)).toHaveLength(3);
});

test.each([
  ['with a line end', `${rows}roof,2,102\n`],
  ['with as many decimals', `${rows}roof,2,102.0`],
  ['with as many decimals, and far less', `${rows}roof,2,21.0`],
  ['among others without', `${rows}roof,2,97\nroof,3,102`],
  [
    'in a row that goes on',
    'panel,reading_um,point\nroof,98.6,1\nroof,98.1,2\nroof,97.6,3\nroof,102,4',
  ],
])('one %s is no doubt', (_, text) => {
  expect(briefs(text)).toEqual([]);
});
