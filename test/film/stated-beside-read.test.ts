/** A clear that is stated where one was read, on the same panel or on others of its car. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { PanelFacts } from '../../src/film/film-model.ts';
import type { Reading } from '../../src/film/reading.ts';
import type { PanelSurvey } from '../../src/film/survey.ts';
import { fiveAround, panelOf, plainPanel, reading, surveyOf } from './car-builder.ts';

const IDS = ['bonnet', 'boot', 'roof', 'wing', 'door'];

type Facts = Readonly<Record<string, Partial<PanelFacts>>>;
type Read = Readonly<Record<string, number>>;

const clearAt = (panel: string, um: number): readonly Reading[] =>
  [0, 1, -1, 2, -2].map((off, i) => reading(panel, `${i + 1}`, um + off, { layer: 'clear' }));

const layer = (um: number, of: 'panel' | 'car', sd = 3) => ({
  mean: micrometres(um),
  sd: micrometres(sd),
  of,
});

/** What is stated of the car stands for every panel of which nothing is. */
function surveyed(read: Read, car: Partial<PanelFacts>, own: Facts = {}, films: Read = {}) {
  const survey = surveyOf({
    panels: IDS.map((id) => plainPanel(id)),
    readings: [
      ...IDS.flatMap((id) => fiveAround(id, films[id] ?? 118)),
      ...Object.entries(read).flatMap(([id, um]) => clearAt(id, um)),
    ],
    factsOf: (id) => ({ taken: micrometres(0), ...car, ...own[id] }),
  });
  return (id: string): PanelSurvey => panelOf(survey, id);
}

const budgets = (of: (id: string) => PanelSurvey) =>
  Object.fromEntries(IDS.map((id) => [id, of(id).budget]));

describe('a clear that is stated of a panel on which one was read', () => {
  const stated = (um: number) => ({ bonnet: { clear: layer(um, 'panel') } });

  test('takes nothing of the reading out of use where the two are far apart', () => {
    const both = surveyed({ bonnet: 23 }, {}, stated(45));
    expect(budgets(both)).toEqual(budgets(surveyed({ bonnet: 23 }, {})));
    expect(both('bonnet').budget).toBe(0);
    expect(surveyed({}, {}, stated(45))('bonnet').budget).toBeGreaterThan(3);
    const apart = both('bonnet').topcoat?.apart;
    expect(apart?.from).toBe('own-clear');
    expect(apart?.sds).toBeCloseTo(22 / Math.hypot(3, both('bonnet').facts.clearRead?.sd ?? 0), 9);
    expect(both('roof').topcoat?.apart).toBeUndefined();
  });

  test('counts beside it where the two agree, and the others are told by the reading', () => {
    const both = surveyed({ bonnet: 27 }, {}, stated(33));
    const { topcoat, facts, limits } = both('bonnet');
    const sd = facts.clearRead?.sd ?? 0;
    const share = sd ** 2 / (9 + sd ** 2);
    const clear = topcoat?.told.knowledge.statedClear;
    expect(clear?.mean).toBeCloseTo(share * 33 + (1 - share) * 27, 9);
    expect(clear?.sd).toBeCloseTo((3 * sd) / Math.hypot(3, sd), 9);
    expect(topcoat?.apart).toBeUndefined();
    expect(limits.find(({ code }) => code === 'clear')?.text).toContain(
      'by the clear as stated and as read:',
    );
    expect(both('roof').budget).toBe(surveyed({ bonnet: 27 }, {})('roof').budget);
  });

  test('leaves the clear read on it out of what others are told by, if that frees more there', () => {
    const others = surveyed({ bonnet: 60, boot: 26 }, {}, stated(58))('roof').budget;
    expect(others).toBeLessThanOrEqual(surveyed({ boot: 26 }, {})('roof').budget);
    expect(others).toBeLessThan(surveyed({ bonnet: 60, boot: 26 }, {})('roof').budget);
  });
});

