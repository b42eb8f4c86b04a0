/** Panels that lack film to the others of a car whose usual film too few of them tell: by hand. */
import { describe, expect, it } from 'vitest';
import { uncertain } from '../../src/base/uncertainty.ts';
import { micrometres } from '../../src/base/units.ts';
import { carByOthers, heldToOthers } from '../../src/film/held-to-others.ts';
import { filmModel } from '../../src/formats/models.ts';
import { plainPanel } from './car-builder.ts';

const um = micrometres;
const conditions = {
  ...filmModel.conditions,
  refinishedAbove: um(30),
  refinishedAboveShare: 0.25,
  cutBack: um(12),
};
/** Panels lie 3 µm about their car, as sure as eight would show. */
const paint = { factories: um(110), about: { variance: 9, dof: 8 } };

type Film = readonly [
  id: string,
  film: number,
  rest?: { readonly mean?: number; readonly read?: number },
];

const panels = (films: readonly Film[]) =>
  films.map(([id, film, { mean = film, read = film } = {}]) => ({
    panel: plainPanel(id),
    film: um(film),
    mean: um(mean),
    read: um(read),
  }));
const held = (...films: readonly Film[]) => heldToOthers(panels(films), paint, conditions);
const valuesOf = (...films: readonly Film[]) =>
  [...held(...films)].map(([id, { value }]) => [id, value]);

describe('a panel that lacks film to the others', () => {
  it('is held to the middle of them, from 12 µm on', () => {
    expect(valuesOf(['roof', 100], ['door', 120], ['wing', 124])).toEqual([['roof', 122]]);
    expect(valuesOf(['roof', 110], ['door', 120], ['wing', 124])).toEqual([]);
    expect(valuesOf(['roof', 109.9], ['door', 120], ['wing', 124])).toEqual([['roof', 122]]);
  });
  it('lacks it by its mean, and is held to it as it is read itself: without the zinc that was added', () => {
    expect(valuesOf(['roof', 115, { mean: 107 }], ['door', 120])).toEqual([['roof', 120]]);
    expect(valuesOf(['roof', 100, { read: 93 }], ['door', 120])).toEqual([['roof', 113]]);
  });
  it('is held to no panel that reads like repaint to what factories paint, and nothing to it if it does itself', () => {
    // 110 + 30: at 140 it is none yet.
    expect(valuesOf(['roof', 100], ['door', 141])).toEqual([]);
    expect(valuesOf(['roof', 100], ['door', 140])).toEqual([['roof', 140]]);
    expect(valuesOf(['roof', 150, { mean: 90 }], ['door', 120])).toEqual([]);
  });
  it('is alone where no other is left', () => {
    expect(valuesOf(['roof', 60])).toEqual([]);
    expect(valuesOf()).toEqual([]);
  });
});

it('what it is held to is as uncertain as panels lie about their car', () => {
  const found = held(['roof', 90], ['door', 120], ['wing', 124]).get('roof')?.uncertain;
  expect(found?.value).toBe(122);
  expect([...(found?.components ?? [])]).toEqual([['cars', { contribution: 3, dof: 8 }]]);
});

it('the car by the others of a panel is drawn towards what factories paint, by the variances of both', () => {
  const factories = uncertain(um(110), { cars: { contribution: 12, dof: 8 } });
  const films = carByOthers(
    panels([
      ['roof', 118],
      ['door', 120],
      ['wing', 124, { read: 117 }],
      ['boot', 200],
    ]),
    factories,
    // Panels lie about their car with half of that variance: their middle counts twice.
    { ...conditions, aboutItsCar: 0.5 },
  );
  expect([...films].map(([id, { value }]) => [id, value])).toEqual([
    ['roof', expect.closeTo((110 + 2 * 122) / 3, 9)],
    ['door', expect.closeTo((110 + 2 * 121) / 3, 9)],
    // As it would read itself, 7 µm less than was brought to it.
    ['wing', expect.closeTo((110 + 2 * 119) / 3 - 7, 9)],
  ]);
  expect(films.get('roof')?.components.get('cars')?.contribution).toBeCloseTo(12 / Math.sqrt(3), 9);
});
