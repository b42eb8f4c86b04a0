import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres, millimetres, newtons, squareMetres } from '../../src/base/units.ts';
import { expectedCorrection } from '../../src/correction/defects.ts';
import { type PanelPlan, workedParts } from '../../src/correction/plan/plan.ts';
import { planCorrection } from '../../src/correction/plan/plan-correction.ts';
import type { PlanRequest } from '../../src/correction/plan/plan-request.ts';
import type { CorrectionModel } from '../../src/correction/removal/catalogue.ts';
import { stepsId } from '../../src/correction/removal/step.ts';
import type { PanelSurvey } from '../../src/film/survey.ts';
import { correctionModel } from '../../src/formats/models.ts';
import { fiveAround, panelOf, plainPanel, surveyOf, UNTRIED_LOG_SD } from '../film/car-builder.ts';
import { inFull } from '../in-full.ts';
import { type Move, nameOf, type Tool, takes } from './brute-force.ts';
import {
  bestCount,
  countOf,
  type OracleCar,
  type OraclePart,
  type PartPlan,
  partByHand,
  spotByHand,
} from './car-oracle.ts';
import { aSmallShop, between, toolsOf } from './random-shops.ts';
import { defect, untried } from './shop.ts';

const sound = panelOf(
  surveyOf({ panels: [plainPanel('sound')], readings: fiveAround('sound', 112) }),
  'sound',
);

const aPart = fc.record({ budget: between(0, 7), roomier: between(1, 2), area: between(0.2, 2) });

const aPanel = fc.record({
  parts: fc.array(aPart, { minLength: 1, maxLength: 2 }),
  flatWidth: fc.constantFrom(60, 80, 120, 400),
  grade: fc.constantFrom(1, 2, 2, 3, 4),
  scratch: fc.constantFrom(null, null, 1, 3, 5),
});

const aCar = fc.record({
  shop: aSmallShop,
  panels: fc.array(aPanel, { minLength: 1, maxLength: 4 }),
  aim: fc.constantFrom(0.6, 0.85, 0.95),
  hazeAllowed: fc.constantFrom(0, 1, 1, 4),
});
type Car = typeof aCar extends fc.Arbitrary<infer T> ? T : never;
type CarPanel = Car['panels'][number];

/** A panel's survey with budgets set by hand; two parts are its zones. */
function surveyed({ parts, flatWidth }: CarPanel, index: number): PanelSurvey {
  const part = ({ budget, area }: CarPanel['parts'][number]): PanelSurvey => ({
    ...sound,
    panel: plainPanel(`p${index}`, {
      flatWidth: millimetres(flatWidth),
      area: squareMetres(area),
    }),
    budget: micrometres(budget),
  });
  const [first, second] = parts;
  if (first === undefined) throw new Error('a panel has a part');
  if (second === undefined) return part(first);
  const zones = [
    { ...part(first), zone: 'thinner' as const },
    { ...part(second), zone: 'thicker' as const },
  ];
  return { ...part(first), zones };
}

function requestOf({ shop, panels, aim, hazeAllowed }: Car): PlanRequest {
  const surveys = panels.map(surveyed);
  const roomier = new Map(
    surveys.flatMap((survey, i) =>
      (survey.zones.length === 0 ? [survey] : survey.zones).map(
        (part, k) => [part.budget, panels[i]?.parts[k]?.roomier ?? 1] as const,
      ),
    ),
  );
  return {
    panels: surveys,
    defectsOf: (id) => {
      const panel = panels[Number(id.slice(1))];
      if (panel === undefined) return [];
      const general = defect('swirl-marks', panel.grade);
      return panel.scratch === null
        ? [general]
        : [general, defect('deep-scratches', panel.scratch)];
    },
    aim,
    hazeAllowed,
    paintOf: () => untried,
    allowanceAt: (part) => part,
    allowanceOnPlace: (part) => ({
      ...part,
      budget: micrometres(part.budget * (roomier.get(part.budget) ?? 1)),
    }),
    model: shop,
    thinnerClear: micrometres(6),
    edgeWidth: millimetres(25),
  };
}

const oracleCar = ({ shop, aim, hazeAllowed }: Car): OracleCar => ({
  tools: toolsOf(shop),
  aim,
  hazeAllowed,
  correctionOf: (median, depth) =>
    expectedCorrection(
      { median: micrometres(median), logSd: UNTRIED_LOG_SD, withDepth: 0 },
      depth,
      { mean: 0, sd: correctionModel.correction.depthScaleLogSd },
      correctionModel.correction.depthLogSd,
    ),
  meanOf: (median) => median * Math.exp(UNTRIED_LOG_SD ** 2 / 2),
});

