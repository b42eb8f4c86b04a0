import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres, millimetres } from '../../../src/base/units.ts';
import { expectedCorrection, medianDepth } from '../../../src/correction/defects.ts';
import { keepsFilm, keepsTechnique, spotWith } from '../../../src/correction/plan/local-spot.ts';
import type { PanelPlan } from '../../../src/correction/plan/plan.ts';
import { ladderOn } from '../../../src/correction/removal/removal-knowledge.ts';
import { setTime } from '../../../src/correction/removal/removal-rate.ts';
import type { PlaceWorked } from '../../../src/film/film-model.ts';
import { allowanceAt } from '../../../src/film/limits/allowance-at.ts';
import { allowanceOnPlace } from '../../../src/film/limits/allowance-on-place.ts';
import { clearRisk } from '../../../src/film/limits/removal-risk.ts';
import { isZone, type PanelSurvey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { evenly } from '../../evenly.ts';
import {
  amongSound,
  type CarOptions,
  fiveAround,
  inTwoZones,
  onFace,
  standardTerms,
  UNTRIED_LOG_SD,
} from '../../film/car-builder.ts';
import { inFull } from '../../in-full.ts';
import { defect, planned, planOf, shopWith, stepsOf, untried } from '../shop.ts';

const grounds = { terms: standardTerms, baseline: micrometres(112), model: filmModel };
const swirls = defect('swirl-marks', 2);

/** The panel under test, with limits found anew at every ln-SD. */
function plan(
  defects: readonly ReturnType<typeof defect>[],
  {
    readings = fiveAround('tested', 112),
    aim,
    machines = ['da', 'da-small', 'hand'],
    ...rest
  }: Partial<CarOptions> & {
    readonly machines?: readonly string[];
    readonly aim?: number;
    readonly panel?: Parameters<typeof amongSound>[1] extends { panel?: infer P } | undefined
      ? P
      : never;
  } = {},
): PanelPlan {
  const { survey } = amongSound(readings, rest);
  return planned(
    planOf(survey, {
      defectsOf: () => defects,
      ...(aim === undefined ? {} : { aim }),
      model: shopWith(...machines),
      allowanceAt: (part, logSd) => allowanceAt(part, logSd, grounds),
      allowanceOnPlace: (part, logSd) => allowanceOnPlace(part, logSd, grounds),
    }),
    'tested',
  );
}

const codes = ({ local }: PanelPlan): readonly (readonly string[])[] =>
  local.map(({ reasons }) => reasons.map(({ code }) => code));

describe('a named deep defect', () => {
  /** Of a panel with swirl marks and a scratch, beside the same without the scratch. */
  const scratched = () => {
    const withScratch = plan([swirls, defect('deep-scratches', 2)]);
    const [spot] = withScratch.local;
    if (spot === undefined) throw new Error('the scratch has an entry');
    return { withScratch, spot, panel: plan([swirls]) };
  };

  it('is worked as a spot by the smallest pad, in three sets at most, and never over the panel', () => {
    const { withScratch, spot, panel } = scratched();
    expect(spot.steps).toHaveLength(1);
    const [step] = spot.steps;
    expect(step?.combination.machine.id).toBe('da-small');
    expect(step?.sets).toBeLessThanOrEqual(3);
    expect(stepsOf(withScratch)).toEqual(stepsOf(panel));
    expect(withScratch.risk).toBe(panel.risk);
  });

  it('takes its machine time on a small section, .05 m² at the default', () => {
    const { spot } = scratched();
    const [step] = spot.steps;
    if (step === undefined) throw new Error('a spot has a step');
    const model = shopWith('da-small');
    const { machine } = step.combination;
    const area = 0.05 as Parameters<typeof setTime>[1];
    expect(step.machineTime).toBeCloseTo(step.sets * setTime(machine, area, model.removal), 12);
  });

  it('clears what the spot and the panel’s own steps take together', () => {
    const { spot, panel } = scratched();
    const together = {
      median: micrometres(spot.removal.median + panel.removal.median),
      logSd: UNTRIED_LOG_SD,
      withDepth: 0,
    };
    expect(spot.cleared).toBeCloseTo(expectedCorrection(together, 3, { mean: 0, sd: 0.5 }, 0.6), 9);
  });

  it('states the risk of its place, with the panel’s own steps spent there too', () => {
    const { withScratch, spot, panel } = scratched();
    const place = allowanceOnPlace(withScratch.survey, UNTRIED_LOG_SD, grounds);
    if (place.topcoat === null) throw new Error('the panel was read');
    const median = micrometres(spot.removal.median + panel.removal.median);
    const { clear, clearFloor } = place.topcoat;
    expect(spot.risk).toBeCloseTo(
      clearRisk(clear, clearFloor, { median, logSd: UNTRIED_LOG_SD }),
      9,
    );
    expect(spot.risk).toBeLessThanOrEqual(0.05);
    expect(median).toBeLessThanOrEqual(place.budget);
    expect(spot.place?.removal).toBeCloseTo(median, 12);
    expect(spot.place?.budget).toBeCloseTo(place.budget, 12);
  });

  it('says what comes of it, and what keeps it from more', () => {
    const { spot } = scratched();
    expect(spot.reasons[0]?.text).toMatch(
      /^deep scratches of grade 2: a spot clears \d+ % \(the panel’s own steps \d+ %\)$/,
    );
    const deeper = plan([swirls, defect('deep-scratches', 4)]);
    expect(codes(deeper)).toEqual([['local-spot', 'local-mildest', 'local-limit']]);
    const [spotThere] = deeper.local;
    const left = (spotThere?.place?.budget ?? 0) - (spotThere?.place?.removal ?? 0);
    expect(left).toBeGreaterThan(0.05);
    expect(spotThere?.reasons[2]?.text).toMatch(
      new RegExp(
        `^${left.toFixed(2)} µm more may go there, and whatever clears more takes more than that: `,
      ),
    );
  });

  it('says so where the aim alone keeps it from more, and how much it could clear', () => {
    const scratch = defect('deep-scratches', 2);
    const [enhanced, corrected] = [0.5, 0.85].map(
      (aim) => plan([swirls, scratch], { aim }).local[0],
    );
    const cleared = Math.round(100 * (enhanced?.cleared ?? 0));
    const told = enhanced?.reasons.find(({ code }) => code === 'local-aim')?.text;
    expect(told).toMatch(/^held to the aim of 50 %: a spot could clear up to \d+ % of such marks$/);
    expect(Number(/to (\d+) %/.exec(told ?? '')?.[1])).toBeGreaterThanOrEqual(cleared + 10);
    expect(enhanced?.cleared).toBeGreaterThanOrEqual(0.5);
    expect(corrected?.cleared).toBeGreaterThan(enhanced?.cleared ?? 1);
  });

  it('is left to the panel’s own steps where these clear as much as is aimed at', () => {
    const shallow = plan([swirls, defect('water-etching', 1, 0.3)]);
    expect(shallow.local[0]?.steps).toEqual([]);
    expect(shallow.local[0]?.cleared).toBeGreaterThan(0.84);
    expect(codes(shallow)).toEqual([['local-left']]);
    expect(shallow.local[0]?.reasons[0]?.text).toMatch(
      /no spot, the panel’s own steps clear \d+ %/,
    );
  });

  it('is left where all that a spot may take would clear under a tenth more of such marks', () => {
    const gouge = plan([swirls, defect('bird-etching', 5, 40)]);
    expect(gouge.local[0]).toMatchObject({ steps: [] });
    expect(gouge.local[0]?.cleared).toBeLessThan(0.1);
  });

  it('is left where a spot would spend nearly all the film of its place for little of the mark', () => {
    const at = (leastForPlace: number) => {
      const model = shopWith('da', 'da-small');
      const correction = { ...model.correction, leastForPlace };
      const { survey } = amongSound(fiveAround('tested', 112));
      return planned(
        planOf(survey, {
          defectsOf: () => [swirls, defect('bird-etching', 5, 12)],
          model: { ...model, correction },
          allowanceAt: (part, logSd) => allowanceAt(part, logSd, grounds),
          allowanceOnPlace: (part, logSd) => allowanceOnPlace(part, logSd, grounds),
        }),
        'tested',
      ).local[0];
    };
    const any = at(0);
    const { removal = Number.NaN, budget = Number.NaN } = any?.place ?? {};
    const none = at(1);
    const cleared = any?.cleared ?? Number.NaN;
    expect([any?.steps.length, cleared > 0.1, removal / budget > 0.5]).toEqual([1, true, true]);
    // Just worth it, and just not: by the share of the film that it takes.
    const line = (cleared * budget) / removal;
    expect(at(line * (1 - 1e-9))?.steps).toEqual(any?.steps);
    expect(at(line * (1 + 1e-9))?.steps).not.toEqual(any?.steps);
    expect(none?.steps).toEqual([]);
    expect(none?.reasons[0]?.text).toMatch(/ that may go there: not worth its film$/);
  });

  it('is left where nothing may go, on repaint that nobody tried and on film that was not read', () => {
    const scratch = [swirls, defect('deep-scratches', 3)];
    for (const readings of [onFace('tested', 251, 249, 262, 255, 248), []]) {
      const left = plan(scratch, { readings });
      expect(left.local[0]).toMatchObject({ steps: [], cleared: 0, risk: null });
      expect(codes(left)).toEqual([['local-left', 'local-limit']]);
      expect(left.local[0]?.reasons.map(({ text }) => text)).toEqual([
        'deep scratches of grade 3: left, as nothing may go there',
        expect.stringMatching(/^nothing may go there: ./),
      ]);
      expect(left.local[0]?.reasons[1]?.value).toBe(0);
    }
  });

  it('is left where a visit on record took more than might go and the panel may lose nothing', () => {
    const over = (taken: number) => {
      const [mean, sd] = [micrometres(taken), micrometres(0.2)];
      const overruns = [{ date: '2025-11-20', mean, sd, allowed: micrometres(0.5), surely: true }];
      const facts = (id: string) => (id === 'tested' ? { recorded: { mean, sd, overruns } } : {});
      return plan([swirls, defect('deep-scratches', 3)], { factsOf: facts });
    };
    // Where something may go a spot may take it.
    expect(codes(over(0.6)).flat()).not.toContain('local-over-cut');
    const spent = over(12.7);
    expect(spent.survey.budget).toBe(0);
    expect(spent.local[0]).toMatchObject({ steps: [], cleared: 0 });
    expect(codes(spent)).toEqual([['local-over-cut']]);
  });

  it('is left where a spot of a visit on record took nobody read how much', () => {
    const [median, high] = [micrometres(4.17), micrometres(9.8)];
    const known = { defect: 'deep-scratches', point: 'deep scratches 1', median, high };
    const before = { date: '2026-11-24', ...known };
    const visited = (...places: readonly PlaceWorked[]) => {
      const recorded = { mean: micrometres(0), sd: micrometres(0), places };
      const factsOf = (id: string) => (id === 'tested' ? { recorded } : {});
      // Of whatever kind the mark is: nobody says that it does not lie there.
      return plan([swirls, defect('bird-etching', 3)], { factsOf, aim: 0.6 });
    };
    expect(visited().local[0]?.steps).toHaveLength(1);
    const again = visited(before);
    expect(again.local[0]).toMatchObject({ steps: [], cleared: 0 });
    expect(again.local[0]?.reasons.map(({ code, text }) => [code, text])).toEqual([
      [
        'local-place-unread',
        'bird etching of grade 3: left, as a spot on this panel on 2026-11-24 was to take 4.17 µm (up to 9.8 µm) more at its place, and nobody has read that since: read it first, as a point called “deep scratches 1”',
      ],
    ]);
    // The panel itself is worked as ever, and whoever works it is told to mind that place.
    expect(again.steps.length).toBeGreaterThan(0);
    expect(again.cautions.map(({ code }) => code)).toContain('place-on-record');
    expect(visited().cautions.map(({ code }) => code)).not.toContain('place-on-record');
    expect(visited({ ...before, date: null }).local[0]?.reasons[0]?.text).toContain(
      'as a spot on this panel was to take',
    );
    // Once somebody read it, a spot is held to what is left, and nothing is to be kept off.
    const read = visited({ ...before, taken: { mean: median, sd: micrometres(1) } });
    expect(read.local[0]?.steps).toHaveLength(1);
    expect(read.cautions.map(({ code }) => code)).toContain('place-read');
  });

  it('is left where the clear coat has failed', () => {
    const failed = plan([swirls, defect('deep-scratches', 3), defect('clear-coat-failure', 2)]);
    expect(failed.local[0]).toMatchObject({ steps: [], cleared: 0, risk: null, place: null });
    expect(failed.local[0]?.removal).toEqual({ median: 0, mean: 0, low: 0, high: 0 });
    expect(failed.local[0]?.reasons).toEqual([
      {
        code: 'local-left',
        text: 'deep scratches of grade 3: left, the clear coat has failed',
      },
    ]);
  });

  it('is worked without any work on the panel, where there is nothing else to correct', () => {
    const only = plan([defect('swirl-marks', 0), defect('deep-scratches', 1)]);
    expect(only.steps).toEqual([]);
    expect(only.local[0]?.steps).toHaveLength(1);
    // Nothing passes over it afterwards, so it must leave no haze of its own.
    expect(only.local[0]?.steps[0]?.combination.haze).toBeLessThanOrEqual(1);
    // Three sets of the strongest would still keep the film: what holds it back is their haze.
    const roomy = plan([defect('swirl-marks', 0), defect('deep-scratches', 1)], {
      readings: fiveAround('tested', 132),
      facts: { taken: micrometres(0) },
    });
    expect(codes(roomy)).toEqual([['local-spot', 'local-mildest', 'local-haze']]);
    expect(roomy.local[0]?.reasons[2]?.text).toBe(
      'stronger sets would leave haze that nothing else clears there',
    );
  });

  it('is rubbed by hand in a shop whose pads are all too wide there', () => {
    const tight = plan([swirls, defect('deep-scratches', 1)], {
      machines: ['da', 'hand'],
      panel: { flatWidth: 90 as never },
    });
    const used = tight.local.map(({ steps }) => steps.map((one) => one.combination.machine.id));
    expect(used).toEqual([['hand']]);
  });

  it('is worked in no more sets than it takes, where more would hardly take more film', () => {
    // By hand a set takes less than the tenth of a micrometre by which ways are told apart.
    const faint = plan([defect('swirl-marks', 0), defect('deep-scratches', 1, 0.01)], {
      machines: ['hand'],
    });
    const [step] = faint.local[0]?.steps ?? [];
    expect(2 * (step?.combination.perSet ?? 1)).toBeLessThan(0.08);
    expect(step?.sets).toBe(1);
  });

  it('of grade 0 has no entry, and none of the general ones has', () => {
    expect(plan([swirls, defect('deep-scratches', 0)]).local).toEqual([]);
  });
});

describe('the pad of a spot', () => {
  const model = shopWith('rotary', 'da', 'da-small', 'hand');
  const kinds = ['deep-scratches', 'bird-etching', 'water-etching'] as const;
  const request = {
    aim: 0.85,
    hazeAllowed: 1,
    model,
    paintOf: () => untried,
    allowanceAt: (part: PanelSurvey, logSd: number) => allowanceAt(part, logSd, grounds),
    allowanceOnPlace: (part: PanelSurvey, logSd: number) => allowanceOnPlace(part, logSd, grounds),
    thinnerClear: micrometres(6),
    edgeWidth: millimetres(25),
  };

  it('is of the mildest combination that clears as much in as many sets, whatever is aimed at', () => {
    const smallest = ladderOn(untried, model).filter(({ machine }) => machine.id === 'da-small');
    let spots = 0;
    const [depths, grades] = [fc.constantFrom(...kinds), fc.integer({ min: 1, max: 5 })];
    fc.assert(
      fc.property(evenly(102, 135), evenly(0.5, 0.97), depths, grades, (film, aim, kind, grade) => {
        const { survey } = amongSound(fiveAround('tested', film));
        const deep = defect(kind, grade);
        const defectsOf = () => [swirls, deep];
        const panel = planned(planOf(survey, { ...request, aim, defectsOf }), 'tested');
        const [spot] = panel.local;
        const [step] = spot?.steps ?? [];
        if (spot === undefined || step === undefined) return;
        spots += 1;
        const others = smallest
          .filter(({ rung }) => rung < step.combination.rung)
          .flatMap((combination) => [1, 2, 3].map((sets) => ({ combination, sets })))
          .map((one) =>
            spotWith([one], medianDepth(deep), [panel], {
              ...request,
              aim,
              defectsOf,
              panels: survey.panels,
            }),
          );
        for (const other of others.filter((one) => keepsFilm(one) && keepsTechnique(one))) {
          expect(other.correction).toBeLessThan(spot.cleared);
        }
      }),
      { numRuns: 60 },
    );
    if (inFull) expect(spots).toBeGreaterThan(20);
  });

  it('may be harsher for the same share at a lower aim, as the panel’s own steps take less: that is said', () => {
    const at = (aim: number) =>
      planned(
        planOf(amongSound(fiveAround('tested', 106)).survey, {
          ...request,
          aim,
          defectsOf: () => [swirls, defect('deep-scratches', 3)],
        }),
        'tested',
      );
    const [lower, higher] = [at(0.6), at(0.85)];
    expect(lower.removal.median).toBeLessThan(higher.removal.median);
    const rungs = [lower, higher].map(({ local }) => local[0]?.steps[0]?.combination.rung ?? 0);
    expect(rungs[0]).toBeGreaterThan(rungs[1] ?? 0);
    for (const { local } of [lower, higher]) {
      expect(local[0]?.reasons[1]).toMatchObject({
        code: 'local-mildest',
        text: 'the mildest combination of the smallest pad that clears as much in up to 3 sets: the less the panel’s own steps take there, the more is left to the spot',
      });
    }
  });
});

describe('what may go at the place of a spot', () => {
  const lessOf = (logSdOfOwn: number) => {
    const own = (id: string) => !id.startsWith('da-small');
    const paint = {
      ...untried,
      removal: {
        ...untried.removal,
        of: (id: string) => ({ ...untried.removal.of(id), ...(own(id) ? { sd: logSdOfOwn } : {}) }),
      },
    };
    const { survey } = amongSound(fiveAround('tested', 112));
    const panel = planned(
      planOf(survey, {
        defectsOf: () => [swirls, defect('deep-scratches', 3)],
        aim: 0.6,
        model: shopWith('da', 'da-small'),
        paintOf: () => paint,
        allowanceAt: (part, logSd) => allowanceAt(part, logSd, grounds),
        allowanceOnPlace: (part, logSd) => allowanceOnPlace(part, logSd, grounds),
      }),
      'tested',
    );
    return { budget: panel.survey.budget, spot: panel.local[0] };
  };

  it('is less than on the panel where the panel’s steps are known better than the spot’s, and then it is said why', () => {
    const { budget, spot } = lessOf(0.1);
    expect(spot?.steps).toHaveLength(1);
    expect(spot?.place?.budget).toBeLessThan(budget);
    const told = spot?.reasons.find(({ code }) => code === 'local-less');
    expect(told?.text).toBe(
      `that is less than the ${budget.toFixed(2)} µm that may go by the panel’s own steps, as what a spot takes is foretold less well`,
    );
  });

  it('is more where both are known alike, and nothing is said', () => {
    const { budget, spot } = lessOf(untried.removal.of('da/foam-medium/medium').sd);
    expect(spot?.place?.budget).toBeGreaterThan(budget);
    expect(spot?.reasons.map(({ code }) => code)).not.toContain('local-less');
  });

  it('may be less where little is risked and the clear was read, as a single place may be thin', () => {
    const clear = { mean: micrometres(44), sd: micrometres(0.5), of: 'panel' as const };
    const { survey } = amongSound(fiveAround('tested', 120), {
      facts: { taken: micrometres(0), clear },
    });
    const strict = { ...grounds, terms: { ...standardTerms, risk: 0.001 } };
    const panel = planned(
      planOf(survey, {
        defectsOf: () => [defect('swirl-marks', 1), defect('deep-scratches', 1)],
        aim: 0.5,
        model: shopWith('da', 'da-small'),
        allowanceAt: (part, logSd) => allowanceAt(part, logSd, strict),
        allowanceOnPlace: (part, logSd) => allowanceOnPlace(part, logSd, strict),
      }),
      'tested',
    );
    const [spot] = panel.local;
    expect(spot?.place?.budget).toBeLessThan(panel.survey.budget);
    expect(spot?.reasons.map(({ text }) => text).join()).toMatch(
      /as a single place may be thinner than the panel’s thinnest part is taken to be/,
    );
  });
});

describe('a spot on a panel in two zones', () => {
  const readings = inTwoZones();

  it('stands with the panel, and keeps the limits of both zones', () => {
    const zoned = plan([swirls, defect('deep-scratches', 2)], { readings });
    expect(zoned.zones).toHaveLength(2);
    expect(zoned.local).toHaveLength(1);
    for (const zone of zoned.zones) expect(zone.local).toEqual([]);
    const extra = zoned.local[0]?.removal.median ?? 0;
    expect(extra).toBeGreaterThan(0);
    for (const zone of zoned.zones) {
      const { budget } = allowanceOnPlace(zone.survey, UNTRIED_LOG_SD, grounds);
      expect(extra + zone.removal.median).toBeLessThanOrEqual(budget + 1e-9);
    }
  });

  it('is told of the place on which least is left over, whichever zone that is in', () => {
    const { survey } = amongSound(readings);
    const placeBy = (budgets: readonly [thinner: number, thicker: number]) => {
      const allowing = planOf(survey, {
        defectsOf: () => [swirls, defect('deep-scratches', 2)],
        model: shopWith('da', 'da-small'),
        allowanceAt: (part, logSd) => allowanceAt(part, logSd, grounds),
        allowanceOnPlace: (part, logSd) => {
          const budget = micrometres(budgets[isZone(part) && part.zone === 'thinner' ? 0 : 1]);
          return { ...allowanceOnPlace(part, logSd, grounds), budget };
        },
      });
      const { local, zones } = planned(allowing, 'tested');
      const [spot] = local;
      const [thinner = Number.NaN, thicker] = zones.map(({ removal }) => removal.median);
      // Swirls alone are worked alike in both.
      expect(thinner).toBe(thicker);
      expect(spot?.place?.removal).toBeCloseTo(thinner + (spot?.removal.median ?? 0), 12);
      return spot?.place?.budget;
    };
    expect(placeBy([4, 5])).toBe(4);
    expect(placeBy([5.5, 4.5])).toBe(4.5);
  });
});
