/** Whole panels copied figure for figure: a few of them prove it, and honest hands at the same marks share none. */
import { describe, expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import { copiedPanels } from '../../src/training/copied-panels.ts';
import type { GradedSurvey } from '../../src/training/graded-survey.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  type Habit,
  model,
  panelIds,
  readCar,
  surveyOf,
  usualHabit,
} from './true-class.ts';

const atMarks: Habit = { ...usualHabit, marked: true, repeats: 3, repeatability: 0.5 };

/** The panels of `own` that are in `taken` with the readings of `other`. */
const copying = (
  own: readonly Reading[],
  other: readonly Reading[],
  taken: readonly string[],
): readonly Reading[] =>
  own.map((reading, i) =>
    taken.includes(reading.panel)
      ? { ...reading, thickness: other[i]?.thickness ?? reading.thickness }
      : reading,
  );

const foundIn = (surveys: readonly GradedSurvey[]) =>
  copiedPanels(surveys, model).map(({ surveys: [one, other], panels, readings }) => ({
    pair: [one, other],
    panels: panels.map(({ id }) => id),
    readings,
  }));

describe('panels that hold all readings of another survey', () => {
  const random = seededRandom(70_114);
  const car = drawCar(random);
  const last = panelIds.slice(-3);
  const [own, other, third] = [0, 1, 2].map(() => readCar(random, car, atMarks)) as [
    readonly Reading[],
    readonly Reading[],
    readonly Reading[],
  ];

  test('three of eleven are named, with how many readings, and nobody else is', () => {
    const surveys = [own, copying(other, own, last), third].map((one) => surveyOf(one));
    expect(foundIn(surveys)).toEqual([
      { pair: [0, 1], panels: expect.arrayContaining([...last]), readings: 45 },
    ]);
  });

  test('a panel that has one reading otherwise is none of them', () => {
    const taken = changed(copying(other, own, last), (reading, i) =>
      reading.panel === last[0] && other[i - 1]?.panel !== last[0]
        ? reading.thickness + 0.1
        : reading.thickness,
    );
    const [pair] = foundIn([own, taken].map((one) => surveyOf(one)));
    expect(new Set(pair?.panels)).toEqual(new Set(last.slice(1)));
    expect(pair?.readings).toBe(30);
  });

  test('fewer readings than may prove a copy prove none', () => {
    const few: Habit = { ...atMarks, points: 3 };
    const [a, b] = [0, 1].map(() => readCar(random, car, few)) as [
      readonly Reading[],
      readonly Reading[],
    ];
    expect(foundIn([surveyOf(a), surveyOf(copying(b, a, last.slice(1, 2)))])).toEqual([]);
    expect(foundIn([surveyOf(a), surveyOf(copying(b, a, last.slice(1)))])).toHaveLength(1);
  });

  test('readings that were taken once each prove it on more panels', () => {
    const once: Habit = { ...atMarks, repeats: 1 };
    const [a, b] = [0, 1].map(() => readCar(random, car, once)) as [
      readonly Reading[],
      readonly Reading[],
    ];
    expect(foundIn([surveyOf(a), surveyOf(copying(b, a, last))])).toHaveLength(1);
  });

  test('readings that were taken once each prove nothing on a display coarser than a steady hand', () => {
    const once: Habit = { ...atMarks, repeats: 1, step: 1 };
    const [a, b] = [0, 1].map(() => readCar(random, car, once)) as [
      readonly Reading[],
      readonly Reading[],
    ];
    expect(foundIn([surveyOf(a), surveyOf(copying(b, a, panelIds.slice(2)))])).toEqual([]);
  });

  test('two who agree elsewhere nearly always are named by no panel figure for figure, but by all that lies within a step', () => {
    const nearly = changed(own, ({ panel, thickness }, i) =>
      last.includes(panel) || i % 15 > 0 ? thickness : thickness + 0.1,
    );
    expect(
      copiedPanels(
        [own, nearly].map((one) => surveyOf(one)),
        model,
      ),
    ).toMatchObject([{ within: 0.1 }]);
  });

  test('where all panels are the same there is no other to compare with', () => {
    expect(foundIn([surveyOf(own), surveyOf(own)])).toMatchObject([{ readings: 165 }]);
  });

  test('who read fewer panels, points or repeats is held to those that both read', () => {
    const [first = '', second = '', third = ''] = last;
    const fewer = copying(other, own, last).filter(
      ({ panel, point, repeat }) =>
        panel !== panelIds[0] &&
        !(panel === first && point === '5') &&
        !(panel === second && repeat === 3),
    );
    expect(foundIn([surveyOf(own), surveyOf(fewer)])).toMatchObject([
      { panels: expect.arrayContaining([first, second, third]), readings: 12 + 10 + 15 },
    ]);
    // A point that the other has not is no point in common, and the panel no whole one.
    const renamed = copying(other, own, last).map((one) =>
      one.panel === first && one.point === '5' ? { ...one, point: 'edge' } : one,
    );
    const [found] = foundIn([surveyOf(own), surveyOf(renamed)]);
    expect(new Set(found?.panels)).toEqual(new Set([second, third]));
  });

  test('repeats that are one figure everywhere say nothing of how often two hands agree', () => {
    const stuck = changed(own, (reading, i) => own[i - (i % 3)]?.thickness ?? reading.thickness);
    expect(foundIn([surveyOf(stuck), surveyOf(stuck)])).toEqual([]);
  });

  test('on even film and a coarse display whole panels agree by themselves', () => {
    const flat = changed(own, ({ repeat }) => (repeat === 1 ? 112 : 111));
    expect(foundIn([surveyOf(flat), surveyOf(flat)])).toEqual([]);
  });
});

