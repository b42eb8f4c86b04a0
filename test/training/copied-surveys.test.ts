/** Surveys of one class that hold each other’s values: what proves it, and what proves nothing. */
import { expect, test } from 'vitest';
import { binomialUpperTail } from '../../src/base/stats/incomplete-beta.ts';
import type { Reading } from '../../src/film/reading.ts';
import { copiedSurveys } from '../../src/training/copied-surveys.ts';
import { followedSurveys } from '../../src/training/followed-surveys.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import { changed, drawCar, model, readCar, surveyOf, usualHabit } from './true-class.ts';

const random = seededRandom(4_417);
const car = drawCar(random);
const surveysOf = (all: readonly (readonly Reading[])[]) => all.map((one) => surveyOf(one));

test('the same values beyond the last figure of any display, repeats and all, are copies', () => {
  const fine = changed(readCar(random, car, usualHabit), ({ thickness }) => thickness + 0.0031);
  const twice = fine.flatMap((one) => [one, { ...one, repeat: 2 }]);
  const surveys = surveysOf([twice, twice, twice, twice, twice]);
  expect(followedSurveys(surveys, model)).toEqual([]);
  expect(copiedSurveys(surveys, model)).toHaveLength(10);
});

test('as many values are the same as the chance of a false alarm asks of one pair among all pairs', () => {
  // A hand thrice as steady as usual on a display of 1 µm: 56 of 100 honest values are the same.
  const coarse = { ...usualHabit, step: 1 };
  const first = readCar(random, car, coarse);
  const alike = 1 / (2 * (surveyOf(first).repeatability / 3) * Math.sqrt(Math.PI));
  const least = (pairs: number): number =>
    Array.from({ length: 56 }, (_, k) => k).find(
      (k) => binomialUpperTail(k, 55, alike) < model.slips.falseAlarm / pairs,
    ) ?? Number.NaN;
  const [alone, of21] = [least(1), least(21)];
  expect(of21).toBeGreaterThan(alone);
  const copy = (same: number) =>
    changed(first, ({ thickness }, i) => (i < same ? thickness : thickness + 40));
  const strangers = Array.from({ length: 5 }, (_, k) =>
    changed(first, ({ thickness }) => thickness + 100 * (k + 1) + Math.round(normal(random))),
  );
  const found = (same: number, others: readonly (readonly Reading[])[]): number =>
    copiedSurveys(surveysOf([first, copy(same), ...others]), model).filter(
      ({ surveys: [one, other] }) => one === 0 && other === 1,
    ).length;
  expect([alone - 1, alone].map((same) => found(same, []))).toEqual([0, 1]);
  expect([of21 - 1, of21].map((same) => found(same, strangers))).toEqual([0, 1]);
});

test('on film that is even for the display nearly all values agree, and nobody is told to have copied', () => {
  const even = drawCar(seededRandom(29));
  const plate = (step: number) =>
    Array.from({ length: 8 }, () =>
      changed(readCar(random, even, usualHabit), () => {
        const thickness = 111.8 + 0.3 * normal(random);
        return step * Math.round(thickness / step);
      }),
    );
  // A tenth of a mil shows nearly one figure everywhere; a tenth of a micrometre shows the hand.
  expect(copiedSurveys(surveysOf(plate(2.54)), model)).toEqual([]);
  const [own = [], ...others] = plate(0.1);
  expect(copiedSurveys(surveysOf([own, own, ...others]), model)).toHaveLength(1);
});

test('one point a panel is held to what points of other panels have in common', () => {
  const own = readCar(random, car, usualHabit).filter(({ point }) => point === '1');
  const wide = changed(own, (_, i) => 100 + 3 * i);
  const many = (readings: readonly Reading[]) =>
    [-1.3, 0.4, 0.9].flatMap((by, i) =>
      changed(readings, ({ thickness }) => thickness + by).map((one) => ({
        ...one,
        repeat: i + 1,
      })),
    );
  expect(copiedSurveys(surveysOf([many(wide), many(wide)]), model)).toHaveLength(1);
  const flat = changed(own, () => 110);
  expect(copiedSurveys(surveysOf([many(flat), many(flat)]), model)).toEqual([]);
});
