/** The ± (95 %) of a car's usual film, against cars whose usual film is known. */
import { expect, test } from 'vitest';
import { expandedUncertainty } from '../../../src/base/uncertainty.ts';
import { micrometres } from '../../../src/base/units.ts';
import { baselineUncertainty } from '../../../src/film/condition/compared-figures.ts';
import { aboutItsCar } from '../../../src/film/factory-film.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { normal, seededRandom } from '../../samples/seeded-random.ts';

const CARS = 3000;
const USUAL = 115;
const about = aboutItsCar('clear-over-base', filmModel);
/** A gauge that errs by nothing: what is told is how far panels vary alone. */
const measurement = {
  ...filmModel.measurement,
  fixed: micrometres(0),
  proportional: 0,
  leastCalibration: micrometres(0),
};

function covered(panels: number, sd: number): number {
  const random = seededRandom(20_261_127 + panels);
  let held = 0;
  for (let car = 0; car < CARS; car += 1) {
    const medians = Array.from({ length: panels }, () => micrometres(USUAL + sd * normal(random)));
    const told = baselineUncertainty(medians, about, {}, measurement);
    if (told === null) throw new Error('no baseline');
    if (Math.abs(told.value - USUAL) <= expandedUncertainty(told, 0.95)) held += 1;
  }
  return held / CARS;
}

test('panels vary about their car by half of what film does over cars, less what it does over a panel', () => {
  // 6² of clear and 10² under it, and 5 % of 112 µm.
  expect(about.variance).toBeCloseTo(0.5 * (136 - 5.6 ** 2), 9);
  expect(about.dof).toBe(4);
});

test.each([3, 4, 5, 7, 8, 11, 14])(
  'of %i panels it holds the truth in 94 cars of 100',
  (panels) => {
    for (const sd of [2, 5, Math.sqrt(about.variance), 9]) {
      expect(covered(panels, sd)).toBeGreaterThan(0.94);
    }
  },
);

test('it holds less where panels vary twice as far as assumed, and still in four cars of five', () => {
  for (const panels of [3, 5, 8, 11]) {
    const share = covered(panels, 2 * Math.sqrt(about.variance));
    expect(share).toBeLessThan(0.95);
    expect(share).toBeGreaterThan(0.82);
  }
});

test('panels that all read alike are no proof of an even car: the ± falls with their number alone', () => {
  const widths = [2, 3, 5, 8, 12].map((panels) => {
    const alike = Array.from({ length: panels }, () => micrometres(USUAL));
    return expandedUncertainty(
      baselineUncertainty(alike, about, {}, measurement) ?? expect.fail(),
      0.95,
    );
  });
  expect(widths).toEqual([...widths].sort((a, b) => b - a));
  expect(widths.at(-1)).toBeGreaterThan(3);
});
