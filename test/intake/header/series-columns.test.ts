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

test.each([
  ['Car 1 (µm)|Car 2 (µm)'],
  ['Student 1 (µm)|Student 2 (µm)'],
  ['Day 1 (µm)|Day 2 (µm)'],
  ['Visit 1 (µm)|Visit 2 (µm)'],
  ['Layer 1 (µm)|Layer 2 (µm)'],
  ['Clear 1 (µm)|Clear 2 (µm)'],
  ['SD1 (µm)|SD2 (µm)'],
  ['Mean 1 (µm)|Mean 2 (µm)'],
  ['Ø1 (µm)|Ø2 (µm)'],
  ['Tol 1 (µm)|Tol 2 (µm)'],
  ['Ref 1 (µm)|Ref 2 (µm)'],
  ['Old 1 (µm)|Old 2 (µm)'],
])(
  'columns that count cars, people, days, layers or figures are no readings of one panel: %s',
  (names) => {
    expect(values(table(...names.split('|')))).toBeUndefined();
  },
);

test.each([
  ['two letters may be two gauges', ['x µm', 'y µm'], '1:7+4'],
  ['a word that nobody knows may name anything', ['AB-1 (µm)', 'AB-2 (µm)'], '1:7+9'],
  ['as may one before letters', ['Gauge A (µm)', 'Gauge B (µm)', 'Gauge C (µm)'], '1:7+12'],
])('%s, and is told', (_, names, at) => {
  expect(briefs(table(...names))).toEqual([`${at} warning reading-doubted`]);
});

test.each([
  ['Ort 1 (µm)', 'Ort 2 (µm)'],
  ['Ist 1 (µm)', 'Ist 2 (µm)'],
  ['r1 (µm)', 'r2 (µm)'],
  ['Messwert A (µm)', 'Messwert B (µm)', 'Messwert C (µm)'],
  ['First (µm)', 'Second (µm)'],
  ['µm (1)', 'µm (2)'],
])('a word for readings or places is quiet: %s', (...names) => {
  expect(briefs(table(...names))).toEqual([]);
});
