import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres, millimetres } from '../../../src/base/units.ts';
import { expectedCorrection } from '../../../src/correction/defects.ts';
import {
  chooseSteps,
  inClasses,
  type RatedCandidate,
  ranked,
  within,
} from '../../../src/correction/plan/choose-steps.ts';
import { provenWays } from '../../../src/correction/plan/proven-ways.ts';
import { candidateColumns } from '../../../src/correction/plan/step-search.ts';
import type { CorrectionModel } from '../../../src/correction/removal/catalogue.ts';
import { ladder } from '../../../src/correction/removal/combination.ts';
import { ladderOn } from '../../../src/correction/removal/removal-knowledge.ts';
import { medianRemoval, type Step } from '../../../src/correction/removal/step.ts';
import { correctionModel } from '../../../src/formats/models.ts';
import { inFull } from '../../in-full.ts';
import {
  allowedByTechnique,
  bestByHand,
  broken,
  equalsByHand,
  type Move,
  nameOf,
  type Rules,
  sequencesByHand,
  type Tool,
  takes,
} from '../brute-force.ts';
import { aShop, between, pace, toolsOf } from '../random-shops.ts';
import { untried } from '../shop.ts';

const aTask = fc.record({
  budget: between(0, 9),
  flatWidth: fc.constantFrom(60, 80, 120, 400),
  hazeAllowed: fc.constantFrom(0, 1, 1, 4),
  aim: fc.constantFrom(0.6, 0.85, 0.95),
  area: between(0.2, 3),
  depth: between(0.2, 3),
});
type Task = typeof aTask extends fc.Arbitrary<infer T> ? T : never;

const LOG_SD = Math.hypot(0.35, 0.4, 0.15);

/** The largest pad that lies flat on the panel, of a machine that may end it. */
const fullSizePad = ({ machines }: CorrectionModel, flatWidth: number): number =>
  Math.max(
    0,
    ...machines
      .filter(({ motion }) => motion.kind !== 'hand' && motion.kind !== 'rotary')
      .filter(({ padDiameter }) => padDiameter <= flatWidth)
      .map(({ padDiameter }) => padDiameter),
  );

const removal = (median: number) => ({
  median: micrometres(median),
  logSd: LOG_SD,
  withDepth: 0,
});

const rulesOf = (shop: CorrectionModel, task: Task): Rules => ({
  ...task,
  fullSizePad: fullSizePad(shop, task.flatWidth),
  correctionOf: (median) =>
    expectedCorrection(
      removal(median),
      task.depth,
      { mean: 0, sd: correctionModel.correction.depthScaleLogSd },
      correctionModel.correction.depthLogSd,
    ),
  meanOf: (median) => median * Math.exp(LOG_SD ** 2 / 2),
});

/** What may go of them, by their medians. */
function upTo(
  shop: CorrectionModel,
  all: readonly RatedCandidate[],
  budget: number,
  cares: ReadonlySet<number> = new Set(),
) {
  const found = ranked(inClasses(all, shop.correction.choice), [LOG_SD], (one) => one);
  const ways = within(found, () => budget);
  return cares.size === 0 ? ways : { ...ways, proven: provenWays(found, () => budget, cares) };
}

/** Combinations that were tried, whose rates are better known. */
type Tried = (id: string) => boolean;
const sdOf = (isTried: boolean): number => (isTried ? LOG_SD / 3 : LOG_SD);

function search(
  shop: CorrectionModel,
  task: Task,
  isTried: Tried = () => false,
  worstHaze: ReadonlyMap<string, number> = new Map(),
) {
  const rules = rulesOf(shop, task);
  const columns = candidateColumns(
    ladderOn({ ...untried, worstHaze }, shop),
    {
      flatWidth: millimetres(task.flatWidth),
      fullSizePad: rules.fullSizePad,
      hazeAllowed: task.hazeAllowed,
      hazeCleared: micrometres(0.25),
    },
    {
      paceOf: ({ combination, sets }: Step) => sets * pace(combination),
      mostSets: { cut: 3, refine: 2, finish: 2 },
      removalOf: (step) => {
        const median = medianRemoval([step]);
        const sd = sdOf(isTried(step.combination.id));
        return { median, rateSds: median * sd, withDepth: 0 };
      },
      stepLogSd: 0,
    },
  );
  const all = columns.mean
    .map((_, place) => columns.at(place))
    .map((one) => ({
      ...one,
      correction: rules.correctionOf(one.removal.median),
      mean: rules.meanOf(one.removal.median),
      heldTo: LOG_SD,
    }));
  const limits = { ...rules, ...shop.correction.choice };
  const cares = ladder(shop).flatMap(({ id, care }) => (isTried(id) ? [care] : []));
  const found = chooseSteps(upTo(shop, all, rules.budget, new Set(cares)), limits);
  return { all, choice: found?.best, found, rules };
}