/** Medians of the grades used: swirl marks .4 .7 1.1 1.7; deep scratches 2, 4.5 and 11 at 1, 3, 5. */
const SWIRLS: readonly number[] = [0, 0.4, 0.7, 1.1, 1.7];
const SCRATCHES: readonly number[] = [0, 2, 3, 4.5, 7, 11];

const oracleParts = (panel: CarPanel): readonly OraclePart[] =>
  panel.parts.map(({ budget, roomier, area }) => ({
    budget,
    placeBudget: budget * roomier,
    flatWidth: panel.flatWidth,
    area,
  }));

const movesOf = ({ steps }: Pick<PanelPlan, 'steps'>, tools: readonly Tool[]): readonly Move[] =>
  steps.map(({ combination, sets }) => {
    const tool = tools.find(({ id }) => id === combination.id);
    if (tool === undefined) throw new Error(`no tool ${combination.id}`);
    return { tool, sets };
  });

const RUNS = { numRuns: 2000, seed: 60_001 };
const fewer = { ...RUNS, numRuns: 300 };

describe('a plan for a whole car', () => {
  it('is what listing everything finds: each part among its equals, fewest combinations, every spot', () => {
    const seen = { worked: 0, saved: 0, spots: 0, zoned: 0 };
    fc.assert(
      fc.property(aCar, (car) => {
        const plan = planCorrection(requestOf(car));
        const oracle = oracleCar(car);
        const { tools } = oracle;
        const chosen: (readonly Move[])[] = [];
        const options: PartPlan[] = [];
        const areas: number[] = [];
        plan.panels.forEach((panelPlan, i) => {
          const panel = car.panels[i];
          if (panel === undefined) throw new Error('a plan for each panel');
          const plans = panelPlan.zones.length === 0 ? [panelPlan] : panelPlan.zones;
          if (plans.length > 1) seen.zoned += 1;
          const parts = oracleParts(panel);
          plans.forEach((one, k) => {
            const part = parts[k];
            if (part === undefined) throw new Error('a plan for each part');
            const expected = partByHand(part, SWIRLS[panel.grade] ?? 0, oracle);
            const found = movesOf(one, tools);
            if (expected === undefined) {
              expect(found).toEqual([]);
              return;
            }
            expect(expected.options.map(nameOf)).toContain(nameOf(found));
            seen.worked += 1;
            chosen.push(found);
            options.push(expected);
            areas.push(part.area);
          });
          if (panel.scratch === null) {
            expect(panelPlan.local).toEqual([]);
            return;
          }
          const depth = SCRATCHES[panel.scratch] ?? 0;
          const worked = plans.map((one) => movesOf(one, tools));
          const spot = spotByHand(parts, worked, depth, oracle);
          expect(panelPlan.local.map((one) => nameOf(movesOf(one, tools)))).toEqual([
            nameOf(spot.extra),
          ]);
          expect(panelPlan.local[0]?.cleared).toBeCloseTo(spot.cleared, 9);
          if (spot.extra.length > 0) seen.spots += 1;
        });
        const alone = countOf(
          options.map(({ own }) => own),
          areas,
        );
        const found = countOf(chosen, areas);
        const best = bestCount(options, areas);
        if (best === undefined) return;
        expect(found.combinations).toBe(best.combinations);
        if (best.combinations < alone.combinations) {
          seen.saved += 1;
          expect(found.minutes).toBe(best.minutes);
        } else {
          expect(chosen.map(nameOf)).toEqual(options.map(({ own }) => nameOf(own)));
        }
      }),
      RUNS,
    );
    if (!inFull) return;
    // The comparison means something only where there was something to compare.
    expect(seen.worked).toBeGreaterThan(500);
    expect(seen.zoned).toBeGreaterThan(300);
    expect(seen.spots).toBeGreaterThan(100);
    expect(seen.saved).toBeGreaterThan(0);
  });

  it('breaks no limit of film, on any part or at any spot', () => {
    let counted = 0;
    fc.assert(
      fc.property(aCar, (car) => {
        const plan = planCorrection(requestOf(car));
        const { tools } = oracleCar(car);
        plan.panels.forEach((panelPlan, i) => {
          const panel = car.panels[i];
          const plans = panelPlan.zones.length === 0 ? [panelPlan] : panelPlan.zones;
          plans.forEach((one, k) => {
            const { budget = 0, roomier = 0 } = panel?.parts[k] ?? {};
            const moves = movesOf(one, tools);
            if (moves.length > 0) {
              counted += 1;
              expect(takes(moves)).toBeLessThanOrEqual(budget + 1e-9);
            }
            for (const spot of panelPlan.local.filter(({ steps }) => steps.length > 0)) {
              const all = [...movesOf(spot, tools), ...moves];
              expect(takes(all)).toBeLessThanOrEqual(budget * roomier + 1e-9);
            }
          });
        });
      }),
      fewer,
    );
    if (inFull) expect(counted).toBeGreaterThan(80);
  });

  it('does not depend on the order of the panels', () => {
    fc.assert(
      fc.property(aCar, (car) => {
        const request = requestOf(car);
        const said = (panels: readonly PanelSurvey[]) =>
          planCorrection({ ...request, panels })
            .panels.map(({ survey, steps, local, zones }) => [
              survey.panel.id,
              stepsId(steps),
              local.map((one) => stepsId(one.steps)),
              zones.map((zone) => stepsId(zone.steps)),
            ])
            .sort(([a], [b]) => (`${a}` < `${b}` ? -1 : 1));
        expect(said([...request.panels].reverse())).toEqual(said(request.panels));
      }),
      fewer,
    );
  });

  it('needs no more combinations than its panels planned one by one, and clears as much on each', () => {
    fc.assert(
      fc.property(aCar, (car) => {
        const request = requestOf(car);
        const together = planCorrection(request);
        const apart = request.panels.flatMap(
          (panel) => planCorrection({ ...request, panels: [panel] }).panels,
        );
        const combinations = (panels: readonly PanelPlan[]): number =>
          new Set(
            workedParts({ panels }).flatMap(({ steps }) =>
              steps.map(({ combination }) => combination.id),
            ),
          ).size;
        expect(combinations(together.panels)).toBeLessThanOrEqual(combinations(apart));
        const [one, other] = [workedParts(together), workedParts({ panels: apart })];
        one.forEach((part, i) => {
          const alone = other[i];
          expect(part.verdict).toBe(alone?.verdict);
          expect(part.expected).toBeGreaterThanOrEqual(
            Math.min(car.aim, alone?.expected ?? 1) - 0.02 - 1e-9,
          );
          expect(part.removal.mean).toBeLessThan((alone?.removal.mean ?? 0) + 0.1 + 1e-9);
        });
      }),
      fewer,
    );
  });
});

