import { describe, expect, it } from 'vitest';
import { micrometres, newtons } from '../../../src/base/units.ts';
import type { RatedCandidate } from '../../../src/correction/plan/choose-steps.ts';
import { bestWays, decisionsOn, waysWithin } from '../../../src/correction/plan/decide-part.ts';
import type { CorrectionModel } from '../../../src/correction/removal/catalogue.ts';
import { setsOf } from '../../../src/correction/removal/step.ts';
import { amongSound, fiveAround } from '../../film/car-builder.ts';
import { defect, shopWith, untried } from '../shop.ts';

type Grounds = Parameters<typeof decisionsOn>[1];

/** What a panel with swirl marks is decided on by, where so much may go. */
const groundsAt = (budget: number, grade: number, model = shopWith('da')): Grounds =>
  ({
    panels: [],
    defectsOf: () => [defect('swirl-marks', grade)],
    hazeAllowed: 1,
    paintOf: () => untried,
    allowanceAt: (part: object) => ({ ...part, budget: micrometres(budget) }),
    model,
  }) as unknown as Grounds;

describe('a part on which nothing is worth its film', () => {
  const { panel } = amongSound(fiveAround('tested', 60));

  it('is left for the same reason under every aim, which is worked out once', () => {
    const decide = decisionsOn(panel, groundsAt(panel.budget, 3, shopWith('da', 'hand')));
    const [full, half] = [decide(0.95), decide(0.5)];
    expect(full).toMatchObject({ kind: 'none', verdict: 'leave' });
    expect(half).toBe(full);
  });
});

describe('a part from which nothing may go', () => {
  const { panel } = amongSound(fiveAround('tested', 112));
  const bare = { ...panel, budget: micrometres(0) };
  const lookedAt = (budget: (logSd: number) => number): number => {
    const grounds = {
      ...groundsAt(0, 3),
      allowanceAt: (part: object, logSd: number) => ({ ...part, budget: budget(logSd) }),
    } as unknown as Grounds;
    return waysWithin(bare, 1.1, grounds).machine().lookedAt;
  };

  it('has no ways looked for', () => {
    expect(lookedAt(() => 0)).toBe(0);
  });

  it('has them looked for where something may once removal is foretold better', () => {
    expect(lookedAt((logSd) => (logSd < 0.2 ? 0.5 : 0))).toBeGreaterThan(0);
  });
});

describe('what may stand for the best way to work a part', () => {
  const { panel } = amongSound(fiveAround('tested', 112));
  /** Two machines that are all but alike: steps by the other take a hair less, in the same time. */
  const shop = twins();
  const budgets = Array.from({ length: 60 }, (_, i) => 0.5 + i / 10);

  /** The best by machine with all that clear as much, and what of these may stand for it. */
  function standIns(budget: number, aim: number, model = shop) {
    const grounds = groundsAt(budget, 3, model);
    const decision = decisionsOn(panel, grounds)(aim);
    const { machine } = bestWays(panel, waysWithin(panel, 1.1, grounds), { aim, model });
    return decision.kind === 'none' || machine === undefined
      ? []
      : [{ best: machine.best, all: machine.equals, held: decision.choice.equals }];
  }
  const cleared = ({ correction }: RatedCandidate): number => correction;
  const middleOf = (some: readonly RatedCandidate[]): number =>
    (Math.min(...some.map(cleared)) + Math.max(...some.map(cleared))) / 2;

  it('asks for no more steps than it, and for no more sets', () => {
    const steps = (one: RatedCandidate) => one.steps.length;
    let [moreSteps, moreSets] = [0, 0];
    for (const { best, all, held } of budgets.flatMap((budget) => standIns(budget, 0.85))) {
      expect(held).toEqual(
        all.filter((one) => steps(one) <= steps(best) && sets(one) <= sets(best)),
      );
      moreSteps += all.filter((one) => steps(one) > steps(best)).length;
      moreSets += all.filter((one) => sets(one) > sets(best)).length;
    }
    expect(Math.min(moreSteps, moreSets)).toBeGreaterThan(0);
  });

  it('reaches the aim where the best does, and need not where it does not', () => {
    const counts = { reached: 0, missed: 0 };
    for (const budget of budgets) {
      for (const { held } of standIns(budget, 0.99)) {
        if (held.length < 2) continue;
        // An aim that lies a point over the middle of them: as good for the search, reached by some of them.
        const line = middleOf(held);
        const again = standIns(budget, line + shop.correction.choice.equalShortfall);
        for (const { best, all, held: kept } of again) {
          const short = all.filter((one) => one.correction < line);
          counts[best.correction < line ? 'missed' : 'reached'] += short.length;
          if (best.correction >= line) expect(kept.every((one) => cleared(one) >= line)).toBe(true);
          else expect(kept).toEqual(held);
        }
      }
    }
    expect(counts.reached).toBeGreaterThan(10);
    expect(counts.missed).toBeGreaterThan(10);
  });

  it('is worth its film with just the least correction that is', () => {
    const [found] = standIns(2, 0.85);
    if (found === undefined) throw new Error('the panel is worked');
    const leastOf = (leastCorrection: number) =>
      standIns(2, 0.85, { ...shop, correction: { ...shop.correction, leastCorrection } });
    const { correction } = found.best;
    expect(leastOf(correction).map(({ best }) => best.correction)).toEqual([correction]);
    expect(leastOf(correction + 1e-9)).toEqual([]);
  });

  it('is worth its film by itself', () => {
    let unworthy = 0;
    for (const budget of budgets.slice(0, 30)) {
      for (const { best, held } of standIns(budget, 0.99)) {
        const leastCorrection = middleOf(held);
        if (held.length < 2 || best.correction < leastCorrection) continue;
        const model = { ...shop, correction: { ...shop.correction, leastCorrection } };
        for (const again of standIns(budget, 0.99, model)) {
          expect(again.held.every((one) => one.correction >= leastCorrection)).toBe(true);
          unworthy += held.length - again.held.length;
        }
      }
    }
    expect(unworthy).toBeGreaterThan(5);
  });
});

const sets = ({ steps }: RatedCandidate): number => setsOf(steps);

function twins(): CorrectionModel {
  const { machines, pads, products, ...rest } = shopWith('da');
  return {
    ...rest,
    machines: machines.flatMap((one) => [
      one,
      { ...one, id: 'db', force: newtons(0.97 * one.force) },
    ]),
    pads: pads.filter(({ id }) => ['foam-soft', 'foam-medium', 'wool'].includes(id)),
    products: products.filter(({ id }) => id !== 'heavy'),
  };
}
