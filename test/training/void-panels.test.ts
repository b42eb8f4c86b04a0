/** What a blunder that voids panels costs: made-up values are not read, and a slip makes a panel count as off. */
import { describe, expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import type { Grade } from '../../src/training/grade-trainee.ts';
import { gradeTrainee } from '../../src/training/grade-trainee.ts';
import { keyedLeftOut } from '../../src/training/keyed-left-out.ts';
import { madeUpValues } from '../../src/training/made-up-values.ts';
import { expertReference } from '../../src/training/reference.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  gradeAgainst,
  marking,
  model,
  oneGauge,
  panelIds,
  readCar,
  rounded,
  sigmaPt,
  surveyOf,
  usualHabit,
} from './true-class.ts';

const random = seededRandom(12);
const car = drawCar(random);
const habit = { ...usualHabit, step: 1, repeats: 2, marked: true };
const reference = expertReference(surveyOf(readCar(random, car, { ...habit, repeats: 3 })));
const own = readCar(random, car, habit);
const graded = (readings: readonly Reading[]): Grade =>
  gradeAgainst(surveyOf(readings, undefined, reference), reference);
const reached = ({ mark }: Grade): Readonly<Record<string, number | null>> =>
  Object.fromEntries(mark.criteria.map(({ criterion, share }) => [criterion, share]));
const voidOf = ({ voided }: Grade) => voided.map(({ panel, as }) => [panel.id, as]);
/** The same few figures on each of these panels. */
const invented = (...panels: readonly string[]): readonly Reading[] => {
  const figures = [112, 115, 109, 114, 111];
  return changed(own, ({ panel, point, thickness }) =>
    panels.includes(panel) ? (figures[Number(point) - 1] ?? 0) : thickness,
  );
};

describe('panels that were made up', () => {
  const four = ['door-front-right', 'door-rear-right', 'boot', 'roof'];

  test('count as not read: nothing of their score and of their points', () => {
    const grade = graded(invented(...four));
    expect(voidOf(grade)).toEqual(four.map((id) => [id, 'unread']));
    expect(reached(grade)).toMatchObject({ coverage: 35 / 55, lowPoints: 1, repairs: 1 });
    expect(reached(grade)['accuracy']).toBeLessThanOrEqual(7 / 11);
    expect(grade.markIfSound?.share).toBeGreaterThan(grade.mark.share + 0.1);
    // What was handed in stays as it was handed in.
    expect(grade.coverage.pointsRead).toBe(55);
  });

  test('lose the low spot and the repair that were on them, at marks or not', () => {
    const wing = invented('wing-front-right', 'boot', 'roof');
    expect(reached(graded(wing))['lowPoints']).toBe(0);
    const unmarked = surveyOf(
      wing.map((one) => ({ ...one, marked: false })),
      undefined,
      reference,
    );
    expect(reached(gradeAgainst(unmarked, reference))['lowPoints']).toBe(0);
    const found = graded(invented('boot', 'roof', 'bonnet'));
    expect(reached(found)).toMatchObject({ lowPoints: 1, repairs: 1 });
    expect(reached(graded(invented('quarter-left', 'boot', 'roof')))['repairs']).toBe(0);
  });

  test('repeat by the panels that were read', () => {
    const wide = ['bonnet', 'wing-front-left'];
    const madeUp = changed(invented(...panelIds.filter((id) => !wide.includes(id))), (one) =>
      wide.includes(one.panel) ? one.thickness + 5 * one.repeat : one.thickness,
    );
    const grade = graded(madeUp);
    const share = (mark: Grade['mark'] | null) =>
      mark?.criteria.find(({ criterion }) => criterion === 'repeatability')?.share ?? 0;
    expect(share(grade.mark)).toBeLessThan(0.75);
    expect(share(grade.markIfSound)).toBeGreaterThan(share(grade.mark) + 0.2);
  });

  test('are told once, without a word of what each reads beside the reference', () => {
    const { reasons, slipped, bias } = graded(invented(...four));
    const codes = reasons.map(({ code }) => code);
    expect(codes.filter((code) => code === 'values-repeated')).toHaveLength(1);
    for (const code of ['too-regular', 'panel-off', 'panel-doubtful'] as const) {
      expect(codes).not.toContain(code);
    }
    expect(slipped.map(({ id }) => id)).toEqual(four);
    expect(Math.abs(bias?.mean ?? 9)).toBeLessThan(1.5);
  });

  test('all over the car leave no mark at all', () => {
    const flat = changed(own, ({ panel }) =>
      rounded((panel === 'quarter-left' ? 260 : 111) + 0.8 * normal(random), 0.1),
    );
    const grade = graded(flat);
    expect(voidOf(grade).every(([, as]) => as === 'unread')).toBe(true);
    expect(grade.voided).toHaveLength(11);
    expect(grade.mark.share).toBe(0);
    expect(grade.verdict).toBe('unsatisfactory');
    expect(grade.grounds).toContain('under-pass-mark');
  });

  test('cost nothing while an honest survey may show as much once in 100,000', () => {
    const survey = surveyOf(invented('boot', 'roof'), undefined, reference);
    const at = (provedAlarm: number) =>
      madeUpValues(survey, reference, {
        slips: { ...model.slips, provedAlarm },
        keyed: new Set(),
      });
    // One pair of ten panels of five points: λ = 55·(δ/(2σ√π))⁵, far under 1 in 1,000.
    const { film } = reference;
    const match = 1 / (2 * Math.sqrt(film.variance) * Math.sqrt(Math.PI));
    const chance = 1 - Math.exp(-55 * match ** 5);
    expect(at(chance * 1.01).proved).toEqual(new Set(['boot', 'roof']));
    expect(at(chance * 0.99).proved).toEqual(new Set());
    expect(at(chance * 0.99).told.map(({ code }) => code)).toEqual(['values-repeated']);
  });
});

