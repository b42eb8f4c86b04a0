import { expect, test } from 'vitest';
import type { ReadInput } from '../../../src/tasks/read/read-request.ts';
import { filesNameOthers } from '../../../src/tasks/survey/files-name-others.ts';
import { reading } from '../../film/car-builder.ts';

const FILES = ['a.csv', 'b.csv', 'c.csv'];
const READINGS = FILES.map((file) =>
  reading('roof', '1', 110, { origin: { file, line: 2, column: 9 } }),
);

const inputOf = (file: string, said: Readonly<Record<string, string>>): ReadInput => ({
  file,
  sha256: '',
  decisions: {
    metadata: Object.entries(said).map(([key, value], i) => ({ key, value, line: i + 1 })),
  } as never,
});

const textsOf = (...said: readonly Readonly<Record<string, string>>[]) =>
  filesNameOthers(
    READINGS,
    said.map((one, i) => inputOf(FILES[i] ?? '', one)),
  ).map(({ text }) => text);

test('files whose own lines name another car each are doubted, by their own words', () => {
  expect(textsOf({ 'Vehicle model': 'Arden' }, {}, { 'vehicle-model': 'Dray' })).toEqual([
    '"a.csv" says vehicle model: Arden, "c.csv" says Dray',
  ]);
  expect(textsOf({ 'Chassis No.': 'AB 1' }, { 'chassis no': 'AB 2' })).toHaveLength(1);
});

test.each([
  ['the same car written otherwise', { 'Car model': 'Orrin-Vale' }, { 'car model': 'ORRIN VALE ' }],
  ['the gauge', { Model: 'G-100' }, { Model: 'G-200' }],
  ['other things of the car', { 'Vehicle mileage': '100' }, { 'Vehicle mileage': '200' }],
  ['nothing', { 'Car model': 'Arden' }, { 'Car model': ' ' }],
])('words for %s doubt nothing', (_what, one, other) => {
  expect(textsOf(one, other)).toEqual([]);
});

test('a file of which no reading is of the vehicle says nothing of it', () => {
  const inputs = [inputOf('a.csv', { 'Car make': 'A' }), inputOf('other.csv', { 'Car make': 'B' })];
  expect(filesNameOthers(READINGS, inputs)).toEqual([]);
});
