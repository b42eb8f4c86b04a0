/** Marks that were numbered in another order are no panels mixed up: by hand on two panels, and on drawn cars. */
import { expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import { expertReference } from '../../src/training/reference.ts';
import { swappedPanels } from '../../src/training/swapped-panels.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  expertOf,
  gradeAgainst,
  model,
  oneGauge,
  panelIds,
  type Random,
  readCar,
  readingAt,
  settings,
  sigmaPt,
  surveyOf,
  usualHabit,
} from './true-class.ts';

type Films = Readonly<Record<string, readonly number[]>>;
const survey = (films: Films) =>
  surveyOf(
    Object.entries(films).flatMap(([panel, film]) =>
      film.map((value, i) => readingAt(panel, `${i + 1}`, 1, value, { marked: true })),
    ),
  );
const told = (trainee: Films, reference: Films) =>
  swappedPanels(
    {
      trainee: survey(trainee),
      reference: expertReference(survey(reference)),
      sigmaPt,
      gauges: oneGauge,
    },
    model,
  ).flatMap(({ panels }) => panels);

/** The roof is the bonnet in another order, and thicker by `apart`. */
const car = (apart: number): Films => ({
  bonnet: [90, 110, 130],
  roof: [130 + apart, 90 + apart, 110 + apart],
});
const swapped = (apart: number): Films => {
  const { bonnet = [], roof = [] } = car(apart);
  return { bonnet: roof, roof: bonnet };
};

test('two panels that are alike but for the order of their marks are not swapped: who read them numbered otherwise', () => {
  expect(told(swapped(0), car(0))).toEqual([]);
  expect(told(swapped(12), car(12))).toEqual(['bonnet', 'roof']);
});

test('they are swapped from where that is likelier by what a false alarm allows than six orders on either of two panels', () => {
  let [low, high] = [0, 12];
  for (let k = 0; k < 20; k += 1) {
    const middle = (low + high) / 2;
    if (told(swapped(middle), car(middle)).length > 0) high = middle;
    else low = middle;
  }
  // Each has three marks of one difference, of whose variance half is of the panel.
  const variance = sigmaPt.value ** 2 + 2 * settings.film.measurement.repeatability ** 2;
  const ofOne = (3 * high ** 2) / variance / (1 / 2 + 3 / 2) + 2 * Math.log(6 * 2);
  expect(2 * ofOne).toBeCloseTo(2 * Math.log(1 / model.slips.falseAlarm), 2);
});

/** The values of some panels in an order drawn for each. */
function reordered(
  readings: readonly Reading[],
  panels: readonly string[],
  random: Random,
): readonly Reading[] {
  return panelIds.flatMap((panel) => {
    const own = readings.filter((one) => one.panel === panel);
    if (!panels.includes(panel)) return own;
    const drawn = own
      .map(({ thickness }) => ({ thickness, by: random() }))
      .sort((one, other) => one.by - other.by);
    return changed(own, (_, i) => drawn[i]?.thickness ?? Number.NaN);
  });
}

test.each([
  { marks: 3, count: 11 },
  { marks: 5, count: 5 },
])(
  'of 60 drawn surveys with $marks marks numbered otherwise on $count of eleven panels at most one is told that panels are swapped',
  ({ marks, count }) => {
    const random = seededRandom(441_903 + marks);
    const habit = { ...usualHabit, points: marks, marked: true };
    const wronged = Array.from({ length: 60 }, () => {
      const drawn = drawCar(random);
      const reference = expertOf(random, drawn, { ...habit, repeats: 3 });
      const some = [...panelIds].sort(() => random() - 1 / 2).slice(0, count);
      const readings = reordered(readCar(random, drawn, habit), some, random);
      return gradeAgainst(surveyOf(readings, undefined, reference), reference).reasons.some(
        ({ code }) => code === 'panels-swapped' || code === 'sides-swapped',
      );
    });
    expect(wronged.filter(Boolean).length).toBeLessThanOrEqual(1);
  },
);
