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
const read = (points: number, panels = car.size): readonly Reading[] => {
  const few = [...car.keys()].slice(0, panels);
  return readCar(random, car, { ...usualHabit, marked: true, points }).filter(({ panel }) =>
    few.includes(panel),
  );
};
const csv = (readings: readonly Reading[]): string =>
  `panel,point,repeat,reading_um,marked\n${readings
    .map((one) => `${one.panel},${one.point},${one.repeat},${one.thickness.toFixed(1)},yes`)
    .join('\n')}\n`;

const tooFew = (ofReference: number, ...ofTrainees: readonly number[]): string =>
  tooFewBeside(read(ofReference), ...ofTrainees);
const tooFewBeside = (
  ofReference: readonly Reading[],
  ...ofTrainees: readonly number[]
): string => {
  const trainees = ofTrainees.map((points, i) => loaded(`trainee-${i}.csv`, csv(read(points))));
  const reference = loaded('reference.csv', csv(ofReference));
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

test('a reference of few panels is too little beside whoever read all of its points, and beside others their own are', () => {
  const said = tooFewBeside(read(5, 2), 5, 5);
  expect(said).toMatch(/Reference of few points.*10 points on 2 panels are too few/u);
  expect(said).not.toContain('Too few points');
  const oneShort = tooFewBeside(read(5, 2), 5, 1);
  expect(oneShort).toContain('Reference of few points');
  expect(oneShort).toMatch(/Too few points.*those of trainee-1/u);
});
