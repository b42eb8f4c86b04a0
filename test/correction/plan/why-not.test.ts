import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupBy } from '../../../src/base/group-by.ts';
import { micrometres, millimetres, squareMetres } from '../../../src/base/units.ts';
import { expectedCorrection } from '../../../src/correction/defects.ts';
import type { PanelPlan } from '../../../src/correction/plan/plan.ts';
import { planCorrection } from '../../../src/correction/plan/plan-correction.ts';
import type { PlanRequest } from '../../../src/correction/plan/plan-request.ts';
import { MOST_OF_A_REASON, type PartWhy, whyNot } from '../../../src/correction/plan/why-not.ts';
import type { CorrectionModel } from '../../../src/correction/removal/catalogue.ts';
import type { Step } from '../../../src/correction/removal/step.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { correctionModel } from '../../../src/formats/models.ts';
import {
  byItself,
  fiveAround,
  panelOf,
  plainPanel,
  surveyOf,
  UNTRIED_LOG_SD,
} from '../../film/car-builder.ts';
import { inFull } from '../../in-full.ts';
import {
  broken,
  equalsByHand,
  inOrderOfCare,
  type Move,
  nameOf,
  type Rules,
  sequencesByHand,
  type Tool,
  takes,
} from '../brute-force.ts';
import { aSmallShop, between, toolsOf } from '../random-shops.ts';
import { defect, shopWith, untried } from '../shop.ts';

const sound = panelOf(
  surveyOf({
    panels: [plainPanel('sound')],
    readings: fiveAround('sound', 112),
    model: byItself,
  }),
  'sound',
);

type Case = {
  readonly budget: number;
  readonly area: number;
  readonly flatWidth: number;
  readonly aim: number;
  readonly hazeAllowed: number;
  readonly grade: number;
};
const usual: Case = {
  budget: 4,
  area: 1,
  flatWidth: 400,
  aim: 0.85,
  hazeAllowed: 1,
  grade: 3,
};

const partOf = ({ budget, area, flatWidth }: Case, id = 'p'): PanelSurvey => ({
  ...sound,
  panel: plainPanel(id, { area: squareMetres(area), flatWidth: millimetres(flatWidth) }),
  budget: micrometres(budget),
});

const requestOf = (
  parts: readonly PanelSurvey[],
  { aim, hazeAllowed, grade }: Case,
  model = correctionModel,
): PlanRequest => ({
  panels: parts,
  defectsOf: () => [defect('swirl-marks', grade)],
  aim,
  hazeAllowed,
  paintOf: () => untried,
  allowanceAt: (part) => part,
  model,
  thinnerClear: micrometres(6),
  edgeWidth: millimetres(25),
});

/** The only panel of a car taken apart. */
function alone(rest: Partial<Case> = {}, model = correctionModel): PartWhy {
  const one = { ...usual, ...rest };
  const part = partOf(one);
  const request = requestOf([part], one, model);
  const car = planCorrection(request);
  const [plan] = car.panels;
  if (plan === undefined) throw new Error('the panel is planned');
  return whyNot(part, plan, car, request);
}

const machines = shopWith('rotary', 'da', 'da-small');
const fewPads: CorrectionModel = {
  ...machines,
  pads: machines.pads.filter(({ id }) => ['foam-soft', 'foam-medium', 'microfibre'].includes(id)),
};

/** In a shop of few things: each test looks at all of them anew. */
const usualWhy = () => alone({}, fewPads);

const textOf = (steps: readonly Step[]): string =>
  steps.map(({ combination, sets }) => `${combination.id}×${sets}`).join(' + ');
const said = ({ rejected }: PartWhy, code: string): readonly string[] =>
  rejected
    .filter(({ reason }) => reason.code === code)
    .map(({ kind, steps, reason }) => `${kind} ${textOf(steps)}: ${reason.text}`);

