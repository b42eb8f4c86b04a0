import { describe, expect, test } from 'vitest';
import { ladder } from '../../../src/correction/removal/combination.ts';
import { paintKnowledge } from '../../../src/correction/removal/removal-knowledge.ts';
import { spotLadder } from '../../../src/correction/spot/spot-ladder.ts';
import {
  isThroughClear,
  type NextCase,
  nextStep,
  refiningStep,
} from '../../../src/correction/spot/spot-next.ts';
import { observationOf, type SpotTrial } from '../../../src/correction/spot/spot-trial.ts';
import type { Finish } from '../../../src/film/film-model.ts';
import { defect, shopWith } from '../shop.ts';
import { combination, model, trial } from '../spot-trials.ts';

const MEDIUM = 'da/foam-medium/medium';
const HEAVY = 'rotary/wool/heavy';

/** What may go at once, and what may stay of haze. */
type Limits = Partial<Pick<NextCase, 'aim' | 'hazeAllowed'>> & {
  readonly finish?: Finish;
  readonly budget?: number;
};

function caseOf(trials: readonly SpotTrial[], limits: Limits = {}): NextCase {
  const { finish = 'clear-over-base', aim = 0.85, hazeAllowed = 1, budget } = limits;
  const paint = paintKnowledge(
    trials.map((one) => observationOf(one, null)),
    'unknown',
    model,
  );
  const budgetAt = budget === undefined ? null : () => budget;
  const rungs = spotLadder({
    ...{ trials, paint, defect: defect('swirl-marks', 3), aim, budgetAt, model },
  });
  return {
    ...{ trials, ladder: rungs, paint, finishOf: () => finish, aim, hazeAllowed, model },
    overruns: [],
  };
}
const next = (trials: readonly SpotTrial[], limits?: Limits) => {
  const { code, combination: taken } = nextStep(caseOf(trials, limits));
  return [code, taken?.id ?? null];
};

describe('the next step of a test spot', () => {
  test('is to start with the mildest that has a chance, where nothing was judged yet', () => {
    const { ladder: rungs } = caseOf([]);
    const mildest = rungs.find(({ chance }) => chance >= model.spot.leastChance);
    expect(next([])).toEqual(['start', mildest?.combination.id]);
    expect(next([trial('da/foam-soft/fine')])[0]).toBe('start');
  });

  test('is the next rung up from one that had its sets and did not clear', () => {
    const tried = trial(MEDIUM, { cleared: 0.3 });
    const { ladder: rungs } = caseOf([tried]);
    const open = rungs.find(
      ({ state, chance }) => state === 'open' && chance >= model.spot.leastChance,
    );
    expect(next([tried])).toEqual(['step-up', open?.combination.id]);
  });

  test('is one more set of what may still reach the aim', () => {
    expect(next([trial(MEDIUM, { cleared: 0.7, sets: 1 })])).toEqual(['again', MEDIUM]);
  });

  test('is none where the next rung takes more in one set than may go', () => {
    expect(next([trial(MEDIUM, { cleared: 0.3 })], { budget: 0.5 })[0]).toBe('stop-risk');
  });

  test('is none where no rung has a chance', () => {
    const strongest = trial(HEAVY, { cleared: 0.01 });
    expect(next([strongest])).toEqual(['stop-ladder', null]);
  });

  test('is none any more where one cleared and left no haze that counts', () => {
    expect(next([trial(MEDIUM, { cleared: 0.9, haze: 1 })])).toEqual(['done', MEDIUM]);
    // The mildest of those that did: a stronger one is not needed.
    const both = [trial(HEAVY, { cleared: 0.95 }), trial(MEDIUM, { cleared: 0.9, haze: 0 })];
    expect(next(both)).toEqual(['done', MEDIUM]);
    expect(next([trial(MEDIUM, { cleared: 0.84, haze: 0 })])[0]).not.toBe('done');
  });

  test('is to refine where one cleared and left haze: as it was seen at its worst, else as it usually does', () => {
    const seen = (...hazes: readonly (number | null)[]) =>
      next(hazes.map((haze) => trial(HEAVY, { cleared: 0.9, haze })))[0];
    expect(seen(0)).toBe('done');
    expect(seen(0, 3)).toBe('refine');
    expect(seen(null)).toBe('refine');
    expect(combination(HEAVY).haze).toBeGreaterThan(1);
    expect(combination(MEDIUM).haze).toBe(1);
    expect(next([trial(MEDIUM, { cleared: 0.9, haze: null })])).toEqual(['done', MEDIUM]);
    // Nor is what another left that cleared.
    const harsher = trial(HEAVY, { cleared: 0.95, haze: 4 });
    expect(next([harsher, trial(MEDIUM, { cleared: 0.9, haze: 0 })])).toEqual(['done', MEDIUM]);
    // What it left where it did not clear is no matter.
    const hazed = trial(HEAVY, { cleared: 0.1, haze: 4 });
    expect(next([hazed, trial(HEAVY, { cleared: 0.9, haze: 0 })])[0]).toBe('done');
  });

  test('holds of one that was seen clean what it leaves as a rule, as the plan does', () => {
    const clean = caseOf([trial(MEDIUM, { cleared: 0.9, haze: 0 })], { hazeAllowed: 0 });
    const { code, combination: did, haze } = nextStep(clean);
    expect([code, did?.id]).toEqual(['done', MEDIUM]);
    expect(haze).toMatchObject({ seen: 0, held: combination(MEDIUM).haze, allowed: 0 });
    expect(haze?.follows?.id).toBe('da/foam-soft/fine');
    expect(nextStep({ ...clean, hazeAllowed: 1 }).haze).toBeUndefined();
    // Seen hazy, it is refined on the spot.
    const hazy = caseOf([trial(MEDIUM, { cleared: 0.9, haze: 1 })], { hazeAllowed: 0 });
    expect(nextStep(hazy).code).toBe('refine');
  });

  test('is done with the haze where nothing of the shop would refine it', () => {
    const rotaries = { ...model, machines: model.machines.filter(({ id }) => id === 'rotary') };
    const one = caseOf([trial(HEAVY, { cleared: 0.9, haze: 4 })]);
    const step = nextStep({ ...one, model: rotaries });
    expect(step.code).toBe('done');
    expect(step.haze).toMatchObject({ seen: 4, allowed: 1, follows: null });
  });
});

