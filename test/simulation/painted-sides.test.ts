/**
 * How often neighbouring panels of one side are held to have been painted again together: of cars that never were, and of
 * cars of which one side was. Eight panels at the sides, bonnet, boot and roof, three points each.
 */
import { expect, test } from 'vitest';
import { aboutItsCar } from '../../src/film/factory-film.ts';
import { gatherCar } from '../../src/film/gathered-car.ts';
import type { Reading } from '../../src/film/reading.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { filmModel } from '../../src/formats/models.ts';
import { knownFacts, reading, standardTerms } from '../film/car-builder.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';

const SIDE = ['wing-front', 'door-front', 'door-rear', 'quarter'] as const;
const RIGHT = SIDE.map((part) => `${part}-right`);
const PANELS = ['bonnet', 'roof', 'boot', ...RIGHT, ...SIDE.map((part) => `${part}-left`)];
const POINTS = 3;
/** Over the face of a panel, of the gauge set down again, and of one side of a car against the other. */
const [WITHIN_SD, GAUGE_SD, SIDES_SD] = [5, 1.5, 6];
const PANEL_SD = Math.sqrt(aboutItsCar('clear-over-base', filmModel).variance);
const FACTORY = 112;

const template = builtInTemplates.find(({ id }) => id === 'saloon');
if (template === undefined) throw new Error('no saloon');

/** The panels held; `added` was painted over those of `painted`. */
function heldOn(
  random: () => number,
  painted: readonly string[],
  added: number,
  unread: readonly string[] = [],
): readonly string[] {
  const car = FACTORY + PANEL_SD * normal(random);
  const sides = (SIDES_SD / 2) * normal(random);
  const shift = (id: string): number =>
    id.endsWith('right') ? sides : id.endsWith('left') ? -sides : 0;
  const read = PANELS.filter((id) => !unread.includes(id));
  const readings = read.flatMap((id): readonly Reading[] => {
    const film = car + PANEL_SD * normal(random) + shift(id) + (painted.includes(id) ? added : 0);
    return Array.from({ length: POINTS }, (_, i) => {
      const read = film + WITHIN_SD * normal(random) + GAUGE_SD * normal(random);
      return reading(id, `${i + 1}`, Math.round(10 * read) / 10);
    });
  });
  const { context } = gatherCar({
    template: template as NonNullable<typeof template>,
    readings,
    factsOf: () => knownFacts,
    terms: standardTerms,
    model: filmModel,
  });
  return [...context.paintedSides.keys()];
}

test('of cars never painted again, their sides apart by an SD of 6 µm, under one in a hundred is held', () => {
  const random = seededRandom(2711);
  const cars = 4000;
  let held = 0;
  for (let i = 0; i < cars; i += 1) held += Number(heldOn(random, [], 0).length > 0);
  expect(held / cars).toBeLessThan(0.01);
  // The line is passed now and then: a rule that holds nothing would pass the test above.
  expect(held).toBeGreaterThan(0);
}, 60_000);

const DOORS_LEFT = ['door-front-left', 'door-rear-left'] as const;

test('of cars never painted again, the doors of one side not read, under one in a hundred is held', () => {
  const random = seededRandom(2713);
  const cars = 4000;
  let held = 0;
  for (let i = 0; i < cars; i += 1) held += Number(heldOn(random, [], 0, DOORS_LEFT).length > 0);
  expect(held / cars).toBeLessThan(0.01);
  expect(held).toBeGreaterThan(0);
}, 60_000);

const CENTRE = ['bonnet', 'roof', 'boot'] as const;

test('of cars never painted again, under one in a hundred has a panel of neither side held, and some have', () => {
  const random = seededRandom(2719);
  const cars = 4000;
  let held = 0;
  for (let i = 0; i < cars; i += 1) {
    const on = heldOn(random, [], 0);
    held += Number(on.some((id) => CENTRE.some((one) => one === id)));
  }
  expect(held / cars).toBeLessThan(0.01);
  expect(held).toBeGreaterThan(0);
}, 60_000);

test('of bonnets painted again with a side that is held, nearly all are held with it, and few of those that were not', () => {
  const share = (painted: readonly string[]): number => {
    const random = seededRandom(3535);
    const sides = Array.from({ length: 400 }, () => heldOn(random, painted, 35)).filter((on) =>
      on.includes('door-front-right'),
    );
    return sides.filter((on) => on.includes('bonnet')).length / sides.length;
  };
  expect(share([...RIGHT, 'bonnet'])).toBeGreaterThan(0.9);
  expect(share(RIGHT)).toBeLessThan(0.2);
}, 60_000);

test('of sides painted again at 35 µm more than half is held with the doors that face them not read', () => {
  const random = seededRandom(35);
  const cars = 400;
  let held = 0;
  for (let i = 0; i < cars; i += 1)
    held += heldOn(random, RIGHT, 35, DOORS_LEFT).length / RIGHT.length;
  expect(held / cars).toBeGreaterThan(0.5);
}, 60_000);

test('of sides painted again at 30 µm more than half is held, and more the more was painted', () => {
  const share = (added: number): number => {
    const random = seededRandom(30 + added);
    const cars = 400;
    let held = 0;
    for (let i = 0; i < cars; i += 1) held += heldOn(random, RIGHT, added).length / RIGHT.length;
    return held / cars;
  };
  const [at20, at25, at30, at35] = [20, 25, 30, 35].map(share) as [number, number, number, number];
  expect(at30).toBeGreaterThan(0.5);
  expect([at20 < at25, at25 < at30, at30 < at35]).toEqual([true, true, true]);
}, 60_000);