describe('why nothing else is planned', () => {
  it('is that the pad does not lie flat, where it is wider than the panel', () => {
    expect(said(alone({ flatWidth: 90 }), 'pad-lies-flat')).toContainEqual(
      expect.stringMatching(/da\/.*: a 150 mm pad does not lie flat on 90 mm$/),
    );
  });

  it('is that a small pad is for tight places, where a full-size one lies flat', () => {
    expect(said(usualWhy(), 'full-size-where-it-fits')).toContainEqual(
      expect.stringMatching(
        /da-small\/.*: a 75 mm pad is for tight places, 150 mm lies flat here$/,
      ),
    );
  });

  it('is that the last step would be by rotary, and that a step would not be milder', () => {
    expect(said(usualWhy(), 'last-step-not-rotary')).toContainEqual(
      expect.stringMatching(
        /rotary\/[^ ]*: the last step would be by rotary, which leaves holograms$/,
      ),
    );
    expect(said(usualWhy(), 'each-step-milder')).toHaveLength(3 * MOST_OF_A_REASON);
  });

  it('is the haze that would be left', () => {
    expect(said(alone({ hazeAllowed: 0 }, shopWith('da')), 'haze-cleared')).toContainEqual(
      expect.stringMatching(/: haze of grade 1 would be left, 0 is allowed$/),
    );
  });

  it('is the film it would take, with how much over what may go, and the limit that binds', () => {
    const over = alone({ budget: 3 }, shopWith('da')).rejected.filter(
      ({ reason }) => reason.code === 'within-budget',
    );
    expect(over.length).toBeGreaterThan(0);
    for (const { removal, reason, kind } of over) {
      expect(kind).not.toBe('milder');
      expect(reason.value).toBeCloseTo(removal - 3, 9);
      expect(reason.text).toMatch(
        removal - 3 < 0.02
          ? /^takes a hair over the 3\.00 µm that may go \(clear\)$/
          : /^takes 3\.\d\d µm, 3\.00 µm may go \(clear\)$/,
      );
    }
  });

  it('is the correction it would lack, in points', () => {
    const less = usualWhy().rejected.filter(({ reason }) => reason.code === 'clears-less');
    expect(less.map(({ kind }) => kind)).toContain('milder');
    for (const { expected, reason } of less) {
      expect(reason.value).toBeCloseTo(85 - 100 * (expected ?? 0), 9);
      expect(reason.text).toMatch(/points less than the 85\.0 % that can be had$/);
    }
  });

  it('is a harsher strongest step for no more correction: a fraction never buys one', () => {
    const harsher = said(usualWhy(), 'stronger-step');
    expect(harsher.length).toBeGreaterThan(0);
    expect(harsher.every((one) => one.startsWith('stronger') || one.startsWith('quicker'))).toBe(
      true,
    );
  });

  it('is more film for no more correction', () => {
    expect(said(usualWhy(), 'more-film')).toContainEqual(
      expect.stringMatching(/: clears as much and takes 0\.\d+ µm more$/),
    );
  });

  it('is no limit of film for what takes just as much as may go', () => {
    const of = ({ rejected }: PartWhy) =>
      rejected.find(({ reason }) => reason.code === 'more-film');
    const more = of(usualWhy());
    if (more === undefined) throw new Error('one takes more film');
    const again = alone({ budget: more.removal }, fewPads).rejected.filter(
      ({ steps }) => textOf(steps) === textOf(more.steps),
    );
    expect(again.map(({ reason }) => reason.code)).toContain('more-film');
    expect(again.map(({ reason }) => reason.code)).not.toContain('within-budget');
  });

  it('is told of what is quicker as well, in whole minutes on the panel', () => {
    const { rejected, plan } = usualWhy();
    const taken = Math.round(plan.steps.reduce((sum, { machineTime }) => sum + machineTime, 0));
    const quicker = rejected.filter(({ kind }) => kind === 'quicker');
    expect(quicker.length).toBeGreaterThan(0);
    for (const { minutes } of quicker) expect(minutes).toBeLessThan(taken);
  });

  it('is time, and where that is equal the name', () => {
    const { pads, ...rest } = shopWith('da');
    const da = { ...rest, pads: pads.slice(0, 2) };
    const twin = (id: string, arm: number) =>
      da.machines.map((one) => ({
        ...one,
        id,
        armSpeed: (one.armSpeed * arm) as typeof one.armSpeed,
      }));
    // The slower arm takes more in a set: as much with half the force.
    const [slow] = twin('slow', 0.5);
    const [same] = twin('same', 1);
    if (slow === undefined || same === undefined) throw new Error('a dual action is built in');
    const slower = { ...slow, force: (slow.force / 2) as typeof slow.force };
    const why = alone({}, { ...da, machines: [...da.machines, same, slower] });
    expect(said(why, 'more-time').join()).toMatch(/as good, and takes \d+ min more/);
    const taken = Math.round(why.plan.steps.reduce((sum, one) => sum + one.machineTime, 0));
    for (const { reason, minutes } of why.rejected) {
      if (reason.code === 'more-time') expect(reason.value).toBe(minutes - taken);
      if (reason.code === 'more-time') expect(minutes).toBeGreaterThan(taken);
      if (reason.code === 'by-name') expect(minutes).toBe(taken);
    }
    expect(said(why, 'by-name').join()).toMatch(
      /as good in all: of such the first by name is taken/,
    );
  });

  it('is a set-up more than the rest of the car is worked with, where all else is as good', () => {
    const { pads, ...rest } = shopWith('da');
    const shop = {
      ...rest,
      machines: rest.machines.flatMap((one) => [one, { ...one, id: 'same' }]),
      pads: pads.filter(({ id }) => id.startsWith('foam')),
    };
    const of = (...ids: readonly string[]): PartWhy => {
      const parts = ids.map((id) => partOf(usual, id));
      const request = requestOf(parts, usual, shop);
      const car = planCorrection(request);
      const [part, plan] = [parts[0], car.panels[0]];
      if (part === undefined || plan === undefined) throw new Error('the panel is planned');
      return whyNot(part, plan, car, request);
    };
    const [alone, beside] = [of('p'), of('p', 'q')].map((why) => said(why, 'more-set-ups'));
    expect(alone).toEqual([]);
    expect(beside).toContainEqual(
      expect.stringMatching(
        /same\/.*: as good here, and the car as a whole would need more set-ups$/,
      ),
    );
  });

  it('is that what may go clears too little to be worth its film', () => {
    const why = alone({ budget: 0.35 }, shopWith('da'));
    expect(why.plan.verdict).toBe('leave');
    expect(said(why, 'not-worth-it').join()).toMatch(
      /clears \d\.\d %: under 10\.0 % is not worth its film/,
    );
  });

  it('is nothing to be told where no plan was looked for', () => {
    const why = alone({ grade: 0 });
    expect(why).toMatchObject({ lookedAt: 0, rejected: [] });
  });

  it('is told of every sequence that was looked at, of which none has the same combination twice', () => {
    const { pads, products, ...rest } = shopWith('da');
    const lookedAt = (...ids: readonly string[]) => {
      const why = alone(
        {},
        {
          ...rest,
          pads: pads.filter(({ id }) => ids.includes(id)),
          products: products.filter(({ id }) => id === 'medium'),
        },
      );
      expect(why.plan.verdict).not.toBe('leave');
      return why.lookedAt;
    };
    // To cut in up to 3 sets or refine in up to 2, which is the same again: 3, less the one that is planned.
    expect(lookedAt('foam-medium')).toBe(2);
    // Of two by itself 2 · 3, one after the other 2 · (3 · 2).
    expect(lookedAt('foam-medium', 'foam-soft')).toBe(6 + 12 - 1);
  });

  it('is told of few candidates for each reason, the nearest in removal first', () => {
    const { rejected, plan } = usualWhy();
    const groups = new Map<string, number[]>();
    for (const { kind, reason, removal } of rejected) {
      const key = `${kind} ${reason.code}`;
      groups.set(key, [...(groups.get(key) ?? []), Math.abs(removal - plan.removal.median)]);
    }
    for (const distances of groups.values()) {
      expect(distances.length).toBeLessThanOrEqual(MOST_OF_A_REASON);
      expect(distances).toEqual([...distances].sort((a, b) => a - b));
    }
  });

  it('comes after those of limits and choice where technique refuses it, and is never what is planned', () => {
    const { rejected, plan } = usualWhy();
    expect(rejected.map(({ steps }) => textOf(steps))).not.toContain(textOf(plan.steps));
    const kinds = groupBy(rejected, ({ kind }) => kind);
    for (const some of kinds.values()) {
      const byTechnique = some.map(({ expected }) => expected === null);
      expect(byTechnique).toEqual([...byTechnique].sort((a, b) => Number(a) - Number(b)));
    }
    const both = rejected.filter(({ kind }) => kind === 'milder');
    expect(new Set(both.map(({ expected }) => expected === null)).size).toBe(2);
  });

  it('is told of as near ones by name', () => {
    const { machines: one, ...rest } = shopWith('da');
    const twins = one.flatMap((machine) => ['b', 'a'].map((id) => ({ ...machine, id })));
    const pads = rest.pads.filter(({ id }) => id === 'foam-medium');
    const { rejected, plan } = alone({}, { ...rest, machines: twins, pads });
    const groups = groupBy(
      rejected,
      ({ kind, reason, removal }) =>
        `${kind} ${reason.code} ${Math.abs(removal - plan.removal.median)}`,
    );
    const asNear = [...groups.values()].filter(({ length }) => length > 1);
    expect(asNear.length).toBeGreaterThan(3);
    for (const some of asNear) {
      const names = some.map(({ steps }) => textOf(steps));
      expect(names).toEqual([...names].sort());
    }
  });
});

