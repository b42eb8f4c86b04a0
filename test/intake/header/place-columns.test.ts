import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const text = (...names: readonly string[]) =>
  `Panel;${names.join(';')};Unit\nbonnet;${names.map((_, k) => 104 + k).join(';')};µm\n`;

test.each([
  'Top left|Top right|Centre',
  'oben|Mitte|unten',
  'A|B|C',
  'first|second|third',
  'Première|Deuxième|Troisième',
])('columns called %s are readings', (names) => {
  expect(values(text(...names.split('|')))?.map((one) => one[3])).toEqual([104, 105, 106]);
});

test('columns called left and right are places on a whole panel', () => {
  expect(values(text('left', 'right'))?.map((one) => one[1])).toEqual(['left', 'right']);
});

test.each([
  'A|B',
  'first|second',
  'prima|dopo',
  'first|third|second',
  'A|C|D',
  'Top|Edge',
  'Top|Top',
])('columns called %s may be something else and are asked about', (names) => {
  expect(briefs(text(...names.split('|')))).toContain('1:1+5 error column-missing');
});

test('points called by their order keep those names', () => {
  expect(values(text('erste', 'zweite', 'dritte'))?.map((one) => one[1])).toEqual([
    'erste',
    'zweite',
    'dritte',
  ]);
});

test('an ordinal is not taken for a misspelt name of a column', () => {
  const [told] = read(text('first', 'third', 'batch')).diagnostics;
  expect(told?.code).toBe('column-missing');
  expect(told?.hint).toMatch(/^columns found: /u);
});
