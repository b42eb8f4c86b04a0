import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { PanelFacts } from '../../../src/film/film-model.ts';
import { allowanceAt } from '../../../src/film/limits/allowance-at.ts';
import { allowanceOnPlace } from '../../../src/film/limits/allowance-on-place.ts';
import { clearRisk } from '../../../src/film/limits/removal-risk.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { amongSound, fiveAround, onFace, standardTerms, UNTRIED_LOG_SD } from '../car-builder.ts';

const grounds = { terms: standardTerms, baseline: micrometres(112), model: filmModel };

describe('what may come off one place of a panel', () => {
  const looked = (facts: Partial<PanelFacts> = {}) => {
    const { panel } = amongSound(fiveAround('tested', 112), {
      facts: { taken: micrometres(2), ...facts },
    });
    return { panel, place: allowanceOnPlace(panel, UNTRIED_LOG_SD, grounds) };
  };

  it('is told from the clear of any place: the mean over the panel, with its spread and its doubt', () => {
    const { panel, place } = looked();
    const { topcoat } = place;
    const { told, clear } = panel.topcoat ?? {};
    if (topcoat === null || told === undefined || clear === undefined) throw new Error('read');
    // v = s²/2 for a spread s within the panel; the thinnest 5 % lie 1.645·√v under the mean.
    const v = told.film.spread.sd ** 2 / 2;
    expect(topcoat.clear.mean).toBeCloseTo(clear.mean + 1.6448536 * Math.sqrt(v), 6);
    const doubt = clear.sd ** 2 - (1.6448536 ** 2 * v) / (2 * told.film.spread.dof);
    expect(topcoat.clear.sd).toBeCloseTo(Math.sqrt(doubt + v), 6);
  });

  it('takes the stated risk that its clear ends under the floor, where the clear binds', () => {
    const { place } = looked();
    const clear = place.limits.find(({ code }) => code === 'clear');
    if (clear === undefined || place.topcoat === null) throw new Error('the clear is a limit');
    const removal = { median: clear.value, logSd: UNTRIED_LOG_SD };
    expect(clearRisk(place.topcoat.clear, place.topcoat.clearFloor, removal)).toBeCloseTo(0.05, 9);
    expect(clear.text).toMatch(
      /^clear at that place: \d+\.\d ± \d\.\d µm expected, 22\.3 must stay$/,
    );
  });

  it('is held to the same life and to the smallest point as the panel', () => {
    const { panel, place } = looked();
    const ofPanel = allowanceAt(panel, UNTRIED_LOG_SD, grounds);
    for (const code of ['life', 'total']) {
      expect(place.limits.find((one) => one.code === code)).toEqual(
        ofPanel.limits.find((one) => one.code === code),
      );
    }
  });

  it('speaks of the topcoat of single-stage paint, which has no clear', () => {
    const { place } = looked({ finish: 'single-stage-solid' });
    expect(place.limits[0]?.text).toMatch(/^topcoat at that place: .*, 20\.0 must stay$/);
  });

  it('is less by all that went at a place of the panel that was read, as it may be that place', () => {
    const [all, sd] = [micrometres(1), micrometres(0.3)];
    const known = { date: '2026-11-24', defect: 'deep-scratches', point: 'deep scratches 1' };
    const unread = { ...known, median: micrometres(1.5), high: micrometres(3) };
    const on = (gone: number, facts: Partial<PanelFacts> = {}) => {
      const taken = { mean: micrometres(gone), sd: micrometres(0) };
      const allOver = { mean: all, sd };
      const places = [{ ...unread, taken }];
      const recorded = { mean: micrometres(all + gone), sd, allOver, places };
      return looked({ recorded, ...facts }).place;
    };
    const notRead = looked({ recorded: { mean: all, sd, places: [unread] } }).place;
    const before = notRead.budget;
    expect(before).toBe(looked({ recorded: { mean: all, sd } }).place.budget);
    for (const gone of [0.4, 1.2, 2]) {
      const place = on(gone);
      const { value, text } = place.limits.find(({ code }) => code === 'place') ?? {};
      expect(value).toBeCloseTo(Math.max(0, before - gone), 9);
      expect(text).toMatch(
        /^a spot on this panel took .* more at one place, which may be this one: /,
      );
      expect(place.budget).toBeLessThanOrEqual(before - gone + 1e-9);
    }
    const isPlain = (place: ReturnType<typeof on>) =>
      place.limits.every(({ code }) => code !== 'place');
    expect(isPlain(notRead)).toBe(true);
    expect(isPlain(on(2, { paintedDaysAgo: 400 }))).toBe(true);
    expect(on(60).budget).toBe(0);
  });

  it('is nothing where nothing may come off the panel', () => {
    const repaint = amongSound(onFace('tested', 251, 249, 262, 255, 248)).panel;
    expect(allowanceOnPlace(repaint, UNTRIED_LOG_SD, grounds).budget).toBe(0);
    const matte = amongSound(fiveAround('tested', 112), { facts: { finish: 'matte' } }).panel;
    expect(allowanceOnPlace(matte, UNTRIED_LOG_SD, grounds).budget).toBe(0);
  });

  it('is no less than over the panel, wherever the clear binds the panel', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 90, max: 150 }), { minLength: 3, maxLength: 6 }),
        (points) => {
          const tested = amongSound(onFace('tested', ...points)).panel;
          if (tested.zones.length > 0) return;
          const ofPanel = allowanceAt(tested, UNTRIED_LOG_SD, grounds);
          const onPlace = allowanceOnPlace(tested, UNTRIED_LOG_SD, grounds);
          if (ofPanel.budget === 0) return;
          expect(onPlace.budget).toBeGreaterThanOrEqual(ofPanel.budget - 1e-9);
        },
      ),
      { numRuns: 60, seed: 5 },
    );
  });
});