const aCase = fc.record({
  shop: aSmallShop,
  parts: fc.array(fc.record({ budget: between(0, 7), area: between(0.2, 2) }), {
    minLength: 1,
    maxLength: 3,
  }),
  flatWidth: fc.constantFrom(60, 80, 120, 400),
  aim: fc.constantFrom(0.6, 0.85, 0.95),
  hazeAllowed: fc.constantFrom(0, 1, 1, 4),
  grade: fc.constantFrom(1, 2, 3, 4),
});
const DEPTHS: readonly number[] = [0, 0.4, 0.7, 1.1, 1.7];

describe('a candidate that was not taken', () => {
  it('breaks, if it is forced, just what its reason claims', () => {
    const counts = new Map<string, number>();
    fc.assert(
      fc.property(aCase, ({ shop, parts: given, ...rest }) => {
        const parts = given.map((one, i) => partOf({ ...rest, ...one }, `p${i}`));
        const request = requestOf(parts, { ...usual, ...rest }, shop);
        const car = planCorrection(request);
        const tools = toolsOf(shop);
        car.panels.forEach((plan, i) => {
          const part = parts[i];
          if (part === undefined) throw new Error('a plan for each part');
          const { rejected } = whyNot(part, plan, car, request);
          const elsewhere = car.panels.filter((other) => other !== plan);
          for (const { steps, kind, reason, minutes } of rejected) {
            counts.set(reason.code, (counts.get(reason.code) ?? 0) + 1);
            const moves = movesOf(steps, tools);
            const isTrue = claimHolds(reason.code, moves, plan, {
              rules: rulesOf(part, rest, tools, movesOf(steps, tools)),
              tools,
              elsewhere,
            });
            expect(
              isTrue,
              `${nameOf(moves)} against ${nameOf(movesOf(plan.steps, tools))}: ${reason.code}`,
            ).toBe(true);
            if (kind === 'quicker')
              expect(minutes).toBeLessThan(minutesOf(movesOf(plan.steps, tools), part));
            else {
              const harder = strength(moves, tools) - strength(movesOf(plan.steps, tools), tools);
              const more = takes(moves) - takes(movesOf(plan.steps, tools));
              expect(
                kind === 'milder'
                  ? harder < 0 || (harder === 0 && more < 0)
                  : harder > 0 || (harder === 0 && more >= 0),
              ).toBe(true);
            }
          }
        });
      }),
      { numRuns: 400, seed: 4242 },
    );
    for (const code of [
      'within-budget',
      'clears-less',
      'stronger-step',
      'more-film',
      'not-worth-it',
      'haze-cleared',
    ]) {
      if (inFull) expect(counts.get(code) ?? 0, code).toBeGreaterThan(20);
    }
  });
});

