import { describe, expect, test } from 'vitest';
import { read, values } from '../helpers.ts';

const table = (...labels: readonly string[]) =>
  `panel;reading_um\n${labels.map((label, k) => `${label};${104 + k}\n`).join('')}`;
const points = (text: string) => values(text)?.map(([panel, point]) => `${panel} ${point}`);

test.each([
  'Bonnet 1|Bonnet 2|Roof 1',
  'bonnet_01|bonnet_02|roof_01',
  'Bonnet #1|Bonnet #2|Roof #1',
])('the numbers behind the panels of %s are points', (labels) => {
  const text = table(...labels.split('|'));
  expect(points(text)?.map((one) => one.toLowerCase())).toEqual(['bonnet 1', 'bonnet 2', 'roof 1']);
  expect(read(text).value?.decisions.evidence.join()).toContain(
    'the number behind each panel is its point',
  );
});

test('so are numbers behind a P', () => {
  expect(points(table('Bonnet_P1', 'Bonnet_P2', 'Roof_P1'))).toEqual([
    'Bonnet 1',
    'Bonnet 2',
    'Roof 1',
  ]);
});

test('numbers that do not count from 1 on each panel stay part of the names', () => {
  expect(points(table('Bonnet 1', 'Bonnet 3', 'Roof 1'))).toEqual([
    'Bonnet 1 1',
    'Bonnet 3 1',
    'Roof 1 1',
  ]);
  expect(points(table('Bonnet 1', 'Roof 1', 'Boot 1'))).toEqual([
    'Bonnet 1 1',
    'Roof 1 1',
    'Boot 1 1',
  ]);
});

test('a number before each panel is its place in a list', () => {
  const text = table('1. bonnet', '1. bonnet', '2. roof');
  expect(points(text)).toEqual(['bonnet 1', 'bonnet 2', 'roof 1']);
  expect(points(table('1. bonnet', '1. roof'))).toEqual(['1. bonnet 1', '1. roof 1']);
});

test.each(['01 Bonnet|02 Roof|03 Boot', '1 Bonnet|2 Roof|3 Boot'])(
  'the numbers before the panels of %s are places in a list',
  (labels) => {
    expect(points(table(...labels.split('|')))).toEqual(['Bonnet 1', 'Roof 1', 'Boot 1']);
  },
);

test('two numbers before one panel stay part of its names', () => {
  expect(points(table('1 Bonnet', '2 Bonnet', '3 Roof'))).toEqual([
    '1 Bonnet 1',
    '2 Bonnet 1',
    '3 Roof 1',
  ]);
});

describe('lines of one point each', () => {
  test.each([
    ['Bonnet / 1: 121 µm\nBonnet / 2: 115 µm\nRoof / 1: 89 µm\n'],
    ['Bonnet - P1 = 121 µm\nBonnet - P2 = 115 µm\nRoof - P1 = 89 µm\n'],
    ['Bonnet, point 1 : 121 µm\nBonnet, point 2 : 115 µm\nRoof, point 1 : 89 µm\n'],
    ['Bonnet [1]: 121 µm\nBonnet [2]: 115 µm\nRoof [1]: 89 µm\n'],
    ['Bonnet/1\t121 µm\nBonnet/2\t115 µm\nRoof/1\t89 µm\n'],
    ['Bonnet / 1: 121 µm\nBonnet / 2: 115 µm\nRoof / 1: 89 µm\nRoof / mean: 89 µm\n'],
  ])('name panel and point before the reading: %j', (text) => {
    expect(values(text)?.map(([panel, point, , value]) => [panel, point, value])).toEqual([
      ['Bonnet', '1', 121],
      ['Bonnet', '2', 115],
      ['Roof', '1', 89],
    ]);
  });

  test('and are refused where their numbers do not count', () => {
    expect(values('Bonnet / 1: 121 µm\nBonnet / 3: 115 µm\nRoof / 7: 89 µm\n')).toBeUndefined();
  });
});
