import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const table = (...names: readonly string[]) =>
  `Panel;${names.join(';')}\nbonnet;${names.map((_, k) => 104 + k).join(';')}\n`;

test.each([
  ['µm (1)|µm (2)|µm (3)'],
  ['First (µm)|Second (µm)'],
  ['x µm|y µm|z µm'],
  ['Ort 1 (µm)|Ort 2 (µm)|Ort 3 (µm)'],
  ['u1 (um)|u2 (um)|u3 (um)'],
  ['um A|um B|um C'],
  ['点１（µm）|点２（µm）'],
  ['قراءة ١ (µm)|قراءة ٢ (µm)'],
  ['µm n°1|µm n°2'],
])('columns in a unit of film that count are readings: %s', (names) => {
  const own = names.split('|');
  expect(values(table(...own))?.map((one) => one[3])).toEqual(own.map((_, k) => 104 + k));
});

test.each([
  ['Before (µm)|After (µm)'],
  ['Anna (µm)|Ben (µm)'],
  ['A (µm)|B (µm)'],
  ['Limit 1 (µm)|Limit 2 (µm)'],
  ['2023 (µm)|2024 (µm)'],
  ['u1 (um)|u3 (um)'],
  ['u1|u2|u3'],
])('and others are asked about: %s', (names) => {
  expect(values(table(...names.split('|')))).toBeUndefined();
});

test('two letters may be two gauges, and are told', () => {
  expect(briefs(table('x µm', 'y µm'))).toEqual(['1:7+4 warning reading-doubted']);
});
