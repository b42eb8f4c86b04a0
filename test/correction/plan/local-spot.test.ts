import { describe, expect, it } from 'vitest';
import { micrometres, millimetres } from '../../../src/base/units.ts';
import { medianDepth } from '../../../src/correction/defects.ts';
import { heldBack, lessThanOnPanel } from '../../../src/correction/plan/local-remarks.ts';
import {
  keepsFilm,
  keepsTechnique,
  type Spot,
  spotRisk,
  spotWith,
} from '../../../src/correction/plan/local-spot.ts';
import type { PanelPlan } from '../../../src/correction/plan/plan.ts';
import { ladderOn } from '../../../src/correction/removal/removal-knowledge.ts';
import { allowanceOnPlace } from '../../../src/film/limits/allowance-on-place.ts';
import { isZone, type PanelSurvey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { amongSound, inTwoZones, standardTerms } from '../../film/car-builder.ts';
import { defect, planned, planOf, shopWith, untried } from '../shop.ts';

const grounds = { terms: standardTerms, baseline: micrometres(112), model: filmModel };
const deep = defect('deep-scratches', 3);
const { survey } = amongSound(inTwoZones());

/** Little may go from the thinner zone of a panel, and much from the thicker one. */
const request = {
  panels: survey.panels,
  defectsOf: () => [defect('swirl-marks', 4)],
  aim: 0.85,
  hazeAllowed: 1,
  model: shopWith('da', 'da-small', 'hand'),
  paintOf: () => untried,
  allowanceAt: (part: PanelSurvey) => ({
    ...part,
    budget: micrometres(isZone(part) && part.zone === 'thinner' ? 0.6 : 4),
  }),
  allowanceOnPlace: (part: PanelSurvey, logSd: number) => allowanceOnPlace(part, logSd, grounds),
  thinnerClear: micrometres(6),
  edgeWidth: millimetres(25),
};
const zones = planned(planOf(survey, request), 'tested').zones as readonly PanelPlan[];
const [strongest] = ladderOn(untried, request.model)
  .filter(({ machine }) => machine.id === 'da-small')
  .slice(-1);
const extra = strongest === undefined ? [] : [{ combination: strongest, sets: 2 }];
const spotOn = (parts: readonly PanelPlan[], steps = extra): Spot =>
  spotWith(steps, medianDepth(deep), parts, request);

describe('a spot on a panel whose zones are worked apart', () => {
  const [thinner = Number.NaN, thicker = Number.NaN] = zones.map(({ removal }) => removal.median);
  const each = zones.map((zone) => spotOn([zone]));
  const orders = [zones, [...zones].reverse()];

  it('takes what it takes where the panel’s own steps take most, and clears what it clears where they take least', () => {
    expect(thinner).toBeLessThan(thicker);
    for (const parts of orders) {
      expect(spotOn(parts, []).removal.median).toBeCloseTo(thicker, 12);
      const spot = spotOn(parts);
      expect(spot.removal.median).toBe(Math.max(...each.map(({ removal }) => removal.median)));
      expect(spot.correction).toBe(Math.min(...each.map(({ correction }) => correction)));
      expect(spot.places.map(({ removal }) => removal.median).sort()).toEqual(
        each.map(({ removal }) => removal.median).sort(),
      );
    }
  });

  it('keeps the film, and leaves no haze, where it does so in both', () => {
    for (const parts of orders) {
      const spot = spotOn(parts);
      expect(keepsFilm(spot)).toBe(each.every(keepsFilm));
      expect(keepsTechnique(spot)).toBe(each.every(keepsTechnique));
    }
  });

  it('has the risk of the worse of the two, and none where nothing is known of the topcoat of one', () => {
    const risks = each.map(spotRisk);
    expect(risks.every((risk) => risk !== null && risk > 0)).toBe(true);
    expect(new Set(risks).size).toBe(2);
    for (const parts of orders) {
      const spot = spotOn(parts);
      expect(spotRisk(spot)).toBe(Math.max(...risks.map((risk) => risk ?? Number.NaN)));
      const unknown = spot.places.map((place, i) =>
        i === 0 ? { ...place, allowance: { ...place.allowance, topcoat: null } } : place,
      );
      expect(spotRisk({ ...spot, places: unknown })).toBeNull();
    }
  });

  it('is told to have less than the panel only of the zones where less may go, by the most that may', () => {
    const spot = spotOn(zones);
    const budgets = spot.places.map(({ allowance }) => allowance.budget);
    const parts = (...more: readonly number[]) =>
      budgets.map((budget, i) => ({
        survey: { budget: micrometres(budget + (more[i] ?? 0)) } as PanelSurvey,
      }));
    const told = (...more: readonly number[]) =>
      lessThanOnPanel(spot, spotOn(zones, []), parts(...more)).map(({ text }) => text);
    expect(told(0, 0)).toEqual([]);
    expect(told(-1, 0.004)).toEqual([]);
    const most = (i: number, more: number) => ((budgets[i] ?? Number.NaN) + more).toFixed(2);
    expect(told(0.5, -1)[0]).toContain(`less than the ${most(0, 0.5)} µm that may go`);
    expect(told(-1, 0.5)[0]).toContain(`less than the ${most(1, 0.5)} µm that may go`);
    expect(lessThanOnPanel(spotOn(zones, []), spotOn(zones, []), parts(1, 1))).toEqual([]);
  });

  it('is held back by the film of the place on which least is left', () => {
    const spot = spotOn(zones);
    const removals = spot.places.map(({ removal }) => removal.median);
    const with_ = (...lefts: readonly number[]): Spot => ({
      ...spot,
      places: spot.places.map((place, i) => ({
        ...place,
        allowance: {
          ...place.allowance,
          budget: micrometres(place.removal.median + (lefts[i] ?? 0)),
          boundBy: { ...place.allowance.boundBy, text: `limit ${i}` },
        },
        keepsFilm: false,
        keepsTechnique: true,
      })),
    });
    const better = { ...with_(0, 0), correction: spot.correction + 0.1 };
    const held = (...lefts: readonly number[]) => heldBack(with_(...lefts), [better])[0];
    expect(removals[0]).not.toBe(removals[1]);
    for (const [lefts, place] of [
      [[2, 1], 1],
      [[1, 2], 0],
    ] as const) {
      expect(held(...lefts)?.value).toBe((removals[place] ?? 0) + 1);
      expect(held(...lefts)?.text).toMatch(
        /^1\.00 µm more may go there, and whatever clears more takes more than that: /,
      );
    }
    expect(held(0.004, 2)?.text).toMatch(/^no more may go there: /);
    expect(held(-(removals[0] ?? 0), 2)?.text).toMatch(/^nothing may go there: /);
    // A way that clears no more holds nothing back.
    expect(heldBack(with_(2, 1), [{ ...better, correction: spot.correction }])).toEqual([]);
  });

  it('is held back by the film where a better way leaves no haze, by haze where every better way leaves some', () => {
    const spot = spotOn(zones);
    const better = (film: boolean, technique: boolean): Spot => ({
      ...spot,
      correction: spot.correction + 0.1,
      places: spot.places.map((place, i) => ({
        ...place,
        // It is enough that one of its places does not keep it.
        keepsFilm: film || i > 0,
        keepsTechnique: technique || i > 0,
      })),
    });
    const held = (...spots: readonly Spot[]) => heldBack(spot, spots).map(({ code }) => code);
    expect(held(better(false, true))).toEqual(['local-limit']);
    expect(held(better(true, false))).toEqual(['local-haze']);
    expect(held(better(false, false))).toEqual(['local-haze']);
    expect(held(better(true, false), better(false, true))).toEqual(['local-limit']);
    expect(held(better(true, true))).toEqual([]);
    expect(held()).toEqual([]);
  });
});