const movesOf = (steps: readonly Step[], tools: readonly Tool[]): readonly Move[] =>
  steps.map(({ combination, sets }) => {
    const tool = tools.find(({ id }) => id === combination.id);
    if (tool === undefined) throw new Error(`no tool ${combination.id}`);
    return { tool, sets };
  });

const placeIn = (order: readonly Tool[], moves: readonly Move[]): number =>
  Math.max(-1, ...moves.map(({ tool }) => order.indexOf(tool)));
const strength = (moves: readonly Move[], tools: readonly Tool[]): number =>
  placeIn(
    [...tools].sort((a, b) => a.perSet - b.perSet || (a.id < b.id ? -1 : 1)),
    moves,
  );
const care = (moves: readonly Move[], tools: readonly Tool[]): number =>
  placeIn(inOrderOfCare(tools), moves);

const minutesOf = (moves: readonly Move[], { panel }: PanelSurvey): number =>
  Math.round(
    panel.area * moves.reduce((sum, { tool, sets }) => sum + sets * tool.minutesPerSquareMetre, 0),
  );

/** The rules as they stand for what goes by machine, or by hand, as the moves do. */
function rulesOf(
  { budget, panel }: PanelSurvey,
  { aim, hazeAllowed, grade }: Pick<Case, 'aim' | 'hazeAllowed' | 'grade'>,
  tools: readonly Tool[],
  moves: readonly Move[],
): Rules {
  const byHand = moves[0]?.tool.motion === 'hand';
  const flat = tools.filter(
    ({ motion, padDiameter }) =>
      motion !== 'rotary' && (motion === 'hand') === byHand && padDiameter <= panel.flatWidth,
  );
  return {
    budget,
    flatWidth: panel.flatWidth,
    area: panel.area,
    fullSizePad: Math.max(0, ...flat.map(({ padDiameter }) => padDiameter)),
    hazeAllowed,
    aim,
    correctionOf: (median) =>
      expectedCorrection(
        { median: micrometres(median), logSd: UNTRIED_LOG_SD, withDepth: 0 },
        DEPTHS[grade] ?? 0,
        { mean: 0, sd: correctionModel.correction.depthScaleLogSd },
        correctionModel.correction.depthLogSd,
      ),
    meanOf: (median) => median * Math.exp(UNTRIED_LOG_SD ** 2 / 2),
  };
}