const movesOf = (steps: readonly Step[], tools: readonly Tool[]): readonly Move[] =>
  steps.map(({ combination, sets }) => {
    const tool = tools.find(({ id }) => id === combination.id);
    if (tool === undefined) throw new Error(`no tool ${combination.id}`);
    return { tool, sets };
  });

const RUNS = { numRuns: 1200, seed: 20_241 };

describe('the search for steps', () => {
  it('finds every sequence that the rules of technique allow, and no other', () => {
    fc.assert(
      fc.property(aShop, aTask, (shop, task) => {
        const { all, rules } = search(shop, task);
        const tools = toolsOf(shop);
        expect(new Set(all.map(({ steps }) => nameOf(movesOf(steps, tools))))).toEqual(
          allowedByTechnique(tools, rules),
        );
      }),
      RUNS,
    );
  });

  it('chooses what a plain enumeration chooses', () => {
    let chosen = 0;
    fc.assert(
      fc.property(aShop, aTask, (shop, task) => {
        const { choice, rules } = search(shop, task);
        const tools = toolsOf(shop);
        const best = bestByHand(tools, rules);
        if (best !== undefined) chosen += 1;
        const found = choice === undefined ? undefined : movesOf(choice.steps, tools);
        expect(found && nameOf(found)).toBe(best && nameOf(best));
      }),
      RUNS,
    );
    // The comparison means something only where there was a choice to make.
    if (inFull) expect(chosen).toBeGreaterThanOrEqual(300);
  });

  it('holds what was hazy on this paint to leave as much again, and what was cleaner to no less', () => {
    const someSeen = fc.array(fc.constantFrom(null, 0, 1, 2, 2.5, 4), {
      minLength: 18,
      maxLength: 18,
    });
    let [otherwise, chosen] = [0, 0];
    fc.assert(
      fc.property(aShop, aTask, someSeen, (shop, task, seen) => {
        const worst = new Map(
          ladder(shop).flatMap(({ id, rung }) => {
            const haze = seen[rung] ?? null;
            return haze === null ? [] : [[id, haze] as const];
          }),
        );
        const { all, choice, rules } = search(shop, task, undefined, worst);
        const tools = toolsOf(shop).map((tool) => ({ ...tool, hazeSeen: worst.get(tool.id) ?? 0 }));
        expect(new Set(all.map(({ steps }) => nameOf(movesOf(steps, tools))))).toEqual(
          allowedByTechnique(tools, rules),
        );
        const best = bestByHand(tools, rules);
        expect(choice && nameOf(movesOf(choice.steps, tools))).toBe(best && nameOf(best));
        const usual = search(shop, task).choice;
        if (choice !== undefined) chosen += 1;
        if (choice && usual && nameOf(movesOf(usual.steps, tools)) !== (best && nameOf(best)))
          otherwise += 1;
      }),
      RUNS,
    );
    if (inFull) expect(Math.min(chosen / 10, otherwise)).toBeGreaterThanOrEqual(20);
  });

  it('puts what was tried before what was not, if it takes no more, as a plain enumeration does', () => {
    const counts = { tried: 0, instead: 0 };
    const aRoomyTask = fc.record({
      budget: between(1, 6),
      flatWidth: fc.constantFrom(120, 400),
      hazeAllowed: fc.constantFrom(1, 4),
      aim: fc.constantFrom(0.6, 0.85),
      area: between(0.2, 3),
      depth: between(0.2, 1.5),
    });
    const someTried = fc.array(fc.boolean(), { minLength: 18, maxLength: 18 });
    fc.assert(
      fc.property(aShop, aRoomyTask, someTried, (shop, task, isTried) => {
        const rungs = ladder(shop).filter(({ rung }) => isTried[rung] === true);
        const ids = new Set(rungs.map(({ id }) => id));
        const { found, rules } = search(shop, task, (id) => ids.has(id));
        const tools = toolsOf(shop).map((tool) => ({ ...tool, tried: ids.has(tool.id) }));
        const shares = (moves: readonly Move[]): number =>
          moves.reduce(
            (sum, { tool, sets }) => sum + tool.perSet * sets * sdOf(tool.tried === true),
            0,
          );
        const mostOf = (moves: readonly Move[]): number =>
          takes(moves) * Math.exp((1.6448536269514722 * shares(moves)) / takes(moves));
        const expected = equalsByHand(sequencesByHand(tools, rules), tools, { ...rules, mostOf });
        const namesOf = (some: readonly RatedCandidate[] = []) =>
          some.map(({ steps }) => nameOf(movesOf(steps, tools)));
        expect(found && namesOf([found.best])).toEqual(expected && [nameOf(expected.best)]);
        expect(new Set(namesOf(found?.equals))).toEqual(new Set(expected?.equals.map(nameOf)));
        const { instead } = found ?? {};
        if (expected?.best.some(({ tool }) => tool.tried)) counts.tried += 1;
        if (found === undefined || instead === undefined) return;
        counts.instead += 1;
        const first = search(shop, task).choice;
        expect(namesOf([instead])).toEqual(first && namesOf([first]));
        expect(found.best.removal.median).toBeLessThanOrEqual(instead.removal.median);
        const reached = (one: RatedCandidate) => Math.min(task.aim, one.correction);
        expect(reached(found.best)).toBeGreaterThanOrEqual(reached(instead) - 0.01 - 1e-12);
      }),
      RUNS,
    );
    if (inFull) expect(Math.min(counts.instead, counts.tried / 10)).toBeGreaterThanOrEqual(15);
  });

  it.each(Object.keys(broken))('never returns steps that break the rule %s', (name) => {
    const isBroken = broken[name];
    if (isBroken === undefined) throw new Error(`no rule ${name}`);
    fc.assert(
      fc.property(aShop, aTask, (shop, task) => {
        const { choice, rules } = search(shop, task);
        if (choice === undefined) return;
        expect(isBroken(movesOf(choice.steps, toolsOf(shop)), rules)).toBe(false);
      }),
      RUNS,
    );
  });

  it('clears no less with more budget, up to the aim, but for the percentage point held equal', () => {
    fc.assert(
      fc.property(aShop, aTask, between(0, 4), (shop, task, more) => {
        const less = search(shop, task).choice;
        const roomier = search(shop, { ...task, budget: task.budget + more }).choice;
        if (less === undefined) return;
        const upToAim = (correction = 0): number => Math.min(correction, task.aim);
        expect(upToAim(roomier?.correction)).toBeGreaterThanOrEqual(
          upToAim(less.correction) - 0.01 - 1e-12,
        );
      }),
      RUNS,
    );
  });

  it('states the correction of what it chose', () => {
    fc.assert(
      fc.property(aShop, aTask, (shop, task) => {
        const { choice, rules } = search(shop, task);
        if (choice === undefined) return;
        expect(choice.correction).toBe(rules.correctionOf(choice.removal.median));
      }),
      { ...RUNS, numRuns: 100 },
    );
  });

  it('counts time in whole minutes, so that half a minute decides nothing and the name does', () => {
    const [one] = ladder(correctionModel);
    if (one === undefined) throw new Error('the ladder has rungs');
    const candidate = (id: string, pace: number) => ({
      steps: [{ combination: { ...one, id }, sets: 1 }],
      removal: removal(1),
      strongest: 0,
      pace,
      correction: 0.5,
      mean: 1,
      heldTo: LOG_SD,
    });
    const first = (...paces: readonly [number, number]) =>
      chooseSteps(upTo(correctionModel, [candidate('b', paces[1]), candidate('a', paces[0])], 9), {
        aim: 0.85,
        area: 1,
        ...correctionModel.correction.choice,
      })?.best.steps[0]?.combination.id;
    expect(first(10.4, 9.6)).toBe('a');
    expect(first(10.6, 9.6)).toBe('b');
  });

  it('finds nothing where there is nothing to choose from', () => {
    const rules = { aim: 0.85, area: 1, ...correctionModel.correction.choice };
    expect(chooseSteps(upTo(correctionModel, [], 9), rules)).toBeUndefined();
  });
});
