import { beforeEach, describe, expect, it } from 'vitest';
import { micrometres, millimetres } from '../../../src/base/units.ts';
import { isWorked, type PanelPlan } from '../../../src/correction/plan/plan.ts';
import { planCorrection } from '../../../src/correction/plan/plan-correction.ts';
import { paintKnowledge, removalLogSd } from '../../../src/correction/removal/removal-knowledge.ts';
import { clearRisk } from '../../../src/film/limits/removal-risk.ts';
import { isZone } from '../../../src/film/survey.ts';
import { correctionModel } from '../../../src/formats/models.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import {
  amongSound,
  byItself,
  fiveAround,
  inTwoZones,
  onFace,
  plainPanel,
  reading,
  surveyOf,
} from '../../film/car-builder.ts';
import { layersOf } from '../../tasks/layers.ts';
import { defect, planned, planOf, shopWith, stepsOf, untried } from '../shop.ts';

const codes = (list: readonly { readonly code: string }[]): readonly string[] =>
  list.map(({ code }) => code);

/** A panel like the check's: mean 112, sample SD 5.3 (±5.3·√(4/4) at four of five points). */
const checkReadings = onFace('a', 106.7, 117.3, 106.7, 112, 117.3);
const checkCar = (rest: Parameters<typeof plainPanel>[1] = {}) =>
  surveyOf({ panels: [plainPanel('a', rest)], readings: checkReadings, model: byItself });

describe('the worked example of the planner', () => {
  const { pads, ...others } = shopWith('rotary', 'da');
  const shop = { ...others, pads: pads.filter(({ id }) => id.startsWith('foam')) };
  let plan: PanelPlan;
  beforeEach(() => {
    plan = planned(planOf(checkCar(), { model: shop }), 'a');
  });

  it('is da/foam-medium/medium × 3, then da/foam-soft/fine × 1', () => {
    expect(stepsOf(plan)).toEqual(['da/foam-medium/medium × 3', 'da/foam-soft/fine × 1']);
    expect(plan.verdict).toBe('polish');
  });

  it('takes a median of 2.97 µm and clears 85 %', () => {
    expect(plan.removal.median).toBeCloseTo(2.97, 2);
    expect(plan.expected).toBeCloseTo(0.85, 2);
  });

  it('states the lognormal’s mean and 90 % range beside the median', () => {
    const logSd = Math.hypot(0.35, 0.4, 0.15);
    expect(removalLogSd(correctionModel.removal)).toBeCloseTo(logSd, 12);
    expect(plan.removal.mean).toBeCloseTo(plan.removal.median * Math.exp(logSd ** 2 / 2), 9);
    expect(plan.removal.low).toBeCloseTo(plan.removal.median * Math.exp(-1.6448536 * logSd), 6);
    expect(plan.removal.high).toBeCloseTo(plan.removal.median * Math.exp(1.6448536 * logSd), 6);
  });

  it('keeps the risk, says what it would be on thinner clear, and what stood before any work', () => {
    expect(plan.risk).toBeLessThanOrEqual(0.05);
    expect(plan.riskIfThin).toBeGreaterThan(plan.risk ?? 1);
    expect(plan.already).toBeLessThan(plan.risk ?? 0);
    const topcoat = plan.survey.topcoat;
    if (topcoat === null) throw new Error('the panel was read');
    const thinner = { ...topcoat.clear, mean: micrometres(topcoat.clear.mean - 6) };
    const removal = { median: plan.removal.median, logSd: Math.hypot(0.35, 0.4, 0.15) };
    expect(plan.riskIfThin).toBeCloseTo(clearRisk(thinner, topcoat.clearFloor, removal), 9);
  });

  it('is provisional without a test spot on this paint', () => {
    expect(plan.provisional).toBe(true);
  });

  it('gives each step its removal and machine time on the panel’s area', () => {
    const [cut] = plan.steps;
    expect(cut?.removal).toBeCloseTo(3 * 0.897, 2);
    // 1 m²: 4/(.075·.15·.5)/60 = 11.852 min a set
    expect(cut?.machineTime).toBeCloseTo(3 * 11.852, 2);
  });
});

