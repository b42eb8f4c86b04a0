/** A class against a reference that is wrong, and what one sound survey says beside others that are not. */
import { expect, test } from 'vitest';
import { classView } from '../../src/training/class-view.ts';
import { followedSurveys } from '../../src/training/followed-surveys.ts';
import { lowSpotsFound } from '../../src/training/found.ts';
import { expertReference, type Reference } from '../../src/training/reference.ts';
import { unlikeReference } from '../../src/training/unlike-reference.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  gradeAgainst,
  type Habit,
  model,
  panelIds,
  readCar,
  sigmaPt,
  surveyOf,
  usualHabit,
} from './true-class.ts';

const random = seededRandom(90_210);
const car = drawCar(random);
const marked: Habit = { ...usualHabit, marked: true, repeats: 3, repeatability: 0.8 };
const truth = readCar(random, car, marked);
const class_ = Array.from({ length: 4 }, () => readCar(random, car, marked));
const unlike = (reference: Reference, some = class_) =>
  unlikeReference(
    reference,
    some.map((one) => gradeAgainst(surveyOf(one), reference)),
    sigmaPt.value,
    model,
  ).map(({ id }) => id);
const off = (...panels: readonly string[]): Reference =>
  expertReference(
    surveyOf(
      changed(truth, ({ panel, thickness }) => thickness + (panels.includes(panel) ? 15 : 0)),
    ),
  );

test('panels on which a class agrees with itself and not with the reference are named, from two on', () => {
  expect(unlike(off())).toEqual([]);
  expect(unlike(off('roof'))).toEqual([]);
  expect([...unlike(off('roof', 'bonnet'))].sort()).toEqual(['bonnet', 'roof']);
  expect(unlike(off('roof', 'bonnet'), class_.slice(0, 2))).toEqual([]);
});

test('two who measure are not too alike because the gauges of the others drift', () => {
  const drifting = [10, 14, 17].map((total) => {
    const one = readCar(random, car, marked);
    return changed(one, ({ thickness }, i) => thickness + (total * i) / one.length);
  });
  const surveys = [...class_.slice(0, 2), ...drifting].map((one) => surveyOf(one));
  expect(followedSurveys(surveys, model)).toEqual([]);
});

test('a gauge that drifts is left out of the class, and a file handed in twice is counted once', () => {
  const reference = off();
  const [first = [], second = []] = class_;
  const drifting = changed(first, ({ thickness }, i) => thickness + (16 * i) / first.length);
  const graded = [second, drifting, second].map((one, k) => {
    const survey = surveyOf(one);
    return { survey, grade: gradeAgainst(survey, reference), again: k === 2 };
  });
  const view = classView(graded, reference, model.verdict);
  expect(view.leftOut.map(({ why }) => why)).toEqual(['gauge-drift']);
  expect(view.lowSpots.of).toBe(2);
  expect(view.conditions?.of).toBe(2 * panelIds.length);
});

test('a low spot on a panel that was not read is missed, with marks or without', () => {
  const reference = off();
  for (const one of [truth, truth.map((row) => ({ ...row, marked: false }))]) {
    const without = one.filter(({ panel }) => panel !== 'wing-front-right');
    expect(lowSpotsFound(surveyOf(without), reference)).toMatchObject({ found: 0, blamed: 1 });
  }
});

test('panels that an honest hand reads off by 4 µm (SD) each are not swapped', () => {
  const told = Array.from({ length: 12 }, () => {
    const by = new Map(panelIds.map((id) => [id, 4 * normal(random)]));
    const one = changed(
      readCar(random, car, marked),
      ({ panel, thickness }) => thickness + (by.get(panel) ?? 0),
    );
    return gradeAgainst(surveyOf(one), off()).reasons.filter(({ code }) => /swapped$/.test(code));
  });
  expect(told.flat()).toEqual([]);
});
