/** The chance that a usual film is repaint, and what the factory painted then, reckoned by hand with the normal table. */
import { describe, expect, it } from 'vitest';
import { type Uncertain, uncertain } from '../../src/base/uncertainty.ts';
import { micrometres } from '../../src/base/units.ts';
import type { FilmModel } from '../../src/film/film-model.ts';
import { lackingClear, paintedOver } from '../../src/film/painted-over.ts';
import { filmModel } from '../../src/formats/models.ts';
import { knownFacts, plainPanel } from './car-builder.ts';

const film = (value: number, sd: number, source: string): Uncertain<'µm'> =>
  uncertain(micrometres(value), { [source]: { contribution: sd, dof: Number.POSITIVE_INFINITY } });

const model: FilmModel = {
  ...filmModel,
  conditions: {
    ...filmModel.conditions,
    aboutItsCar: 0.5,
    paintedOverMost: 0.5,
    refinishedAbove: micrometres(40),
    refinishedAboveShare: 0.5,
  },
};
const thinnest = { panel: plainPanel('p0'), read: micrometres(118), film: micrometres(118) };
const factories = film(112, 12 * Math.sqrt(3), 'cars');
const found = (usual: number, zinc = { galvanised: 8, other: 0 }) =>
  paintedOver(film(usual, 0, 'read'), thinnest, factories, { zinc, model });

describe('a usual film of 156 µm where the thinnest panel reads 118', () => {
  // (112 + 2·118)/3 = 116 ± 12√3/√3 = 12; the lines 116 + 40 = 156 and 1.5·116 = 174 ± 18: z = 0 and −1.
  it('is repaint by the lesser chance of the two lines, Φ(−1) = .15866', () => {
    expect(found(156)?.chance).toBeCloseTo(0.15866, 5);
  });
  it('is over a factory film that the zinc of either kind is added to before it is weighed', () => {
    const { galvanised, other } = found(156) ?? {};
    expect(galvanised?.value).toBeCloseTo((112 + 2 * 126) / 3, 9);
    expect(other?.value).toBeCloseTo(116, 9);
    expect(galvanised?.components.get('cars')?.contribution).toBeCloseTo(12, 9);
  });
  it('is no repaint at all where it lies far under both lines', () => {
    // 1.5·116 = 174 ± 18: 60 lies 6.3 SDs under it, a chance under 1e-9.
    expect(found(60)).toBeNull();
  });
});

describe('what a panel’s clear lacks of a factory’s', () => {
  const layers: FilmModel['layers'] = {
    ...filmModel.layers,
    clearOverBase: {
      ...filmModel.layers.clearOverBase,
      top: { mean: micrometres(45), sd: micrometres(5) },
    },
  };
  const clearOf = (mean: number, of: 'panel' | 'car') => ({
    ...knownFacts,
    finish: 'clear-over-base' as const,
    clear: { mean: micrometres(mean), sd: micrometres(2), of },
  });
  const point = (thickness: number) => ({
    point: `at ${thickness}`,
    thickness: micrometres(thickness),
    repeats: [micrometres(thickness)],
    place: 'face' as const,
    curved: false,
  });
  const lacking = (facts: ReturnType<typeof clearOf>, ...read: readonly number[]) =>
    lackingClear({ facts, clearPoints: read.map(point) }, { layers });

  it('is the difference to what is stated of the panel', () => {
    expect(lacking(clearOf(30, 'panel'))).toBe(15);
  });
  it('is nothing where that is thicker', () => {
    expect(lacking(clearOf(50, 'panel'))).toBe(0);
  });
  it('goes by the mean of what was read of the layer where only the car’s clear is stated', () => {
    expect(lacking(clearOf(30, 'car'), 36, 40)).toBe(7);
  });
  it('is nothing where nobody knows the clear of that panel', () => {
    expect(lacking(clearOf(30, 'car'))).toBe(0);
  });
});
