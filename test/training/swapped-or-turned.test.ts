/** Two panels swapped at few marks, where some order of their own marks fits nearly as well: on drawn cars. */
import { expect, test } from 'vitest';
import { at } from '../../src/base/at.ts';
import { mean } from '../../src/base/stats/summary.ts';
import type { Reading } from '../../src/film/reading.ts';
import type { NameFit } from '../../src/training/name-fits.ts';
import { expertReference, type Reference } from '../../src/training/reference.ts';
import { swappedBySpread } from '../../src/training/swapped-by-spread.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import {
  drawCar,
  expertOf,
  gradeAgainst,
  type Habit,
  panelIds,
  type Random,
  readCar,
  readingAt,
  surveyOf,
  type TrueCar,
  usualHabit,
} from './true-class.ts';

const CODES = ['panels-swapped', 'sides-swapped', 'swapped-or-turned'];

const habitOf = (points: number): Habit => ({
  ...usualHabit,
  points,
  repeats: 3,
  marked: true,
  repeatability: 0.8,
});

/** Two panels whose means are within 6 µm, at random. */
function alikePair(random: Random, car: TrueCar, marks: number): readonly [string, string] {
  const meanOf = (id: string) => mean(car.get(id)?.marks.slice(0, marks) ?? []);
  const pairs = panelIds.flatMap((one, i) =>
    panelIds
      .slice(i + 1)
      .filter((other) => Math.abs(meanOf(one) - meanOf(other)) <= 6)
      .map((other) => [one, other] as const),
  );
  return at(pairs, Math.floor(random() * pairs.length));
}

const withNames = (readings: readonly Reading[], [one, other]: readonly [string, string]) =>
  panelIds.flatMap((panel) => {
    const from = panel === one ? other : panel === other ? one : panel;
    return readings.filter((each) => each.panel === from).map((each) => ({ ...each, panel }));
  });

function drawn(random: Random, marks: number) {
  const car = drawCar(random);
  const habit = habitOf(marks);
  const reference = expertOf(random, car, habit);
  const readings = readCar(random, car, { ...habit, bias: normal(random) });
  return { car, reference, readings };
}

const toldOf = (readings: readonly Reading[], reference: Reference) =>
  gradeAgainst(surveyOf(readings), reference).reasons.filter(({ code }) => CODES.includes(code));

test.each([
  { marks: 4, least: 45 },
  { marks: 5, least: 48 },
])(
  'of 50 pairs of alike panels swapped at $marks marks $least and more are told',
  ({ marks, least }) => {
    const random = seededRandom(77_100 + marks);
    const told = Array.from({ length: 50 }, () => {
      const { car, reference, readings } = drawn(random, marks);
      const two = alikePair(random, car, marks);
      const [one] = toldOf(withNames(readings, two), reference);
      return one !== undefined && [...one.panels].sort().join() === [...two].sort().join();
    });
    expect(told.filter(Boolean).length).toBeGreaterThanOrEqual(least);
  },
);

const FILM: Readonly<Record<string, readonly number[]>> = {
  bonnet: [121, 117, 123, 119],
  roof: [119, 121, 120, 122],
  'door-front-right': [120, 115, 122, 118],
  'door-front-left': [118, 118, 119, 121],
};
const NOISE = [0.6, -0.8, 0.9, -0.4, -0.7, 0.5];
/** Under each name what `of` says was read. */
const read = (of: Readonly<Record<string, string>> = {}, noise = 1) =>
  Object.keys(FILM).flatMap((panel, i) =>
    (FILM[of[panel] ?? panel] ?? []).flatMap((value, k) =>
      [0, 1, 2].map((r) =>
        readingAt(panel, `${k + 1}`, r + 1, value + noise * at(NOISE, (i + k + r) % 6), {
          marked: true,
          line: 100 * i + 10 * k + r,
        }),
      ),
    ),
  );
const exact = expertReference(surveyOf(read({}, 0)));

test('a steady hand that swaps two panels alike within σ_pt is told so, and one that reads them as they are is not', () => {
  expect(toldOf(read(), exact)).toEqual([]);
  expect(toldOf(read({ bonnet: 'roof', roof: 'bonnet' }), exact)).toMatchObject([
    {
      code: 'swapped-or-turned',
      panels: ['bonnet', 'roof'],
      line: 0,
      text: expect.stringContaining(
        'bonnet and roof are swapped, or points of them are numbered in another order',
      ),
    },
  ]);
});

test('the left and the right of the car are told so as well', () => {
  const swapped = read({
    'door-front-right': 'door-front-left',
    'door-front-left': 'door-front-right',
  });
  expect(toldOf(swapped, exact).map(({ code, panels }) => [code, [...panels].sort()])).toEqual([
    ['swapped-or-turned', ['door-front-left', 'door-front-right']],
  ]);
});

test('each counts as questionable, as if only its points were numbered otherwise', () => {
  const { verdict, voided } = gradeAgainst(
    surveyOf(read({ bonnet: 'roof', roof: 'bonnet' })),
    exact,
  );
  expect(verdict).toBe('questionable');
  expect(voided.map(({ panel, as }) => [panel.id, as]).sort()).toEqual([
    ['bonnet', 'turned'],
    ['roof', 'turned'],
  ]);
});

test('two are not told where one of them may as well be swapped with a third, and are where it may not', () => {
  const fit = (misfit: number): NameFit => ({
    ...{ misfit, count: 4, scatter: misfit / 4, gain: 0 },
    ...{ largest: 1, atMarks: true, ofRepeats: 0.1 },
  });
  // Of each panel, as each: the second as the first and the third, these as the second, the fourth as itself.
  const fits = (third: number) =>
    [
      [20, 1, 20, 20],
      [1, 20, 1, 20],
      [20, third, 20, 20],
      [20, 20, 20, 1],
    ].map((row) => row.map(fit));
  const told = (third: number) =>
    swappedBySpread(fits(third), { told: new Set(), sides: [] }, { proof: 0, unsatisfactory: 3 });
  expect(told(1)).toEqual([]);
  expect(told(20)).toEqual([[0, 1]]);
});
