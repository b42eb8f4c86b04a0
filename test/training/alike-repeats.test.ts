import { describe, expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import { alikeRepeats } from '../../src/training/alike-repeats.ts';
import { classView } from '../../src/training/class-view.ts';
import { expertReference } from '../../src/training/reference.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  gradeAgainst,
  model,
  readCar,
  rounded,
  surveyOf,
  usualHabit,
} from './true-class.ts';

const random = seededRandom(88);
const car = drawCar(random);
const read = (repeatability = 1) =>
  readCar(random, car, { ...usualHabit, marked: true, repeats: 3, repeatability });
const expert = expertReference(surveyOf(read()));
/** The first reading of a point, written again in place of those that follow. */
function copied(readings: readonly Reading[]): readonly Reading[] {
  const firsts = new Map(
    readings.flatMap(({ panel, point, repeat, thickness }) =>
      repeat === 1 ? [[`${panel} ${point}`, thickness] as const] : [],
    ),
  );
  return changed(readings, ({ panel, point, thickness }) => {
    return firsts.get(`${panel} ${point}`) ?? thickness;
  });
}
const gradeOf = (readings: readonly Reading[]) => gradeAgainst(surveyOf(readings), expert);
const codes = (readings: readonly Reading[]) => gradeOf(readings).reasons.map(({ code }) => code);

describe('repeats that are all alike', () => {
  test('are told, and earn no marks for repeatability, and fail nobody', () => {
    const { verdict, repeatability, mark, reasons } = gradeOf(copied(read()));
    expect(verdict).toBe('satisfactory');
    expect(repeatability).toBeNull();
    expect(mark.criteria.find(({ criterion }) => criterion === 'repeatability')?.share).toBe(0);
    expect(reasons.find(({ code }) => code === 'repeats-alike')?.text).toMatch(
      /^repeats are the same figure at 55 of 55 points: the probe was not set down anew, or one reading/u,
    );
  });

  test('are not those of a steady hand, nor of a display of whole micrometres', () => {
    expect(codes(read(0.3))).not.toContain('repeats-alike');
    const whole = changed(read(0.1), ({ thickness }) => rounded(thickness, 1));
    expect(codes(whole)).not.toContain('repeats-alike');
  });

  test('are told from as many points on as a steady hand shows alike once in 1,000', () => {
    // Of one reading in δ/(s·√(2π)) it is the same again, by 1/√2 for two: here 5.6 in 100.
    const twice = read().filter(({ repeat }) => repeat < 3);
    const told = (points: number): boolean =>
      codes(
        copied(twice.filter(({ panel, point }) => panel === 'roof' && Number(point) <= points)),
      ).includes('repeats-alike');
    const same = 0.1 / ((1.5 / 3) * Math.sqrt(2 * Math.PI)) / Math.SQRT2;
    const least = [1, 2, 3, 4].find((points) => same ** points < 0.001);
    expect(least).toBe(3);
    expect([1, 2, 3, 4].map(told)).toEqual([false, false, true, true]);
  });

  test('are counted over the points that were read again: one reading is like no other', () => {
    const all = read();
    const some = all.filter(({ panel, repeat }) => /^(roof|boot)$/.test(panel) || repeat === 1);
    const again = copied(all.filter(({ panel }) => /^(roof|boot)$/.test(panel)));
    const mixed = [...some.filter(({ panel }) => !/^(roof|boot)$/.test(panel)), ...again];
    expect(gradeOf(mixed).reasons.find(({ code }) => code === 'repeats-alike')?.text).toContain(
      'at 10 of 10 points',
    );
    // Where what was read again differs, those read once prove nothing.
    expect(codes(some)).not.toContain('repeats-alike');
  });

  test('are told from two thirds of the points on', () => {
    const roof = read().filter(({ panel, point }) => panel === 'roof' && Number(point) <= 3);
    const alikeUpTo = (points: number) => {
      const copy = copied(roof);
      return roof.map((one, i) => (Number(one.point) <= points ? (copy[i] ?? one) : one));
    };
    expect(codes(alikeUpTo(2))).toContain('repeats-alike');
    expect(codes(alikeUpTo(1))).not.toContain('repeats-alike');
  });

  test('are none at fewer than two thirds of the points', () => {
    const some = (panels: RegExp) => {
      const all = read();
      return all.map((one, i) => (panels.test(one.panel) ? (copied(all)[i] ?? one) : one));
    };
    expect(codes(some(/^(bonnet|roof|boot|door)/))).not.toContain('repeats-alike');
    expect(codes(some(/^(bonnet|roof|boot|door|wing)/))).toContain('repeats-alike');
  });

  test('are no part of the gauge R&R of the class, which says whose they are', () => {
    const surveys = [read(), read(), copied(read())].map((one) => surveyOf(one));
    const graded = surveys.map((survey) => ({ survey, grade: gradeAgainst(survey, expert) }));
    const view = classView(graded, expert, model.verdict);
    expect(view.gaugeRr?.counts.trainees).toBe(2);
    expect(view.leftOut).toEqual([{ survey: surveys[2], why: 'repeats-alike' }]);
  });
});

test('a display on which two honest readings are alike at just as many points as is allowed tells nothing', () => {
  const trainee = surveyOf(copied(read()));
  const { slips, copies } = model;
  // A step of .1 µm, against what a steady hand repeats to: a third of 1.5 µm.
  const alike = 0.1 / ((1.5 / copies.steadyHand) * Math.sqrt(2 * Math.PI));
  const told = (mostAlike: number) =>
    alikeRepeats(trainee, { slips, copies: { ...copies, mostAlike } })?.code;
  expect(told(alike * (1 + 1e-9))).toBe('repeats-alike');
  expect(told(alike)).toBeUndefined();
});
