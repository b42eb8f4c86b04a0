/** What is said of a class before anybody is judged: whose points are too few. */
import { expect, test } from 'vitest';
import type { Reading } from '../../../src/film/reading.ts';
import { tooFewBlocks } from '../../../src/report/grade/class-doubts.ts';
import { gradeFiles } from '../../../src/tasks/grade/grade-files.ts';
import { seededRandom } from '../../samples/seeded-random.ts';
import { gradeRequest, loaded } from '../../tasks/grading.ts';
import { drawCar, readCar, settings, usualHabit } from '../../training/true-class.ts';

const random = seededRandom(8_812);
const car = drawCar(random);
const read = (points: number): readonly Reading[] =>
  readCar(random, car, { ...usualHabit, marked: true, points });
const csv = (readings: readonly Reading[]): string =>
  `panel,point,repeat,reading_um,marked\n${readings
    .map((one) => `${one.panel},${one.point},${one.repeat},${one.thickness.toFixed(1)},yes`)
    .join('\n')}\n`;

const tooFew = (ofReference: number, ...ofTrainees: readonly number[]): string => {
  const trainees = ofTrainees.map((points, i) => loaded(`trainee-${i}.csv`, csv(read(points))));
  const reference = loaded('reference.csv', csv(read(ofReference)));
  const { value, diagnostics } = gradeFiles(gradeRequest({ reference, trainees, settings }));
  if (value === undefined) throw new Error(JSON.stringify(diagnostics));
  return JSON.stringify(tooFewBlocks(value));
};

test('a reference of one point a panel is what is too little, and not the points of everybody', () => {
  expect(tooFew(1, 5, 5)).toContain('Reference of one point a panel');
  expect(tooFew(1, 5, 5)).not.toContain('Too few points');
});

test('beside a reference of several points it is those of the trainee who has few', () => {
  expect(tooFew(5, 5, 1)).toMatch(/Too few points.*those of trainee-1/u);
  expect(tooFew(5, 5, 5)).toBe('[]');
});