describe('colour on the pad', () => {
  const seen = [trial(MEDIUM), trial(MEDIUM, { colourOnPad: true })];

  test('stops everything, but on paint that gives colour anyway', () => {
    for (const finish of ['clear-over-base', 'unknown', 'matte'] as const) {
      expect(
        seen.map((one) => isThroughClear(one, () => finish)),
        finish,
      ).toEqual([false, true]);
      expect(next(seen, { finish })).toEqual(['stop-colour', null]);
    }
    for (const finish of ['single-stage-solid', 'single-stage-metallic', 'lacquer'] as const)
      expect(
        seen.some((one) => isThroughClear(one, () => finish)),
        finish,
      ).toBe(false);
  });

  test('stops on a panel that is said to have a clear, though the car has none', () => {
    const onWing = { ...trial(MEDIUM, { colourOnPad: true }), panel: 'wing' };
    const onRoof = { ...trial(MEDIUM, { colourOnPad: true }), panel: 'roof' };
    const finishOf = (panel: string) =>
      panel === 'wing' ? ('clear-over-base' as const) : ('single-stage-solid' as const);
    const ask = (trials: readonly SpotTrial[]) => nextStep({ ...caseOf(trials), finishOf }).code;
    expect(ask([onRoof, onWing])).toBe('stop-colour');
    expect(ask([onRoof])).not.toBe('stop-colour');
  });

  test('that was not seen, or not looked for, stops nothing', () => {
    const not = [trial(MEDIUM, { colourOnPad: false }), trial(MEDIUM)];
    expect(not.some((one) => isThroughClear(one, () => 'clear-over-base'))).toBe(false);
  });
});

