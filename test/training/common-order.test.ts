/** Points numbered in one other order on all panels: told as that, and not as values that do not follow the panels. */
import { expect, test } from 'vitest';
import { at } from '../../src/base/at.ts';
import type { Reading } from '../../src/film/reading.ts';
import { commonOrders } from '../../src/training/common-order.ts';
import { expertReference } from '../../src/training/reference.ts';
import { marksUnlike } from '../../src/training/unlike-reference.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import {
  drawCar,
  gradeAgainst,
  model,
  panelIds,
  readCar,
  surveyOf,
  usualHabit,
} from './true-class.ts';

const random = seededRandom(88_213);
const car = drawCar(random);
const habit = { ...usualHabit, marked: true, repeats: 2 };
const reference = expertReference(surveyOf(readCar(random, car, { ...habit, repeats: 3 })));
const honest = readCar(random, car, habit);
/** Of each mark the number that the trainee gives it. */
const numbered = (
  numbers: (panel: string) => readonly string[],
  readings: readonly Reading[] = honest,
): readonly Reading[] =>
  readings.map((one) => ({ ...one, point: at(numbers(one.panel), Number(one.point) - 1) }));
const graded = (readings: readonly Reading[]) =>
  gradeAgainst(surveyOf(readings, undefined, reference), reference);
const codesOf = (readings: readonly Reading[]) => graded(readings).reasons.map(({ code }) => code);

test.each([
  ['row by row', ['2', '1', '3', '5', '4'], 'your 1 is mark 2, your 2 is mark 1, your 4 is mark 5'],
  ['from the third on', ['4', '5', '1', '2', '3'], 'your 1 is mark 3, your 2 is mark 4, your 3'],
  [
    'round the panel',
    ['1', '5', '2', '3', '4'],
    'your 2 is mark 3, your 3 is mark 4, your 4 is mark 5, your 5 is mark 2',
  ],
])(
  'points numbered %s on all panels are told with that order, and nobody is accused',
  (_, numbers, order) => {
    const own = numbered(() => numbers);
    const { reasons, grounds, voided, markIfSound, lowSpots } = graded(own);
    expect(reasons.map(({ code }) => code)).toEqual(['points-turned']);
    expect(reasons[0]?.text).toContain(
      `points of all panels are numbered in another order (${order}`,
    );
    expect(grounds).toEqual(['slip']);
    expect(voided.every(({ as }) => as === 'turned')).toBe(true);
    expect(voided).toHaveLength(panelIds.length);
    // As it is for the same readings under the numbers of the marks.
    expect(markIfSound?.share).toBe(graded(honest).mark.share);
    expect(lowSpots).toEqual(graded(honest).lowSpots);
  },
);

test('where each panel has an order of its own, or the values are drawn, no common order is told', () => {
  for (let k = 0; k < 40; k += 1) {
    const orders = new Map(
      panelIds.map((id) => [id, ['1', '2', '3', '4', '5'].toSorted(() => random() - 1 / 2)]),
    );
    expect(codesOf(numbered((panel) => orders.get(panel) ?? []))).not.toContain('points-turned');
  }
  const drawn = readCar(random, drawCar(random), habit);
  expect(codesOf(drawn)).not.toContain('points-turned');
});

test('an order is looked for on the panels asked about alone, that have three marks or more which both read', () => {
  const own = numbered(() => ['2', '1', '3', '5', '4']);
  const found = (readings: readonly Reading[], ids: readonly string[] = panelIds) =>
    commonOrders(
      { trainee: surveyOf(readings, undefined, reference), reference },
      new Set(ids),
      model.slips.falseAlarm,
    );
  expect(found(own)).toHaveLength(1);
  expect(found(own, panelIds.slice(0, 8))[0]?.panels.map(({ panel }) => panel.id)).toEqual(
    expect.arrayContaining(panelIds.slice(0, 8)),
  );
  // As marked they follow, and need no other order.
  expect(found(honest)).toEqual([]);
  expect(found(own, ['roof'])).toEqual([]);
  expect(found(own.filter(({ point }) => Number(point) < 3))).toEqual([]);
  expect(found(own.map((one) => ({ ...one, marked: false })))).toEqual([]);
});

test('where most of the class has another order it is the marks of the expert that are in doubt', () => {
  const grades = [1, 2, 3].map(() =>
    graded(numbered(() => ['4', '5', '1', '2', '3'], readCar(random, car, habit))),
  );
  expect(marksUnlike(reference, grades, model.class)).toBe(true);
  expect(
    marksUnlike(
      reference,
      [1, 2, 3].map(() => graded(readCar(random, car, habit))),
      model.class,
    ),
  ).toBe(false);
});

const atMarks = (points: number, drawnCar = drawCar(random)) => {
  const read = (repeats: number) => readCar(random, drawnCar, { ...habit, points, repeats });
  return { marks: expertReference(surveyOf(read(3))), own: read(2) };
};
/** By a drawn order of the marks on all panels, another each time: that order, as it is told. */
function isOrderFound(points: number): boolean {
  const { marks, own } = atMarks(points);
  const names = Array.from({ length: points }, (_, i) => `${i + 1}`);
  // Never the order of the marks itself: the first comes last.
  const places = new Map(names.map((name, i) => [name, i === 0 ? 1 : random()]));
  const drawn = names.toSorted((a, b) => (places.get(a) ?? 0) - (places.get(b) ?? 0));
  const read = numbered(() => drawn, own);
  const found = commonOrders(
    { trainee: surveyOf(read, undefined, marks), reference: marks },
    new Set(panelIds),
    model.slips.falseAlarm,
  );
  const wanted = new Map(drawn.map((name, i) => [name, names[i]]));
  return names.every((name) => found[0]?.markOf.get(name) === wanted.get(name));
}

test.each([4, 5, 6, 7, 9])(
  'at %i marks a panel the order is found among all that there are',
  (points) => {
    const all = Array.from({ length: 20 }, () => isOrderFound(points));
    expect(all.filter(Boolean).length).toBeGreaterThanOrEqual(19);
  },
);

test('at nine marks values of another car come near in no order', () => {
  const told = Array.from({ length: 20 }, () => {
    const { own } = atMarks(9);
    const { marks } = atMarks(9);
    return commonOrders(
      { trainee: surveyOf(own, undefined, marks), reference: marks },
      new Set(panelIds),
      model.slips.falseAlarm,
    ).length;
  });
  expect(told.every((count) => count === 0)).toBe(true);
});
