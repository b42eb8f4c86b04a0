/** Who read the middle of each panel only, time and again, is told so by one rule, whatever the class is held against. */
import { describe, expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import type { Grade } from '../../src/training/grade-trainee.ts';
import { consensusReference, expertReference } from '../../src/training/reference.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import {
  drawCar,
  gradeAgainst,
  model,
  type Random,
  readCar,
  surveyOf,
  type TrueCar,
  usualHabit,
} from './true-class.ts';

const habit = { ...usualHabit, marked: true, repeats: 3, repeatability: 0.6 };

/** Every point of these panels lies beside the third, where film is as good as the same. */
const atMiddles = (random: Random, car: TrueCar, isOf: (k: number) => boolean): TrueCar =>
  new Map(
    [...car].map(([id, film], k) => {
      const middle = film.marks[2] ?? Number.NaN;
      const marks = film.marks.map(() => middle + normal(random));
      return [id, isOf(k) ? { ...film, marks } : film];
    }),
  );

type Graded = { readonly expert: Grade; readonly consensus: Grade };

function gradedBoth(seed: number, isOf: (k: number) => boolean): Graded {
  const random = seededRandom(seed);
  const car = drawCar(random);
  const expert = expertReference(surveyOf(readCar(random, car, habit)));
  const own = readCar(random, atMiddles(random, car, isOf), habit);
  const others = Array.from({ length: 4 }, () => readCar(random, car, habit));
  const consensus = consensusReference(
    [own, ...others].map((one) => surveyOf(one)),
    model.class,
  );
  const by = (readings: readonly Reading[], to: typeof expert) =>
    gradeAgainst(surveyOf(readings, undefined, to), to);
  return { expert: by(own, expert), consensus: by(own, consensus) };
}

const CARS = 20;
const cars = (isOf: (k: number) => boolean): readonly Graded[] =>
  Array.from({ length: CARS }, (_, k) => gradedBoth(9_100 + k, isOf));
const panelsTold = ({ reasons }: Grade): readonly string[] | undefined =>
  reasons.find(({ code }) => code === 'too-regular')?.panels;

describe('points that all lie in the middle of their panel', () => {
  const all = cars(() => true);

  test.each(['expert', 'consensus'] as const)('are told of the survey, held to the %s', (kind) => {
    const whole = all.filter((one) => panelsTold(one[kind])?.length === 0);
    // Before the rest had to look honest: 8 of 100.
    expect(whole.length).toBeGreaterThanOrEqual(0.75 * CARS);
    for (const one of whole.filter(({ [kind]: { voided } }) => voided.length > 0)) {
      expect(one[kind].voided).toHaveLength(11);
      expect(one[kind].counted).toMatchObject({ panelsRead: 0, pointsRead: 0, panels: 11 });
      expect(one[kind].coverage.pointsRead).toBe(55);
    }
  });

  test('beside panels that were read leave these alone', () => {
    for (const one of cars((k) => k % 2 === 0)) {
      for (const grade of [one.expert, one.consensus]) {
        expect(grade.voided.length).toBeLessThanOrEqual(6);
        expect(grade.counted.panelsRead).toBe(11 - grade.voided.length);
      }
    }
  });
});
