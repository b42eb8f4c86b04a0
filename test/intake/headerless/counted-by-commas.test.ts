/** Points or places in a list, parted from their readings by a comma: never thousands of the reading. */
import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const numbers = (text: string) =>
  values(text)?.map(([panel, point, , value]) => [panel, point, value]);

const BLOCKS =
  'Unit: um\n\nbonnet\n1,127.1\n2,128.3\n3,126.0\nMean,127.13\nMin,126.0\nMax,128.3\nSD,1.2\n\nroof\n1,121.4\n2,118.2\n3,120.6\nMean,120.07\nMin,118.2\nMax,121.4\nSD,1.7\n';
const READ = [
  ['bonnet', '1', 127.1],
  ['bonnet', '2', 128.3],
  ['bonnet', '3', 126],
  ['roof', '1', 121.4],
  ['roof', '2', 118.2],
  ['roof', '3', 120.6],
];

describe('blocks of points and statistics without names of columns', () => {
  test.each([',', ';', '\t'])('are read whatever parts the cells: %j', (mark) => {
    expect(numbers(BLOCKS.replaceAll(',', mark))).toEqual(READ);
  });

  test('have their statistics left out, aloud', () => {
    const told = briefs(BLOCKS.replaceAll(',', ';'));
    expect(told.filter((one) => one.endsWith('note statistics-left-out'))).toHaveLength(8);
    expect(told).toHaveLength(8);
  });
});

test('whole numbers behind a counted comma are readings and no thousands', () => {
  const text = 'Unit: um\n\nbonnet\n1,127\n2,128\n3,126\n\nroof\n1,121\n2,118\n3,120\n';
  expect(numbers(text)?.map(([, , value]) => value)).toEqual([127, 128, 126, 121, 118, 120]);
});

test('numbers that run on over panels of one reading are no thousands of it', () => {
  const text = 'Unit: um\n\nbonnet\n1,127.1\n\nroof\n2,121.2\n\nboot\n3,120.4\n';
  expect(numbers(text)?.map(([, , value]) => value)).toEqual([127.1, 121.2, 120.4]);
});

test('two such rows prove nothing and are refused with the way out', () => {
  const text = 'Unit: um\n\nbonnet\n1,127.1\n\nroof\n2,121.2\n';
  const said = read(text).diagnostics.find(({ code }) => code === 'reading-ambiguous');
  expect(said?.hint).toContain('--delimiter comma');
  expect(values(text, { delimiter: ',' })?.map(([, , , value]) => value)).toEqual([127.1, 121.2]);
});

test.each(['bonnet\n112,5\n113,4\n111,9\n', 'bonnet\n4,31\n4,28\n4,35\n'])(
  'a decimal comma that counts nothing is one as ever: %j',
  (block) => {
    expect(values(block, { unit: block.includes('4,31') ? 'mil' : 'um' })).toHaveLength(3);
    expect(
      read(block, { unit: block.includes('4,31') ? 'mil' : 'um' }).value?.decisions.decimal,
    ).toBe(',');
  },
);
