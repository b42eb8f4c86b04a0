/** What is usual for two surveys at marks of both: no more than twice what the repeats of both say. */
import { describe, expect, test } from 'vitest';
import { fUpperTail } from '../../src/base/stats/incomplete-beta.ts';
import type { Reading } from '../../src/film/reading.ts';
import { followedSurveys } from '../../src/training/followed-surveys.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import { model, panelIds, readingAt, surveyOf } from './true-class.ts';

const random = seededRandom(7_301);
const places = panelIds.flatMap((panel) => [1, 2, 3, 4].map((point) => ({ panel, point })));
const film = places.map(() => 112 + 4 * normal(random));

type Hand = { readonly beside: number; readonly marks?: number; readonly of?: readonly number[] };
/** Reads each point three times, 1 µm apart (SD), and every point by `beside` off the film there. */
function read({ beside, marks = places.length, of = film }: Hand): readonly Reading[] {
  return places.flatMap(({ panel, point }, i) => {
    const value = (of[i] ?? 0) + beside * normal(random);
    return [1, 2, 3].map((repeat) =>
      readingAt(panel, `${point}`, repeat, Number((value + normal(random)).toFixed(1)), {
        marked: i < marks,
      }),
    );
  });
}

const meanOf = (readings: readonly Reading[]): number =>
  readings.reduce((sum, { thickness }) => sum + thickness, 0) / readings.length;

/** SD of a reading repeated at its point, over all points of three (NIST/SEMATECH 7.3.1). */
function repeatability(readings: readonly Reading[]): number {
  const points = places.map((_, i) => readings.slice(3 * i, 3 * i + 3));
  const squares = points.flatMap((three) => {
    return three.map(({ thickness }) => (thickness - meanOf(three)) ** 2);
  });
  return Math.sqrt(squares.reduce((sum, one) => sum + one, 0) / (2 * points.length));
}

/** A class that sets down 8 µm of film beside the marks, and one with the values of the first and repeats of its own. */
const classOf = (marks: number, beside = 0) => {
  const first = read({ beside: 8, marks });
  const values = places.map((_, i) => meanOf(first.slice(3 * i, 3 * i + 3)));
  const near = read({ beside, marks, of: values });
  return { first, near, others: [1, 2, 3, 4].map(() => read({ beside: 8, marks })) };
};
const pairsOf = (all: readonly (readonly Reading[])[], by = model) => {
  const surveys = all.map((one) => surveyOf(one));
  return followedSurveys(surveys, by).map((pair) => ({
    ...pair,
    places: pair.surveys.map((one) => surveys.indexOf(one)),
  }));
};

describe('two surveys that follow each other at marks', () => {
  const { first, near, others } = classOf(places.length);

  test('are held to twice their repeats, however far off the rest of the class reads', () => {
    const [pair] = pairsOf([first, near, ...others]);
    const usual = 2 * Math.hypot(...[first, near].map((one) => repeatability(one) / Math.sqrt(3)));
    expect(pair === undefined ? null : pair.places).toEqual([0, 1]);
    expect(pair?.usual).toBeCloseTo(usual, 9);
    expect(usual).toBeLessThan(3);
  });
});

describe('two surveys that follow each other', () => {
  test('are at marks from half of the points on, and else held to the class', () => {
    for (const [marks, isHeld] of [
      [22, true],
      [21, false],
      [0, false],
    ] as const) {
      const { first, near, others } = classOf(marks);
      const [pair] = pairsOf([first, near, ...others]);
      expect([marks, (pair?.usual ?? Number.NaN) < 3]).toEqual([marks, isHeld]);
      if (!isHeld) expect(pair?.usual).toBeGreaterThan(6);
    }
  });

  test('are told where the F of their nearness has a chance under the false alarm, shared by all pairs', () => {
    const { first, near, others } = classOf(0, 3);
    const six = [first, near, ...others];
    const [pair] = pairsOf(six);
    if (pair === undefined) throw new Error('they follow each other');
    const { apart, usual, of } = pair;
    // Six surveys make 15 pairs; degrees of freedom: half of the points.
    const chance = 1 - fUpperTail((apart / usual) ** 2, of / 2, of / 2);
    const toldAt = (falseAlarm: number): number =>
      pairsOf(six, { ...model, slips: { ...model.slips, falseAlarm } }).length;
    expect(chance).toBeGreaterThan(1e-12);
    expect([0.99, 1.01].map((times) => toldAt(times * 15 * chance))).toEqual([0, 1]);
  });

  test('need three others of the class who share their points', () => {
    const { first, near, others } = classOf(0);
    expect(pairsOf([first, near, ...others.slice(0, 3)])).toHaveLength(1);
    expect(pairsOf([first, near, ...others.slice(0, 2)])).toEqual([]);
  });

  test('need twenty points in common', () => {
    const { first, near, others } = classOf(0);
    const some = (points: number) =>
      pairsOf([first, near, ...others].map((one) => one.slice(0, 3 * points))).length;
    expect([19, 20, 44].map(some)).toEqual([0, 1, 1]);
  });

  test('do not where all of a class read as near to each other', () => {
    const class_ = Array.from({ length: 6 }, () => read({ beside: 0.5 }));
    expect(pairsOf(class_)).toEqual([]);
  });
});
