/** Gauges of their own that nobody named, on cars with thick repaints: nobody fails for what a good gauge may be off by. */
import { expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import { gradeTrainee } from '../../src/training/grade-trainee.ts';
import { expertReference, type Reference } from '../../src/training/reference.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  type Habit,
  marking,
  model,
  panelIds,
  type Random,
  readCar,
  settings,
  sigmaPt,
  surveyOf,
  type TrueCar,
  usualHabit,
} from './true-class.ts';

/** One to three panels painted again, of 180 to 380 µm. */
function thickCar(random: Random): TrueCar {
  const car = new Map(drawCar(random));
  const repaints = 1 + Math.floor(3 * random());
  for (const id of panelIds.slice(-repaints)) {
    const { marks, mean, sd } = car.get(id) ?? { marks: [], mean: 0, sd: 0 };
    const now = 180 + 200 * random();
    car.set(id, { sd: 2 * sd, mean: now, marks: marks.map((mark) => now + 2 * (mark - mean)) });
  }
  return car;
}

/** Within ±1 µm ±2 % of the film. */
const ownGauge = (random: Random): ((value: number) => number) => {
  const [fixed, share] = [2 * random() - 1, 0.04 * random() - 0.02];
  return (value) => Math.round(10 * (value * (1 + share) + fixed)) / 10;
};
const by = (readings: readonly Reading[], read: (value: number) => number) =>
  changed(readings, ({ thickness }) => read(thickness));

const grade = (readings: readonly Reading[], reference: Reference, unnamed: number | undefined) =>
  gradeTrainee({
    trainee: surveyOf(readings, undefined, reference),
    reference,
    sigmaPt,
    gauges: { same: true, stated: false, unnamed },
    marking,
    model,
  });

const three: Habit = { ...usualHabit, marked: true, points: 3 };
const usual = settings.film.measurement.proportional;

/** Verdicts of one draw, with a fault or none, where gauges count as one and where nobody named them. */
function verdictsOf(seed: number, surveys: number, fault: (value: number) => number) {
  const random = seededRandom(seed);
  const drawn = Array.from({ length: surveys }, () => {
    const car = thickCar(random);
    const [theirs, own] = [0, 1].map(() => by(readCar(random, car, three), ownGauge(random)));
    const reference = expertReference(surveyOf(theirs ?? []));
    const trainee = changed(own ?? [], ({ thickness }) => fault(thickness));
    return [undefined, usual].map((unnamed) => grade(trainee, reference, unnamed));
  });
  const share = (k: number, verdicts: readonly string[]) =>
    drawn.filter((grades) => verdicts.includes(grades[k]?.verdict ?? '')).length / surveys;
  const of = (k: number) => ({
    failing: share(k, ['unsatisfactory']),
    found: share(k, ['unsatisfactory', 'questionable']),
  });
  return { asOne: of(0), unnamed: of(1) };
}

test('of honest surveys at three marks at most 2.5 in 100 fail, of which one in twenty did by one tolerance', () => {
  const { asOne, unnamed } = verdictsOf(20_261, 80, (value) => value);
  expect(asOne.failing).toBeGreaterThan(0.04);
  expect(unnamed.failing).toBeLessThanOrEqual(0.025);
});

test('who reads a tenth high fails as before, and who reads 6 µm high is found nearly as often', () => {
  const tenth = verdictsOf(20_262, 30, (value) => 1.1 * value);
  expect(tenth.unnamed).toEqual(tenth.asOne);
  expect(tenth.unnamed.failing).toBe(1);
  const six = verdictsOf(20_263, 60, (value) => value + 6);
  expect(six.unnamed.found).toBeGreaterThan(six.asOne.found - 0.1);
});

test('a repaint that the gauge may have put off by half or more is to be looked at with the gauge on a thick shim', () => {
  const random = seededRandom(20_264);
  const car = thickCar(random);
  const [id = ''] = panelIds.slice(-1);
  const film = car.get(id);
  if (film === undefined) throw new Error('the last panel is painted again');
  const at340 = { ...film, marks: film.marks.map((mark) => mark + 340 - film.mean), mean: 340 };
  const read = readCar(random, new Map([...car, [id, at340]]), three);
  const reference = expertReference(surveyOf(read));
  const told = (value: number): readonly string[] =>
    grade(
      changed(read, ({ thickness, panel }) => thickness + (panel === id ? value : 0)),
      reference,
      usual,
    ).reasons.flatMap(({ text, panels }) => (panels.includes(id) ? [text] : []));
  expect(told(12)).toEqual([
    expect.stringMatching(/read it again, and check the gauge on a shim about as thick$/u),
  ]);
  expect(told(30)).toEqual([expect.stringMatching(/square and flat, away from edges$/u)]);
});