describe('the verdict on a panel', () => {
  it('is lighter, with the limit that binds, where the aim takes more than may go', () => {
    const { survey } = amongSound(fiveAround('tested', 106), { facts: { taken: micrometres(5) } });
    const plan = planned(planOf(survey), 'tested');
    expect(plan.verdict).toBe('lighter');
    expect(plan.expected).toBeLessThan(0.84);
    expect(codes(plan.reasons)).toEqual(['aim-out-of-reach']);
    expect(plan.reasons[0]?.text).toContain(plan.survey.boundBy.text);
    expect(plan.removal.median).toBeLessThanOrEqual(plan.survey.budget);
  });

  it('is hand where no pad lies flat', () => {
    const plan = planned(planOf(checkCar({ flatWidth: millimetres(60) })), 'a');
    expect(plan.verdict).toBe('hand');
    expect(plan.steps.every(({ combination }) => combination.machine.id === 'hand')).toBe(true);
    expect(codes(plan.reasons)).toEqual(['by-hand', 'shop-too-mild']);
  });

  // Its smallest point reads 108: .45 µm over the floor, of which 1 in 2.48 may go.
  const nearFloor = { terms: { totalFloor: micrometres(107.55) } };

  it('is hand where even the mildest machine step takes too much', () => {
    const { survey } = amongSound(fiveAround('tested', 112), nearFloor);
    const { budget } = planned(planOf(survey), 'tested').survey;
    expect(budget).toBeGreaterThan(0.08);
    expect(budget).toBeLessThan(0.28);
    const hand = planned(planOf(survey, { defectsOf: () => [defect('swirl-marks', 1)] }), 'tested');
    expect(hand.verdict).toBe('hand');
  });

  it('is leave where what may go would not be worth the film', () => {
    const { survey } = amongSound(fiveAround('tested', 112), nearFloor);
    const plan = planned(planOf(survey, { defectsOf: () => [defect('swirl-marks', 5)] }), 'tested');
    expect(plan.verdict).toBe('leave');
    expect(codes(plan.reasons)).toEqual(['not-worth-it']);
  });

  it('is leave where the mildest steps of the shop take more than may go', () => {
    const { survey } = amongSound(fiveAround('tested', 112), nearFloor);
    const plan = planned(planOf(survey, { model: shopWith('da') }), 'tested');
    expect(plan.verdict).toBe('leave');
    expect(codes(plan.reasons)).toEqual(['nothing-fits']);
  });

  it.each([
    ['matte', { finish: 'matte' }, 'limit-finish'],
    ['covered', { covered: true }, 'limit-covered'],
    ['freshly painted', { paintedDaysAgo: 30 }, 'limit-fresh-paint'],
  ] as const)('is leave on a panel that is %s, with that as the reason', (_, facts, code) => {
    const { survey } = amongSound(fiveAround('tested', 112), { facts });
    const plan = planned(planOf(survey), 'tested');
    expect(plan.verdict).toBe('leave');
    expect(plan.steps).toEqual([]);
    expect(codes(plan.reasons)).toEqual([code]);
  });

  it('is leave on refinished and unread panels, and says how little is known of them', () => {
    const refinished = planned(planOf(amongSound(fiveAround('tested', 260)).survey), 'tested');
    expect([refinished.verdict, ...codes(refinished.reasons)]).toEqual([
      'leave',
      'limit-test-spot',
    ]);
    const unread = planned(planOf(amongSound([]).survey), 'tested');
    expect([unread.verdict, ...codes(unread.reasons)]).toEqual(['leave', 'limit-no-data']);
    expect([unread.risk, unread.riskIfThin, unread.already]).toEqual([null, null, null]);
  });

  it('is refinish on clear coat failure, declared or recorded, whatever the film', () => {
    const declared = amongSound(fiveAround('tested', 112), { facts: { clearCoatFailure: true } });
    const refinish = planned(planOf(declared.survey), 'tested');
    expect(refinish).toMatchObject({ verdict: 'refinish', steps: [] });
    expect(refinish.reasons.map(({ text }) => text)).toEqual([
      'clear coat failure: no polishing, refinish',
    ]);
    const { survey } = amongSound(fiveAround('tested', 112));
    const recorded = planOf(survey, { defectsOf: () => [defect('clear-coat-failure', 2)] });
    expect(planned(recorded, 'tested').verdict).toBe('refinish');
    const none = planOf(survey, {
      defectsOf: () => [defect('clear-coat-failure', 0), defect('swirl-marks', 2)],
    });
    expect(planned(none, 'tested').verdict).toBe('polish');
  });

  it('is leave where there is nothing to correct', () => {
    const plan = planned(planOf(checkCar(), { defectsOf: () => [defect('swirl-marks', 0)] }), 'a');
    expect([plan.verdict, ...codes(plan.reasons)]).toEqual(['leave', 'nothing-to-correct']);
    expect(plan.reasons[0]?.text).toBe('no general defect to correct');
    expect(plan.risk).toBe(plan.already);
  });
});

