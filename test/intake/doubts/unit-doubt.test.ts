import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { exitCodeOf, exitCodes } from '../../../src/cli/exit-code.ts';
import type { Reading } from '../../../src/film/reading.ts';
import { filmModel } from '../../../src/formats/models.ts';
import type { ReadingUnit } from '../../../src/intake/cells/unit.ts';
import { doubtUnit } from '../../../src/intake/doubts/unit-doubt.ts';
import { read } from '../helpers.ts';

const doubt = (middle: number, unit: ReadingUnit, layer = '') => {
  const reading = { thickness: micrometres(middle), layer } as Reading;
  return doubtUnit([reading], unit, filmModel.measurement, () => ({ file: 'r.csv' })).map(
    ({ message, hint }) => [message, hint],
  );
};

test.each<[number, ReadingUnit, RegExp, RegExp]>([
  [4, 'um', /4\.0 µm: mil\?$/u, /--reading-unit/u],
  [0.102, 'um', /0\.102 µm: mm\?$/u, /multiply the readings by 1000/u],
  [0.102 * 25.4, 'mil', /2\.6 µm: mm\?$/u, /multiply the readings by 1000/u],
  [2540, 'mil', /2540\.0 µm: µm\?$/u, /--reading-unit/u],
  [1600, 'um', /is that so\?$/u, /--reading-unit/u],
])('a middle reading of %d µm read in %s is doubted', (middle, unit, message, hint) => {
  const [[told, remedy] = []] = doubt(middle, unit);
  expect(told).toMatch(message);
  expect(remedy).toMatch(hint);
});

test('paint in its unit and single layers are not doubted', () => {
  expect(doubt(100, 'um')).toEqual([]);
  expect(doubt(3.9 * 25.4, 'mil')).toEqual([]);
  expect(doubt(8, 'um', 'clear')).toEqual([]);
});

test('a unit in which no reading can be paint, and all can in the other, is refused unless the user named it', () => {
  const several = (unit: ReadingUnit, asked: boolean, ...values: readonly number[]) =>
    doubtUnit(
      values.map((value) => ({ thickness: micrometres(value), layer: '' }) as Reading),
      unit,
      filmModel.measurement,
      () => ({ file: 'r.csv' }),
      asked,
    ).map(({ severity }) => severity);
  expect(several('um', false, 4.4, 4.3, 3.9)).toEqual(['error']);
  expect(several('mil', false, 112 * 25.4, 109 * 25.4, 99 * 25.4)).toEqual(['error']);
  expect(several('um', true, 4.4, 4.3, 3.9)).toEqual(['warning']);
  expect(several('um', false, 4.4, 4.3, 104)).toEqual(['warning']);
});

test('a file refused for its unit ends the command as one that cannot be used', () => {
  const text = 'panel,point,reading (mil)\nroof,1,112\nroof,2,109\nroof,3,99\n';
  const { value, diagnostics } = read(text);
  expect(value).toBeUndefined();
  expect(exitCodeOf(diagnostics)).toBe(exitCodes.data);
});