/** Steady hands at the very same places, the likeliest to agree: a class of eight has 28 pairs. */
const honest: readonly Partial<Habit>[] = [
  { step: 0.1, repeatability: 0.15 },
  { step: 1, repeatability: 0.2 },
  { step: 1, repeatability: 0.5 },
  { step: 2.54, repeatability: 0.6 },
  { step: 1, repeatability: 0.5, repeats: 1 },
];

test.each(honest)('no honest hand is named: %o', (habit) => {
  const random = seededRandom(83_311);
  for (let i = 0; i < 8; i += 1) {
    const car = drawCar(random);
    const surveys = Array.from({ length: 8 }, () =>
      surveyOf(readCar(random, car, { ...atMarks, ...habit })),
    );
    expect(foundIn(surveys)).toEqual([]);
  }
});

test('on a display of 1 µm, where honest figures often agree, four copied panels are named', () => {
  const random = seededRandom(55_021);
  const coarse: Habit = { ...atMarks, step: 1 };
  const car = drawCar(random);
  const [a, b] = [0, 1].map(() => readCar(random, car, coarse)) as [
    readonly Reading[],
    readonly Reading[],
  ];
  const same = a.filter(({ thickness }, i) => thickness === b[i]?.thickness).length;
  expect(same).toBeGreaterThan(40);
  const taken = panelIds.slice(-4);
  const [found] = foundIn([surveyOf(a), surveyOf(copying(b, a, taken))]);
  expect(found?.panels).toEqual(expect.arrayContaining([...taken]));
});

describe('panels copied with the last figure changed', () => {
  const random = seededRandom(70_115);
  const last = panelIds.slice(-3);
  const changing = (readings: readonly Reading[], taken: readonly string[]) =>
    changed(readings, ({ thickness, panel }) =>
      taken.includes(panel)
        ? Math.round(10 * thickness + Math.floor(3 * random()) - 1) / 10
        : thickness,
    );
  const drawn = (habit: Habit) => {
    const car = drawCar(random);
    return [0, 1].map(() => readCar(random, car, habit)) as [
      readonly Reading[],
      readonly Reading[],
    ];
  };

  test('three of eleven are named, with how far figures lie apart at the most', () => {
    for (let k = 0; k < 10; k += 1) {
      const [own, other] = drawn(atMarks);
      const found = copiedPanels(
        [own, changing(copying(other, own, last), last)].map((one) => surveyOf(one)),
        model,
      );
      expect(found).toMatchObject([{ surveys: [0, 1], readings: 45, within: 0.1 }]);
      expect(found[0]?.panels.map(({ id }) => id)).toEqual(expect.arrayContaining([...last]));
    }
  });

  test('prove nothing where nobody repeated a point', () => {
    const [own, other] = drawn({ ...atMarks, repeats: 1 });
    const copy = changing(copying(other, own, last), last);
    expect(foundIn([own, copy].map((one) => surveyOf(one)))).toEqual([]);
  });

  test('are no panels that two hands read alike, steady all over the car or on these panels alone', () => {
    for (const steady of [panelIds, last]) {
      for (let k = 0; k < 10; k += 1) {
        const car = drawCar(random);
        const two = [0, 1].map(() => {
          const [usual, quiet] = [atMarks, { ...atMarks, repeatability: 0.05 }].map((habit) =>
            readCar(random, car, habit),
          );
          return (usual ?? []).map((one, i) =>
            steady.includes(one.panel) ? (quiet?.[i] ?? one) : one,
          );
        });
        expect(foundIn(two.map((one) => surveyOf(one)))).toEqual([]);
      }
    }
  });
});