describe('steps on a narrow panel', () => {
  it('use the small pad where a full-size one does not lie flat', () => {
    const plan = planned(planOf(checkCar({ flatWidth: millimetres(90) })), 'a');
    expect(plan.verdict).toBe('polish');
    expect(new Set(plan.steps.map(({ combination }) => combination.machine.id))).toEqual(
      new Set(['da-small']),
    );
  });

  it('are done by hand in a shop without a small machine', () => {
    const survey = checkCar({ flatWidth: millimetres(90) });
    expect(planned(planOf(survey, { model: shopWith('da', 'hand') }), 'a').verdict).toBe('hand');
  });
});

describe('defects', () => {
  it('that lie deepest among the general ones decide', () => {
    const survey = checkCar();
    const mixed = planOf(survey, {
      defectsOf: () => [defect('holograms', 3), defect('swirl-marks', 3)],
    });
    expect(stepsOf(planned(mixed, 'a'))).toEqual(stepsOf(planned(planOf(survey), 'a')));
  });

  it('that are deep and local are named and never chased over the panel', () => {
    const plan = planned(
      planOf(checkCar(), {
        defectsOf: () => [defect('swirl-marks', 2), defect('bird-etching', 5)],
      }),
      'a',
    );
    const alone = planned(planOf(checkCar(), { defectsOf: () => [defect('swirl-marks', 2)] }), 'a');
    expect(stepsOf(plan)).toEqual(stepsOf(alone));
    expect(codes(plan.reasons)).toEqual(['local-defect']);
    expect(plan.reasons[0]?.text).toContain('bird etching');
  });

  it('that are no polishing matter are said to be so, and those of grade 0 not at all', () => {
    const plan = planned(
      planOf(checkCar(), {
        defectsOf: () => [
          defect('swirl-marks', 2),
          defect('orange-peel', 3),
          defect('bird-etching', 0),
        ],
      }),
      'a',
    );
    expect(codes(plan.reasons)).toEqual(['not-polishing']);
  });
});

describe('the haze that may be left', () => {
  it('is none for the aim full, dark colours and soft paint, else grade 1', () => {
    const allowed = (shop: object, job: object = {}) =>
      resolveSettings(layersOf({ shop, job })).hazeAllowed;
    expect(allowed({})).toBe(1);
    expect(allowed({ aim: 'enhance' })).toBe(1);
    expect(allowed({ aim: 'full' })).toBe(0);
    expect(allowed({}, { colour_depth: 'dark' })).toBe(0);
    expect(allowed({}, { colour_depth: 'light' })).toBe(1);
    expect(allowed({}, { hardness: 'soft' })).toBe(0);
    expect(allowed({}, { hardness: 'hard' })).toBe(1);
  });

  it('of none ends every plan with a finishing step that leaves a mirror', () => {
    const survey = checkCar();
    for (const grade of [1, 2, 3, 4]) {
      const plan = planned(
        planOf(survey, { hazeAllowed: 0, defectsOf: () => [defect('swirl-marks', grade)] }),
        'a',
      );
      expect(isWorked(plan)).toBe(true);
      expect(plan.steps.at(-1)?.combination.haze).toBe(0);
    }
  });
});

describe('declared hardness', () => {
  it('changes what a set takes: 1.5 times on soft paint, .65 on hard', () => {
    // Medium pad with medium product by dual action takes .8965 µm (7.8e-12 · 2772.8 · 3.2987 · 12.566).
    const perUnit = (hardness: 'soft' | 'hard' | 'medium' | 'unknown'): number => {
      const paint = paintKnowledge([], hardness, correctionModel);
      const rate = planned(planOf(checkCar(), { paintOf: () => paint }), 'a').steps[0]?.combination;
      if (rate === undefined) throw new Error('the panel is worked');
      expect(rate.machine.id).toBe('da');
      return rate.perSet / (rate.pad.factor * rate.product.factor);
    };
    expect(perUnit('medium')).toBeCloseTo(0.8965, 4);
    expect(perUnit('unknown')).toBeCloseTo(0.8965, 4);
    expect(perUnit('soft')).toBeCloseTo(1.5 * 0.8965, 3);
    expect(perUnit('hard')).toBeCloseTo(0.65 * 0.8965, 3);
  });
});

