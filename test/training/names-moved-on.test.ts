/** Names moved on by one at marks, and what looks like it: a panel passed over, an unsteady hand, another walk. */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { Reading } from '../../src/film/reading.ts';
import { expertReference } from '../../src/training/reference.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import {
  drawCar,
  gradeAgainst,
  type Habit,
  panelIds,
  readCar,
  rounded,
  surveyOf,
  usualHabit,
} from './true-class.ts';

const marked: Habit = { ...usualHabit, marked: true };
type Readings = readonly Reading[];
type Spoil = (readings: Readings) => Readings;

/** As a file that walks round the car in the order given. */
const walked = (readings: Readings, order = panelIds): Readings =>
  order
    .flatMap((id) => readings.filter(({ panel }) => panel === id))
    .map((one, i) => ({ ...one, origin: { ...one.origin, line: i + 2 } }));
const renamed = (readings: Readings, names: ReadonlyMap<string, string>): Readings =>
  readings.map((one) => ({ ...one, panel: names.get(one.panel) ?? one.panel }));

const movedOn: Spoil = (readings) =>
  walked(renamed(readings, new Map(panelIds.map((id, i) => [id, panelIds.at(i - 1) ?? id]))));
/** One is passed over, each after it goes under the name before, and the last name is left. */
const passedOver =
  (place: number): Spoil =>
  (readings) => {
    const after = panelIds.slice(place + 1);
    const names = new Map(after.map((id, k) => [id, panelIds[place + k] ?? id]));
    return walked(
      renamed(
        readings.filter(({ panel }) => panel !== panelIds[place]),
        names,
      ),
    );
  };

function graded(seed: number, spoil: Spoil, habit = marked) {
  const random = seededRandom(seed);
  const car = drawCar(random);
  const reference = expertReference(surveyOf(readCar(random, car, marked)));
  const own = spoil(readCar(random, car, habit));
  return gradeAgainst(surveyOf(own, undefined, reference), reference);
}
const swapsOf = (...asked: Parameters<typeof graded>) =>
  graded(...asked).reasons.filter(({ code }) => /swapped/.test(code));

const SURVEYS = 20;
const seeds = Array.from({ length: SURVEYS }, (_, k) => 7_301 + k);
const share = (isSo: (seed: number) => boolean): number => seeds.filter(isSo).length / SURVEYS;

describe('names at five marks', () => {
  test('that all moved on by one are all told, in nine surveys of ten', () => {
    const all = share((seed) => {
      const swaps = swapsOf(seed, movedOn);
      return swaps.length === 1 && swaps[0]?.panels.length === panelIds.length;
    });
    expect(all).toBeGreaterThanOrEqual(0.9);
  });

  test('that moved on as a panel was passed over are told from there on, in nine of ten', () => {
    const place = 5;
    const after = panelIds.slice(place, -1);
    const rightly = share((seed) => {
      const swaps = swapsOf(seed, passedOver(place));
      return swaps.length === 1 && `${swaps[0]?.panels}` === `${after}`;
    });
    expect(rightly).toBeGreaterThanOrEqual(0.9);
    expect(share((seed) => swapsOf(seed, passedOver(place))[0]?.panels[0] === panelIds[0])).toBe(0);
  });

  test('are right where a panel is only missing', () => {
    const missing: Spoil = (readings) => readings.filter(({ panel }) => panel !== panelIds[5]);
    expect(seeds.flatMap((seed) => swapsOf(seed, missing))).toEqual([]);
  });

  test('are told as mixed up of an unsteady hand in few surveys: it fits other names by chance', () => {
    const unsteady = { ...marked, repeatability: 4 };
    expect(share((seed) => swapsOf(seed, (all) => all, unsteady).length > 0)).toBeLessThan(0.1);
  });
});

describe('a panel that was passed over', () => {
  const [swap] = swapsOf(7_301, passedOver(5));
  const [first, second] = panelIds.slice(5);

  test('is named, and what stands under each name after it', () => {
    expect(swap?.text).toMatch(
      /^the names of .* are moved on by one: what stands under (.*) agrees with the reference of .*, and so on; the \1 itself was passed over; write the name of a panel while you stand before it$/u,
    );
    expect(swap?.panels.slice(0, 2)).toEqual([first, second]);
  });

  test('makes no panel after it off besides, nor values that do not follow', () => {
    const codes = graded(7_301, passedOver(5)).reasons.map(({ code }) => code);
    expect(codes).toEqual(['panels-swapped', 'panels-unread', 'not-repeated']);
  });
});

describe('panels that fit each other’s names', () => {
  /** From the sixth of the walk on values are invented; there two panels have those that the reference has of each other. */
  const invented = (order: readonly string[]): Spoil => {
    const made = order.slice(5);
    const [one, other] = made.slice(-2);
    return (readings) => {
      const random = seededRandom(11);
      const swapped = renamed(
        readings,
        new Map([
          [one ?? '', other ?? ''],
          [other ?? '', one ?? ''],
        ]),
      );
      const shuffled = made.slice(0, -2).flatMap((id) => {
        const own = swapped.filter(({ panel }) => panel === id);
        const values = own.map(({ thickness }) => thickness).sort(() => random() - 0.5);
        return own.map((reading, i) => ({ ...reading, thickness: values[i] ?? reading.thickness }));
      });
      const kept = swapped.filter(({ panel }) => !made.slice(0, -2).includes(panel));
      return walked([...kept, ...shuffled], order);
    };
  };

  test('do so by chance where the file follows the car no more, whichever way round it walks', () => {
    for (const order of [panelIds, panelIds.toReversed()]) {
      const found = seeds.map((seed) => graded(seed, invented(order)));
      const astray = found.filter(({ reasons }) =>
        reasons.some(({ code, panels }) => code === 'not-following' && panels.length > 0),
      );
      expect(astray.length).toBeGreaterThan(3);
      const codes = astray.flatMap(({ reasons }) => reasons.map(({ code }) => code));
      expect(codes).not.toContain('panels-swapped');
      expect(codes).not.toContain('sides-swapped');
    }
  });
});

describe('with one reading in mil', () => {
  const inMil =
    (panel: string): Spoil =>
    (readings) => {
      const slip = readings.find((one) => one.panel === panel);
      return readings.map((one) =>
        one === slip
          ? { ...one, thickness: micrometres(rounded(one.thickness / 25.4, 0.01)) }
          : one,
      );
    };

  test('no panel is told under another name: its mean is of no panel', () => {
    const told = seeds.flatMap((seed) =>
      panelIds.flatMap((panel) => swapsOf(seed, inMil(panel), usualHabit)),
    );
    expect(told.map(({ code }) => code)).not.toContain('panels-swapped');
  });

  test('sides that are swapped all over the car are told as before', () => {
    const other = new Map(
      panelIds
        .filter((id) => /left|right/.test(id))
        .map((id) => [
          id,
          id.replace(/left|right/, (side) => (side === 'left' ? 'right' : 'left')),
        ]),
    );
    const told = share((seed) =>
      swapsOf(seed, (readings) => inMil('wing-front-left')(walked(renamed(readings, other)))).some(
        ({ code }) => code === 'sides-swapped',
      ),
    );
    expect(told).toBeGreaterThanOrEqual(0.9);
  });
});