/** How far a plan falls short of its aim, on the part of a car that has only one. */
const shortOf = (car: Car, change: (request: PlanRequest) => PlanRequest = (same) => same) =>
  planCorrection(change(requestOf(car))).panels.flatMap((panel) =>
    (panel.zones.length === 0 ? [panel] : panel.zones).map(({ steps, expected, aimed }) =>
      Math.max(0, aimed - (steps.length === 0 ? 0 : expected)),
    ),
  );

describe('with more to choose from, a car', () => {
  const noWorse = (more: (request: PlanRequest) => PlanRequest) =>
    fc.assert(
      fc.property(aCar, (car) => {
        const [before, after] = [shortOf(car), shortOf(car, more)];
        // A point apart counts as equal, on either side; under a tenth of the marks nothing is done.
        after.forEach((short, i) => {
          expect(short).toBeLessThanOrEqual((before[i] ?? 0) + 0.01 + 1e-9);
        });
      }),
      fewer,
    );

  it('falls no further short of its aim as more film may go', () => {
    noWorse((request) => ({
      ...request,
      allowanceAt: (part) => ({ ...part, budget: micrometres(part.budget + 1.5) }),
    }));
  });

  it('falls no further short of its aim with a product more', () => {
    const withMore = (model: CorrectionModel): CorrectionModel => ({
      ...model,
      products: [
        ...model.products,
        {
          id: 'more',
          name: 'more',
          factor: 0.8,
          haze: 0,
          stages: ['cut', 'refine', 'finish'],
        },
      ],
    });
    noWorse((request) => ({ ...request, model: withMore(request.model) }));
  });

  // A larger pad keeps small ones off where it lies flat: that is technique, not choice.
  it('falls no further short of its aim with a machine more, of a pad that is there already', () => {
    const withMore = (model: CorrectionModel): CorrectionModel => ({
      ...model,
      machines: [
        ...model.machines,
        ...model.machines
          .slice(0, 1)
          .map((machine) => ({ ...machine, id: 'more', name: 'more', force: newtons(30) })),
      ],
    });
    noWorse((request) => ({ ...request, model: withMore(request.model) }));
  });

  it('falls no further short of its aim as more haze may be left', () => {
    noWorse((request) => ({ ...request, hazeAllowed: request.hazeAllowed + 1 }));
  });
});