describe('panels that a slip spoils', () => {
  const slipped = changed(own, ({ panel, repeat, thickness }) =>
    panel === 'roof' && repeat === 1 ? thickness / 25.4 : thickness,
  );

  test('count as off, were read, and say what the mark would be', () => {
    const grade = graded(slipped);
    expect(voidOf(grade)).toEqual([['roof', 'wrong']]);
    expect(reached(grade)).toMatchObject({ accuracy: 10 / 11, coverage: 10 / 11 });
    const swapped = own.map((one) => ({
      ...one,
      panel: { 'door-front-left': 'boot', boot: 'door-front-left' }[one.panel] ?? one.panel,
    }));
    expect(reached(graded(swapped))['accuracy']).toBeCloseTo(9 / 11, 12);
    expect(graded(swapped).markIfSound?.share).toBeGreaterThanOrEqual(graded(swapped).mark.share);
  });

  test('count as the model says, and never as more than they would', () => {
    const share = (slippedShare: number): number | null | undefined =>
      reached(
        gradeTrainee({
          trainee: surveyOf(slipped, undefined, reference),
          reference,
          sigmaPt: { ...sigmaPt, value: 40 as never },
          gauges: oneGauge,
          marking,
          model: { ...model, scores: { ...model.scores, slippedShare } },
        }),
      )['accuracy'];
    expect(share(1)).toBe(1);
    expect(share(0.5)).toBe(10.5 / 11);
    expect(share(0)).toBe(10 / 11);
  });

  test('are all panels where the whole survey is in another unit', () => {
    const grade = graded(changed(own, ({ thickness }) => thickness / 25.4));
    expect(grade.voided).toHaveLength(11);
    expect(grade.voided.every(({ as }) => as === 'wrong')).toBe(true);
    expect(reached(grade)).toMatchObject({ accuracy: 0, coverage: 0 });
    // As the mark counts it: what was read in another unit was not found.
    expect([graded(own), grade].map(({ lowSpots: { found } }) => found)).toEqual([1, 0]);
    expect([graded(own), grade].map(({ repairs: { found } }) => found)).toEqual([1, 0]);
  });
});

test('a survey that nothing voids has its mark, and no other', () => {
  const grade = graded(own);
  expect(grade).toMatchObject({ voided: [], markIfSound: null });
  expect(keyedLeftOut(surveyOf(own), reference, model.slips).readings).toHaveLength(own.length);
});

describe('at marks that lie on even film', () => {
  const even = changed(readCar(random, car, { ...habit, step: 0.1, repeats: 1 }), (one, i) =>
    /^door/.test(one.panel) ? 112 + 0.1 * (i % 3) : one.thickness,
  );
  const theirs = expertReference(surveyOf(even));
  const told = (readings: readonly Reading[]) =>
    gradeAgainst(surveyOf(readings, undefined, theirs), theirs).reasons.map(({ code }) => code);
  const near = changed(even, (one) =>
    /^door/.test(one.panel) ? rounded(112.4 + 0.2 * random(), 0.1) : one.thickness + 0.3,
  );

  test('nobody is told to have made up what the reference reads as even', () => {
    expect(told(near)).not.toContain('too-regular');
    const alike = changed(near, (one) => (one.panel === 'door-rear-left' ? 112.2 : one.thickness));
    expect(told(alike)).not.toContain('values-alike');
  });

  test('nor what it reads as one figure, which is no measure of anything', () => {
    const one = changed(even, ({ panel, thickness }) =>
      panel.startsWith('door') ? 112 : thickness,
    );
    const expert = expertReference(surveyOf(one));
    const codes = gradeAgainst(surveyOf(near, undefined, expert), expert).reasons;
    expect(codes.map(({ code }) => code)).not.toContain('too-regular');
  });

  test('points of one’s own are held to no more than the panel shows by itself', () => {
    const unmarked = near.map((one) => ({ ...one, marked: false }));
    expect(told(unmarked)).not.toContain('too-regular');
    // As near on panels that the reference reads apart.
    const level = changed(unmarked, ({ panel, thickness }) =>
      /^(bonnet|boot|roof|wing|quarter)/.test(panel)
        ? rounded((theirs.panels.get(panel)?.mean ?? 0) + 0.4 * random(), 0.1)
        : thickness,
    );
    expect(told(level)).toContain('too-regular');
  });
});
