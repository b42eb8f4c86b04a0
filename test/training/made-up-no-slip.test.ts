/** The last panels made up at marks: a value that nobody read fits another name or number by chance, and no slip is told of it. */
import { expect, test } from 'vitest';
import { expertReference } from '../../src/training/reference.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import { changed, drawCar, gradeAgainst, readCar, surveyOf, usualHabit } from './true-class.ts';

const random = seededRandom(90_210);
const MADE_UP = 5;
const marked = { ...usualHabit, marked: true };

/** Reasons for a survey of a new car whose last panels were made up about their means. */
const reasonsOfOne = () => {
  const car = drawCar(random);
  const reference = expertReference(surveyOf(readCar(random, car, { ...marked, repeats: 3 })));
  const last = [...car.keys()].slice(-MADE_UP);
  const readings = changed(readCar(random, car, marked), ({ panel, thickness }) =>
    last.includes(panel) ? (car.get(panel)?.mean ?? 0) + 5 * normal(random) : thickness,
  );
  const { reasons } = gradeAgainst(surveyOf(readings, undefined, reference), reference);
  return { reasons, last };
};

test('of panels from which on a survey is told as made up, no swap and no turn is told', () => {
  const all = Array.from({ length: 150 }, reasonsOfOne);
  const told = all.filter(({ reasons }) => reasons.some(({ code }) => code === 'not-following'));
  expect(told.length).toBeGreaterThan(100);
  const besides = told.flatMap(({ reasons, last }) =>
    reasons.filter(
      ({ code, panels }) =>
        /swapped|turned/u.test(code) && panels.some((panel) => last.includes(panel)),
    ),
  );
  expect(besides.map(({ text }) => text)).toEqual([]);
});