describe('cautions of a plan', () => {
  it('name edges read apart, low points, colour on the pad and the rotary’s heat', () => {
    const { survey } = amongSound(
      [...onFace('tested', 112, 113, 90, 111, 112), reading('tested', 'e1', 85, { place: 'edge' })],
      { facts: { finish: 'single-stage-solid' } },
    );
    const plan = planned(planOf(survey), 'tested');
    expect(codes(plan.cautions)).toEqual(['edges-read', 'low-points', 'colour-on-pad']);
    expect(plan.cautions[1]?.text).toContain('low at 3');
  });

  it('say how to keep a rotary cool when one is used', () => {
    const thick = surveyOf({
      panels: [plainPanel('a')],
      readings: checkReadings,
      facts: { finish: 'single-stage-solid' },
    });
    const plan = planned(
      planOf(thick, { aim: 0.95, hazeAllowed: 1, defectsOf: () => [defect('swirl-marks', 5)] }),
      'a',
    );
    const rotary = plan.steps.some(({ combination }) => combination.machine.id === 'rotary');
    expect(codes(plan.cautions).includes('rotary-heat')).toBe(rotary);
  });
});

describe('the whole car', () => {
  it('expects as many panels under the floor as the risks of those worked add up to', () => {
    const { survey } = amongSound(fiveAround('tested', 260));
    const plan = planOf(survey);
    const worked = plan.panels.filter(isWorked);
    expect(worked).toHaveLength(4);
    const sum = worked.reduce((total, { risk }) => total + (risk ?? 0), 0);
    expect(plan.expectedPanelsBelowFloor).toBeCloseTo(sum, 12);
    expect(sum).toBeGreaterThan(0);
  });
});

describe('a panel in two zones', () => {
  const { survey } = amongSound(inTwoZones());
  const allowing = (thinner: number, thicker: number) =>
    planOf(survey, {
      model: shopWith('da'),
      allowanceAt: (part) => ({
        ...part,
        budget: micrometres(isZone(part) && part.zone === 'thicker' ? thicker : thinner),
      }),
    });

  it('shows the plan of the zone that allows least, whichever that is', () => {
    for (const [thinner, thicker] of [
      [1.2, 3],
      [3, 1.2],
    ] as const) {
      const shown = planned(allowing(thinner, thicker), 'tested');
      const zones = shown.zones.map(({ zone, survey: { budget } }) => [zone, budget]);
      expect(zones).toEqual([
        ['thinner', thinner],
        ['thicker', thicker],
      ]);
      const least = shown.zones.find((zone) => zone.survey.budget === 1.2);
      expect(shown.survey.budget).toBe(1.2);
      expect(shown.steps).toBe(least?.steps);
      expect(shown.steps).not.toEqual(shown.zones.find((zone) => zone !== least)?.steps);
    }
  });

  it('counts among the panels under the floor with the risks of both, and as no more than one', () => {
    const plan = allowing(3, 3);
    const risks = plan.panels.map(({ risk, zones }) =>
      zones.length === 0 ? (risk ?? 0) : zones.reduce((sum, zone) => sum + (zone.risk ?? 0), 0),
    );
    expect(plan.expectedPanelsBelowFloor).toBeCloseTo(
      risks.reduce((sum, risk) => sum + risk, 0),
      12,
    );
    expect(planned(plan, 'tested').zones.every(({ risk }) => (risk ?? 0) > 0)).toBe(true);
    const sure = planCorrection({
      panels: survey.panels.filter(({ zones }) => zones.length > 0),
      defectsOf: () => [defect('swirl-marks', 3)],
      aim: 0.85,
      hazeAllowed: 1,
      paintOf: () => untried,
      allowanceAt: (part) => ({
        ...part,
        budget: micrometres(4),
        topcoat:
          part.topcoat === null
            ? null
            : { ...part.topcoat, clear: { ...part.topcoat.clear, mean: micrometres(1) } },
      }),
      model: shopWith('da'),
      thinnerClear: micrometres(6),
      edgeWidth: millimetres(25),
    });
    expect(sure.panels).toHaveLength(1);
    expect(sure.expectedPanelsBelowFloor).toBe(1);
  });
});