type Claim = {
  readonly rules: Rules;
  readonly tools: readonly Tool[];
  readonly elsewhere: readonly PanelPlan[];
};

/** Whether what is said against some moves is so, by the rules written a second time. */
function claimHolds(
  code: string,
  moves: readonly Move[],
  plan: PanelPlan,
  { rules, tools, elsewhere }: Claim,
): boolean {
  const technique = broken[code];
  if (technique !== undefined) return technique(moves, rules);
  const usable = tools.filter(
    ({ motion }) => (motion === 'hand') === (moves[0]?.tool.motion === 'hand'),
  );
  const all = sequencesByHand(usable, rules);
  if (!all.some((one) => nameOf(one) === nameOf(moves)) || takes(moves) > rules.budget)
    return false;
  const cleared = (one: readonly Move[]): number => rules.correctionOf(takes(one));
  const most = Math.max(...all.filter((one) => takes(one) <= rules.budget).map(cleared));
  const isNear = Math.min(rules.aim, most) - cleared(moves) <= 0.01;
  const chosen = movesOf(plan.steps, tools);
  const best = equalsByHand(all, tools, rules)?.best;
  const bin = (one: readonly Move[]): number => Math.floor(rules.meanOf(takes(one)) / 0.1);
  const harder = care(moves, tools) - care(chosen, tools);
  const longer = minutesOf(moves, plan.survey) - minutesOf(chosen, plan.survey);
  const ids = (one: readonly Move[]): number =>
    new Set([
      ...elsewhere.flatMap(({ steps }) => steps.map(({ combination }) => combination.id)),
      ...one.map(({ tool }) => tool.id),
    ]).size;
  switch (code) {
    case 'not-worth-it':
      return best !== undefined && cleared(best) < 0.1 && cleared(moves) < 0.11;
    case 'clears-less':
      return !isNear;
    case 'stronger-step':
      return isNear && harder > 0;
    case 'more-film':
      return isNear && harder === 0 && bin(moves) > bin(chosen);
    case 'more-time':
      return isNear && harder === 0 && bin(moves) === bin(chosen) && longer > 0;
    case 'more-set-ups':
      return isNear && harder === 0 && bin(moves) === bin(chosen) && ids(moves) > ids(chosen);
    case 'by-name':
      return isNear && harder === 0 && bin(moves) === bin(chosen) && longer === 0;
    default:
      return false;
  }
}