describe('a clear that is stated of the car', () => {
  const read = { bonnet: 33, boot: 33, wing: 33, door: 33 };

  test('frees no panel from the clear that was read on others, where the two are far apart', () => {
    const both = surveyed(read, { clear: layer(60, 'car') });
    expect(budgets(both)).toEqual(budgets(surveyed(read, {})));
    expect(both('roof').budget).toBeLessThan(
      surveyed({}, { clear: layer(60, 'car') })('roof').budget,
    );
    expect(both('roof').topcoat?.apart?.from).toBe('clear-elsewhere');
  });

  test('is held with it where the two agree', () => {
    const { topcoat, limits } = surveyed(read, { clear: layer(38, 'car') })('roof');
    expect(topcoat?.apart).toBeUndefined();
    expect(topcoat?.told.knowledge.statedClear?.withStated).toBe(true);
    expect(limits.find(({ code }) => code === 'clear')?.text).toContain(
      'by the clear as stated and as read on other panels:',
    );
  });
});

describe('layers of the car that cannot be of one paint', () => {
  test('what is stated under the clear frees no panel where a clear that was read contradicts it', () => {
    const both = surveyed({ bonnet: 23 }, { under: layer(70, 'car', 4) });
    expect(budgets(both)).toEqual(budgets(surveyed({ bonnet: 23 }, {})));
    expect(both('bonnet').topcoat?.apart?.from).toBe('total');
  });

  test('what is stated under the clear is held with the clear that was read on others where the two agree', () => {
    const { topcoat, limits } = surveyed({ bonnet: 30 }, { under: layer(81, 'car', 4) })('roof');
    expect(topcoat?.apart).toBeUndefined();
    expect(limits.find(({ code }) => code === 'clear')?.text).toContain(
      'by the clear of the car as read on 1 panel (30.0 ± 3.5 µm) and by what is stated under it:',
    );
  });

  test('are apart on all panels where they are on one, so that a thinner panel is not freed by their mean', () => {
    const layers = { clear: layer(30, 'car'), under: layer(70, 'car', 4) };
    const films = { bonnet: 122, boot: 117, roof: 117, wing: 117, door: 117 };
    const both = surveyed({}, layers, {}, films);
    expect(both('bonnet').topcoat?.apart?.from).toBe('total');
    expect(both('roof').topcoat?.apart?.from).toBe('car');
    expect(budgets(both)).toEqual(budgets(surveyed({}, { clear: layers.clear }, {}, films)));
    expect(surveyed({}, layers, {}, { ...films, bonnet: 117 })('roof').budget).toBeGreaterThan(2);
  });
});

const um = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined });

test('however clears are stated and read, both let no more go than what is stated does alone', () => {
  const drawn = fc.record({
    read: fc.dictionary(fc.constantFrom(...IDS), um(15, 60)),
    car: maybe(um(15, 70)),
    own: maybe(um(15, 70)),
    under: maybe(um(60, 100)),
    sd: um(0.5, 5),
  });
  fc.assert(
    fc.property(drawn, ({ read, car, own, under, sd }) => {
      const ofCar = {
        ...(car === undefined ? {} : { clear: layer(car, 'car', sd) }),
        ...(under === undefined ? {} : { under: layer(under, 'car', sd) }),
      };
      const ofBonnet: Facts =
        own === undefined ? {} : { bonnet: { clear: layer(own, 'panel', sd) } };
      const both = surveyed(read, ofCar, ofBonnet);
      const statedAlone = surveyed({}, ofCar, ofBonnet);
      const isOfItsOwn = (id: string) => id === 'bonnet' && own !== undefined;
      for (const id of IDS.filter((one) => read[one] === undefined || isOfItsOwn(one))) {
        expect(both(id).budget).toBeLessThanOrEqual(statedAlone(id).budget + 1e-9);
      }
      const { bonnet: _, ...elsewhere } = read;
      const ofOthers = own === undefined ? both : surveyed(elsewhere, ofCar, ofBonnet);
      for (const id of IDS.filter((one) => one !== 'bonnet')) {
        expect(both(id).budget).toBeLessThanOrEqual(ofOthers(id).budget + 1e-9);
      }
      const readAlone = surveyed(read, {});
      for (const id of IDS) {
        const { budget, topcoat } = both(id);
        const from = topcoat?.apart?.from;
        if (from !== 'own-clear' && from !== 'clear-elsewhere') continue;
        expect(budget).toBeLessThanOrEqual(
          Math.max(statedAlone(id).budget, readAlone(id).budget) + 1e-9,
        );
      }
    }),
    { numRuns: 60 },
  );
});
