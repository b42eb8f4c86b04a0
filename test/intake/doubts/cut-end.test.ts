import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const rows = 'panel,point,reading_um\nbonnet,1,112.4\nbonnet,2,109.1\nroof,1,98.6\n';

test('a last reading with fewer decimals than all others and no line end is kept and told', () => {
  expect(briefs(`${rows}roof,2,102`)).toEqual(['5:8+3 warning reading-doubted']);
  expect(values(`${rows}roof,2,102`)?.at(-1)).toEqual(['roof', '2', 1, 102]);
});

test.each([
  ['with a line end', `${rows}roof,2,102\n`],
  ['with as many decimals', `${rows}roof,2,102.0`],
  ['among others without', `${rows}roof,2,97\nroof,3,102`],
  [
    'in a row that goes on',
    'panel,reading_um,point\nroof,98.6,1\nroof,98.1,2\nroof,97.6,3\nroof,102,4',
  ],
])('one %s is no doubt', (_, text) => {
  expect(briefs(text)).toEqual([]);
});
