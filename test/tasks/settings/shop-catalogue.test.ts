import { describe, expect, test } from 'vitest';
import type { Machine } from '../../../src/correction/removal/catalogue.ts';
import { setTime } from '../../../src/correction/removal/removal-rate.ts';
import { correctionModel } from '../../../src/formats/models.ts';
import { type Catalogue, catalogueOf } from '../../../src/tasks/settings/shop-catalogue.ts';
import { layersOf } from '../layers.ts';

const catalogue = (shop: object): Catalogue => catalogueOf(layersOf({ shop }), correctionModel);
const builtIn = (id: string): Machine => named(correctionModel.machines, id);
function named<T extends { readonly id: string }>(all: readonly T[], id: string): T {
  const found = all.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}
const machineOf = (entry: object): Machine => {
  const { model } = catalogue({ machines: [{ id: 'own', ...entry }] });
  return named(model.machines, 'own');
};
const ids = (all: readonly { readonly id: string }[]): readonly string[] => all.map(({ id }) => id);

test('a shop works with what it lists, and with its hands', () => {
  const { model } = catalogue({ machines: ['da'], pads: ['wool'] });
  expect(ids(model.machines)).toEqual(['da', 'hand']);
  expect(ids(model.pads)).toEqual(['wool']);
  expect(ids(model.products)).toEqual(['fine', 'medium', 'heavy']);
});

test('a shop that says nothing has the usual machines, and every pad and product', () => {
  const { model, machines } = catalogueOf(layersOf({}), correctionModel);
  expect(ids(model.machines)).toEqual(['rotary', 'da', 'da-small', 'hand']);
  expect(machines).toEqual({
    value: ['rotary', 'da', 'da-small', 'hand'],
    origin: 'built-in',
    where: 'built-in',
  });
});

describe('a machine of the shop’s own', () => {
  test('takes from the built-in one it is like whatever it leaves out', () => {
    const own = machineOf({ like: 'da', throw_mm: 21, name: 'long throw' });
    const { name: _, id: __, motion: ___, ...rest } = builtIn('da');
    expect(own).toEqual({
      ...rest,
      id: 'own',
      name: 'long throw',
      motion: { kind: 'orbital', throwDiameter: 21, orbitsPerMinute: 4200, forcedRpm: 0 },
    });
  });

  test.each([
    ['a rotary', { motion: 'rotary', rpm: 1200, pad_mm: 180 }, 'rotary'],
    ['a wide orbit', { motion: 'orbital', throw_mm: 21, orbits_per_min: 4000, pad_mm: 150 }, 'da'],
    [
      'a forced orbit',
      { motion: 'orbital', throw_mm: 9, orbits_per_min: 4500, forced_rpm: 400, pad_mm: 150 },
      'da-forced',
    ],
    [
      'a small orbit',
      { motion: 'orbital', throw_mm: 12, orbits_per_min: 4500, pad_mm: 80 },
      'da-small',
    ],
    ['a hand', { motion: 'hand', pad_mm: 90 }, 'hand'],
  ])('of no likeness is pressed and moved as the nearest built-in one: %s', (_, entry, nearest) => {
    const { force, armSpeed } = builtIn(nearest);
    expect(machineOf(entry)).toMatchObject({ force, armSpeed, padDiameter: entry.pad_mm });
  });

  test('takes the minutes a section that it is said to take', () => {
    const { section } = correctionModel.removal;
    for (const like of ['rotary', 'da', 'hand']) {
      const own = machineOf({ like, min_per_section: 3.5 });
      expect(setTime(own, section, correctionModel.removal)).toBeCloseTo(3.5, 9);
    }
  });

  test('may state its vibration and how fast a hand rubs', () => {
    expect(machineOf({ like: 'da', vibration_m_per_s2: 4.5 }).vibration).toBe(4.5);
    expect(machineOf({ like: 'hand', arm_speed_m_per_s: 0.6 }).motion).toMatchObject({
      rubbing: 0.6,
    });
  });
});

test('a built-in id with values of its own changes that one, and keeps its name', () => {
  const { model } = catalogue({
    machines: [{ id: 'rotary', rpm: 1100 }],
    pads: [{ id: 'wool', factor: 2 }],
    products: [{ id: 'heavy', stages: ['cut', 'refine'] }],
  });
  expect(model.machines[0]).toMatchObject({ name: 'rotary', motion: { rpm: 1100 } });
  expect(model.pads[0]).toEqual({ ...named(correctionModel.pads, 'wool'), factor: 2 });
  expect(model.products[0]).toMatchObject({ name: 'heavy compound', stages: ['cut', 'refine'] });
});

test('a pad or product of no likeness leaves the haze of its last stage', () => {
  const { model } = catalogue({
    pads: [
      { id: 'waffle', factor: 0.9, stages: ['finish'] },
      { id: 'denim', factor: 1.2, stages: ['cut'] },
    ],
    products: [
      { id: 'a', factor: 0.5, stages: ['refine', 'finish'] },
      { id: 'b', factor: 1, stages: ['refine'] },
      { id: 'c', factor: 1.4, stages: ['cut'] },
      { id: 'd', like: 'heavy', factor: 1.4 },
    ],
  });
  expect(model.pads.map(({ name, haze }) => [name, haze])).toEqual([
    ['waffle', 0],
    ['denim', 1],
  ]);
  expect(model.products.map(({ haze }) => haze)).toEqual([0, 1, 2, 2]);
});

test('a thing is traced to its line, and each of its values too', () => {
  const { owned } = catalogue({
    machines: ['da', { id: 'own', like: 'rotary', rpm: 1200 }],
    rates: { 'da/wool/heavy': { rate_um_per_set: 2 } },
  });
  expect(owned.get('machines/da')).toEqual({
    origin: 'shop',
    where: 'shop.json:4',
    base: 'da',
    stated: new Map(),
  });
  expect(owned.get('machines/own')?.stated).toEqual(
    new Map([
      ['like', 'shop.json:7'],
      ['rpm', 'shop.json:8'],
    ]),
  );
  expect(owned.get('rates/da/wool/heavy')?.where).toBe('shop.json:12');
});

test('a rate comes from the first file that states it', () => {
  const rate = (um: number) => ({ rates: { 'da/wool/heavy': { rate_um_per_set: um } } });
  const layers = layersOf({ project: rate(2), user: rate(3) });
  const { rates, model } = catalogueOf(layers, correctionModel);
  expect(rates.get('da/wool/heavy')).toMatchObject({ origin: 'project', where: 'project.json:4' });
  expect(model.rates.get('da/wool/heavy')?.rate).toBe(2);
});
