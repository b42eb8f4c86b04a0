/** When a class says that the reference is wrong on a panel, by stated differences: of whom, how many, how near. */
import { describe, expect, test } from 'vitest';
import type { Grade } from '../../src/training/grade-trainee.ts';
import { type ReasonCode, reason } from '../../src/training/reasons.ts';
import { expertReference, type Reference } from '../../src/training/reference.ts';
import { scoreVerdict } from '../../src/training/scores.ts';
import { unlikeReference } from '../../src/training/unlike-reference.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import { drawCar, model, readCar, sigmaPt, surveyOf, usualHabit } from './true-class.ts';

const random = seededRandom(5_150);
const expert = expertReference(surveyOf(readCar(random, drawCar(random), usualHabit)));
const ids = ['roof', 'bonnet'];

/** One who reads both panels off by so much, and the rest as the reference does; null is not read. */
const trainee = (difference: number | null, ...told: readonly ReasonCode[]): Grade =>
  ({
    reasons: told.map((code) => reason(code, code)),
    scores: [...expert.panels.values()].flatMap(({ panel }) => {
      const by = ids.includes(panel.id) ? difference : 0;
      return by === null
        ? []
        : [{ panel, difference: by, verdict: scoreVerdict(by / sigmaPt.value, model.scores) }];
    }),
  }) as unknown as Grade;
const named = (grades: readonly Grade[], by = model, reference: Reference = expert) =>
  unlikeReference(reference, grades, sigmaPt.value, by)
    .map(({ id }) => id)
    .sort();
const of = (...differences: readonly (number | null)[]) =>
  named(differences.map((difference) => trainee(difference)));
const both = ['bonnet', 'roof'];

describe('a reference is doubted on a panel', () => {
  test('by three who read it at the least', () => {
    expect(of(15, 15, 15)).toEqual(both);
    expect(of(-15, -15, -15)).toEqual(both);
    expect(of(15, 15)).toEqual([]);
    expect(of(15, 15, null, null)).toEqual([]);
    expect(of(15, 15, 15, null, null, null, null)).toEqual(both);
  });

  test('by more than half of them', () => {
    expect(of(15, 15, 0, 0)).toEqual([]);
    expect(of(15, 15, 15, 0)).toEqual(both);
    expect(of(15, 15, 15, 0, 0, 0)).toEqual([]);
  });

  test('by those on one side of it', () => {
    expect(of(12, 12, -12, -12)).toEqual([]);
    expect(of(12, 12, 12, -12)).toEqual(both);
  });

  test('by those who are unsatisfactory, and not by any less', () => {
    // z of 9 µm is 3, of 8.9 under it.
    expect(of(9, 9, 9)).toEqual(both);
    expect(of(8.9, 8.9, 8.9)).toEqual([]);
  });

  test('by those who agree: within 2·σ_pt of their middle', () => {
    expect(of(10, 16, 30)).toEqual(both);
    expect(of(9.9, 16, 30)).toEqual([]);
    expect(of(-10, -16, -30)).toEqual(both);
    expect(of(10, 20, 30)).toEqual([]);
  });

  test('on as many panels at the least as make a survey fail', () => {
    const one = (panelsAtFault: number) =>
      named(
        [15, 15, 15].map((by) => trainee(by)),
        {
          ...model,
          verdict: { ...model.verdict, panelsAtFault },
        },
      );
    expect(one(2)).toEqual(both);
    expect(one(3)).toEqual([]);
  });

  test('by surveys of one’s own: no copy, nothing made up, no gauge that drifts', () => {
    const with_ = (...told: readonly ReasonCode[]) =>
      named([trainee(15), trainee(15), trainee(15, ...told)]);
    for (const code of [
      'survey-copied',
      'values-alike',
      'values-repeated',
      'values-in-order',
      'too-regular',
      'gauge-drift',
    ] as const) {
      expect([code, with_('panel-off', code)]).toEqual([code, []]);
    }
    for (const code of ['panel-off', 'car-off', 'few-points', 'not-repeated'] as const) {
      expect([code, with_(code)]).toEqual([code, both]);
    }
  });

  test('never where it is the class itself', () => {
    expect(
      named(
        [15, 15, 15].map((by) => trainee(by)),
        model,
        { ...expert, kind: 'consensus' },
      ),
    ).toEqual([]);
  });
});
