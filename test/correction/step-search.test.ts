import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  metresPerSecond,
  micrometres,
  millimetres,
  newtons,
  squareMetres,
} from '../../src/base/units.ts';
import type { CorrectionModel, Machine, Pad, Product } from '../../src/correction/catalogue.ts';
import { ladder } from '../../src/correction/combination.ts';
import { expectedCorrection } from '../../src/correction/defects.ts';
import { setTime } from '../../src/correction/removal-rate.ts';
import { medianRemoval, type Step } from '../../src/correction/step.ts';
import { candidates, chooseSteps } from '../../src/correction/step-search.ts';
import { correctionModel } from '../../src/formats/models.ts';
import {
  allowedByTechnique,
  bestByHand,
  broken,
  type Move,
  nameOf,
  type Rules,
  type Tool,
} from './brute-force.ts';

const share = fc.integer({ min: 0, max: 1_000_000 }).map((n) => n / 1_000_000);
const between = (low: number, high: number) => share.map((s) => low + (high - low) * s);

const aMachine = (id: string): fc.Arbitrary<Machine> =>
  fc
    .record({
      motion: fc.oneof(
        between(800, 2200).map((rpm) => ({ kind: 'rotary' as const, rpm })),
        fc.record({
          kind: fc.constant('orbital' as const),
          throwDiameter: between(6, 22).map(millimetres),
          orbitsPerMinute: between(3000, 6000),
          forcedRpm: fc.constantFrom(0, 480),
        }),
        fc
          .constant(correctionModel.machines.find(({ id: one }) => one === 'hand')?.motion)
          .map((hand) => {
            if (hand === undefined) throw new Error('hands are built in');
            return hand;
          }),
      ),
      padDiameter: fc.constantFrom(75, 100, 150).map(millimetres),
      force: between(15, 60).map(newtons),
      armSpeed: between(0.05, 0.2).map(metresPerSecond),
    })
    .map((rest) => ({ id, name: id, ...rest }));

/** Haze is a matter of what the thing is, not of how much it cuts. */
const hazeOf = (things: readonly (Pad | Product)[], id: string): number =>
  things.find((one) => one.id === id)?.haze ?? Number.NaN;

const someStages = fc.subarray(['cut', 'refine', 'finish'] as const, { minLength: 1 });

const somePads: fc.Arbitrary<readonly Pad[]> = fc
  .subarray(['foam-soft', 'foam-medium', 'foam-firm', 'microfibre', 'wool'], {
    minLength: 1,
    maxLength: 3,
  })
  .chain((ids) =>
    fc.tuple(
      ...ids.map((id) =>
        fc
          .record({ factor: between(0.4, 2), stages: someStages })
          .map((rest) => ({ id, name: id, haze: hazeOf(correctionModel.pads, id), ...rest })),
      ),
    ),
  );

const someProducts: fc.Arbitrary<readonly Product[]> = fc
  .subarray(['fine', 'medium', 'heavy'], { minLength: 1 })
  .chain((ids) =>
    fc.tuple(
      ...ids.map((id) =>
        fc.record({
          id: fc.constant(id),
          name: fc.constant(id),
          haze: fc.constant(hazeOf(correctionModel.products, id)),
          factor: between(0.3, 2),
          stages: someStages,
        }),
      ),
    ),
  );

const aShop: fc.Arbitrary<CorrectionModel> = fc
  .record({
    machines: fc.oneof(fc.tuple(aMachine('one')), fc.tuple(aMachine('one'), aMachine('two'))),
    pads: somePads,
    products: someProducts,
  })
  .map((own) => ({ ...correctionModel, ...own }));

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

/** The largest pad of a machine that lies flat on the panel. */
const fullSizePad = ({ machines }: CorrectionModel, flatWidth: number): number =>
  Math.max(
    0,
    ...machines
      .filter(({ motion, padDiameter }) => motion.kind !== 'hand' && padDiameter <= flatWidth)
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

const pace = ({ machine }: { readonly machine: Machine }): number =>
  setTime(machine, squareMetres(1), correctionModel.removal);

const toolsOf = (shop: CorrectionModel): readonly Tool[] =>
  ladder(shop).map((one) => ({
    id: one.id,
    perSet: one.perSet,
    motion: one.machine.motion.kind,
    pad: one.pad.id,
    padDiameter: one.machine.padDiameter,
    product: one.product.id,
    padStages: one.pad.stages,
    productStages: one.product.stages,
    minutesPerSquareMetre: pace(one),
  }));

function search(shop: CorrectionModel, task: Task) {
  const rules = rulesOf(shop, task);
  const all = candidates(
    ladder(shop),
    {
      flatWidth: millimetres(task.flatWidth),
      fullSizePad: rules.fullSizePad,
      hazeAllowed: task.hazeAllowed,
      hazeCleared: micrometres(0.25),
    },
    {
      paceOf: ({ combination, sets }: Step) => sets * pace(combination),
      mostSets: { cut: 3, refine: 2, finish: 2 },
      foretell: (steps) => removal(medianRemoval(steps)),
    },
  ).map((one) => ({
    ...one,
    correction: rules.correctionOf(one.removal.median),
    mean: rules.meanOf(one.removal.median),
  }));
  const limits = { ...rules, ...shop.correction.choice };
  return { all, choice: chooseSteps(all, limits, ({ median }) => median <= rules.budget), rules };
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
    expect(chosen).toBeGreaterThanOrEqual(300);
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
    });
    const first = (...paces: readonly [number, number]) =>
      chooseSteps(
        [candidate('b', paces[1]), candidate('a', paces[0])],
        { aim: 0.85, area: 1, ...correctionModel.correction.choice },
        () => true,
      )?.steps[0]?.combination.id;
    expect(first(10.4, 9.6)).toBe('a');
    expect(first(10.6, 9.6)).toBe('b');
  });

  it('finds nothing where there is nothing to choose from', () => {
    const rules = { aim: 0.85, area: 1, ...correctionModel.correction.choice };
    expect(chooseSteps([], rules, () => true)).toBeUndefined();
  });
});