describe('a refining step', () => {
  const { paint } = caseOf([]);
  const after = combination(HEAVY);
  const refine = (haze: number, hazeAllowed = 1, of = after) =>
    refiningStep(of, haze, { paint, hazeAllowed, model });
  const usual = new Map(ladder(model).map(({ id, perSet }) => [id, perSet]));

  test('is by dual action, milder than what it follows, and leaves no more haze than is allowed', () => {
    for (const haze of [1.5, 2, 3, 4]) {
      const step = refine(haze);
      expect(step?.machine.motion.kind).toBe('orbital');
      expect(step?.machine.padDiameter).toBe(150);
      expect(step?.perSet).toBeLessThan(after.perSet);
      expect(step?.haze).toBeLessThanOrEqual(1);
      const stages = step?.pad.stages.filter((stage) => step.product.stages.includes(stage)) ?? [];
      expect(stages.some((stage) => stage === 'refine' || stage === 'finish')).toBe(true);
    }
  });

  test('is the mildest that clears the haze in one set, by what a set takes on usual paint', () => {
    const { cleared } = model.correction.haze;
    const [heavy, light] = [refine(3), refine(1.01)];
    expect(usual.get(heavy?.id ?? '')).toBeGreaterThanOrEqual(2 * cleared);
    for (const [id, perSet] of usual) if (perSet < 2 * cleared) expect(heavy?.id, id).not.toBe(id);
    expect(usual.get(light?.id ?? '')).toBeLessThan(2 * cleared);
    expect(light?.id).toBe('da/foam-soft/fine');
  });

  // A grade of haze goes with .25 µm. By dual action foam-soft/fine takes .28, foam-medium/fine .40, foam-soft/medium
  // .63 and foam-medium/medium .90 µm a set, with the small pad .16, .23, .35 and .50: the fine ones on soft foam leave
  // no haze, the others one grade.
  test.each([
    [HEAVY, 4, 1, 'da/foam-medium/medium'],
    [HEAVY, 3, 1, 'da/foam-soft/medium'],
    [HEAVY, 2, 1, 'da/foam-soft/fine'],
    [HEAVY, 3, 0, 'da/foam-soft/fine'],
    [MEDIUM, 4, 1, 'da/foam-soft/medium'],
    [MEDIUM, 1, 0, 'da/foam-soft/fine'],
    ['da-small/microfibre/heavy', 3, 1, 'da-small/foam-medium/medium'],
    ['da-small/microfibre/heavy', 1.5, 1, 'da-small/foam-soft/fine'],
    ['da-small/foam-medium/medium', 3, 1, 'da-small/foam-soft/medium'],
    ['da/foam-soft/fine', 1, 0, undefined],
    ['da-small/foam-soft/fine', 4, 1, undefined],
  ])('after %s with haze of grade %d, where %d may stay, is %s', (id, haze, allowed, expected) => {
    expect(refine(haze, allowed, combination(id))?.id).toBe(expected);
  });

  test('is the one that cuts most where none clears so much in one set', () => {
    const most = refine(40);
    expect(most).toEqual(refine(50));
    expect(usual.get(most?.id ?? '')).toBeGreaterThan(usual.get(refine(1.5)?.id ?? '') ?? 9);
  });

  test('is by the largest dual action of the shop, where that is smaller than its rotary', () => {
    const small = shopWith('rotary', 'da-small');
    const step = refiningStep(after, 3, { paint, hazeAllowed: 1, model: small });
    expect(after.machine.padDiameter).toBe(150);
    expect(step?.machine.id).toBe('da-small');
  });

  test('is never by a pad wider than that of the step it follows', () => {
    for (const of of ladder(model)) {
      for (const haze of [1.5, 2, 3, 4, 10]) {
        const step = refine(haze, 1, of);
        expect(step?.machine.padDiameter ?? 0, of.id).toBeLessThanOrEqual(of.machine.padDiameter);
      }
    }
    const small = combination('da-small/foam-medium/medium');
    const large = shopWith('rotary', 'da');
    expect(refiningStep(small, 3, { paint, hazeAllowed: 1, model: large })).toBeUndefined();
  });

  test('after a small pad is worked with a small one too, and there is none after the mildest', () => {
    const small = combination('da-small/foam-medium/medium');
    expect(refine(3, 1, small)?.machine.padDiameter).toBe(75);
    expect(refine(3, 1, small)?.perSet).toBeLessThan(small.perSet);
    const [mildest] = ladder(model);
    if (mildest === undefined) throw new Error('the ladder has rungs');
    expect(refine(3, 1, mildest)).toBeUndefined();
  });
});
