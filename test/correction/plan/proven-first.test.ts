/** Of steps that are as good, what was tried on this paint stands before what was not, where it takes no more. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { once } from '../../../src/base/kept.ts';
import { micrometres } from '../../../src/base/units.ts';
import type { PlanRequest } from '../../../src/correction/plan/plan-request.ts';
import { type Combination, ladder } from '../../../src/correction/removal/combination.ts';
import {
  foretell,
  ladderOn,
  paintKnowledge,
} from '../../../src/correction/removal/removal-knowledge.ts';
import { type Step, stepsId } from '../../../src/correction/removal/step.ts';
import { observationsOf, type SpotTrial } from '../../../src/correction/spot/spot-trial.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { inFull } from '../../in-full.ts';
import { aSmallShop, between } from '../random-shops.ts';
import { defect, shopWith, untried } from '../shop.ts';
import { marks, trial } from '../spot-trials.ts';
import { type PlannedPanel, panelWith, planOfPanel } from './plan-of-panel.ts';

const PROVEN = 'da/foam-medium/medium';
const gauge = filmModel.measurement;
const model = shopWith('rotary', 'da');

/** Three trials on one car: one that did nothing, one that took much and was hazy, one that did it. */
const tooMild = trial('da/foam-soft/fine', {
  spot: 'S1',
  sets: 1,
  cleared: 0.05,
  haze: 0,
  marks: marks([107.2, 107.1], [108, 107.7], [106.9, 106.8]),
});
const hazy = trial('da/microfibre/heavy', {
  spot: 'S2',
  cleared: 0.92,
  haze: 2.5,
  marks: marks([107.5, 103.4], [108.1, 104.2], [107, 103.3]),
});
const didIt = (rest: Partial<SpotTrial> = {}): SpotTrial =>
  trial(PROVEN, {
    spot: 'S3',
    sets: 3,
    cleared: 0.86,
    haze: 0,
    marks: marks([107.6, 104.9], [108.2, 105.6], [107.1, 104.2]),
    ...rest,
  });
const paintOf = (...trials: readonly SpotTrial[]) =>
  paintKnowledge(observationsOf(trials, gauge, model), 'unknown', model);

const part = panelWith(2.9);
const plannedOn = (trials: readonly SpotTrial[], rest: Partial<PlanRequest> = {}): PlannedPanel =>
  planOfPanel(part, paintOf(...trials), { model, ...rest });
const namesOf = ({ plan }: PlannedPanel): string => stepsId(plan.steps);
const told = ({ plan }: PlannedPanel): string | undefined =>
  plan.reasons.find(({ code }) => code === 'tried-first')?.text;

/** Told of the trial that did it without how hazy it was, nothing is known of it but what it takes. */
const byLadder = once(() => plannedOn([tooMild, hazy, didIt({ haze: null })]));
const proven = once(() => plannedOn([tooMild, hazy, didIt()]));

describe('a step that a test spot proved on this very paint', () => {
  test('is planned in place of a milder one nobody tried there that takes more film', () => {
    expect(namesOf(proven())).toBe(`${PROVEN}×3`);
    const { removal, expected } = proven().plan;
    const instead = byLadder().plan;
    expect(namesOf(byLadder())).not.toContain(PROVEN);
    expect(removal.median).toBeLessThan(instead.removal.median);
    expect(removal.high).toBeLessThan(instead.removal.high);
    expect(expected).toBeGreaterThan(0.84);
  });

  test('is said to have been, with what the other would take', () => {
    const [is, was] = [proven(), byLadder()];
    const um = (value: number): string => value.toFixed(2);
    expect(told(is)).toBe(
      `tried on this paint, and takes no more: ${namesOf(was)} is milder by the ladder and was not tried; it takes ${um(was.plan.removal.median)} µm, nine cases of ten up to ${um(was.plan.removal.high)} µm`,
    );
    expect(told(was)).toBeUndefined();
  });

  test('has the milder ones rejected as not tried', () => {
    const { why, plan } = proven();
    const milder = why.rejected.filter(({ reason }) => reason.code === 'not-tried-here');
    expect(milder.map(({ steps }) => stepsId(steps))).toContain(namesOf(byLadder()));
    for (const { kind, reason, steps } of milder) {
      expect(kind).not.toBe('stronger');
      expect(stepsId(steps)).not.toContain(PROVEN);
      expect(reason.text).toMatch(
        /^clears as much by a step not tried on this paint: \d\.\d\d µm, nine cases of ten up to \d\.\d\d µm, against 2\.\d\d and \d\.\d\d$/u,
      );
      expect(reason.text).toContain(plan.removal.high.toFixed(2));
    }
    expect(byLadder().why.rejected.map(({ reason }) => reason.code)).not.toContain(
      'not-tried-here',
    );
  });
});

describe('a trial does not put its step first', () => {
  test.each([
    ['which left more haze than the aim lets stand', didIt({ haze: 2 })],
    ['of whose haze nothing is said', didIt({ haze: null })],
    ['whose film was not read', didIt({ marks: [] })],
    ['that took more than can be foretold of it', didIt({ marks: marks([120, 100], [121, 101]) })],
  ])('%s', (_, one) => {
    const taken = plannedOn([tooMild, hazy, one]);
    expect(told(taken)).toBeUndefined();
    expect(taken.why.rejected.map(({ reason }) => reason.code)).not.toContain('not-tried-here');
  });

  test('which was hazy another time', () => {
    const again = didIt({ spot: 'S4', haze: 2 });
    expect(told(plannedOn([tooMild, hazy, didIt(), again]))).toBeUndefined();
    expect(told(plannedOn([tooMild, hazy, didIt(), { ...again, haze: 1 }]))).toBeDefined();
    const withoutHaze = { hazeAllowed: 0 };
    const finished = plannedOn([tooMild, hazy, didIt(), { ...again, haze: 1 }], withoutHaze);
    expect(told(finished)).toBeUndefined();
  });

  test('by a rotary: it brings heat, however well its film is known', () => {
    const rotary = trial('rotary/foam-soft/medium', {
      spot: 'S5',
      sets: 2,
      cleared: 0.8,
      haze: 0,
      marks: marks([107.6, 105.4], [108.2, 106.1], [107.1, 104.9]),
    });
    expect(told(plannedOn([rotary]))).toBeUndefined();
  });
});

describe('a step that was hazy on this very paint', () => {
  const [first, again] = [{ ...didIt({ haze: 2 }), spot: 'S4' }, didIt({ spot: 'S5', haze: 0 })];
  const roomy = { panels: [{ ...part, budget: micrometres(6) }] };
  const combinations = ({ plan }: PlannedPanel): readonly string[] =>
    plan.steps.map(({ combination }) => combination.id);
  const refused = ({ why }: PlannedPanel): string | undefined =>
    why.rejected.find(({ steps }) => stepsId(steps) === `${PROVEN}×3`)?.reason.text;

  test('does not end a plan that lets no such haze stand, and a step that clears it comes after', () => {
    expect(namesOf(plannedOn([again], roomy))).toBe(`${PROVEN}×3`);
    for (const trials of [[first], [first, again], [again, first]]) {
      const taken = plannedOn(trials, roomy);
      expect(combinations(taken).length).toBeGreaterThan(0);
      expect(combinations(taken).at(-1)).not.toBe(PROVEN);
      expect(refused(taken)).toBe('haze of grade 2 would be left, 1 is allowed');
    }
    expect(namesOf(plannedOn([first], { ...roomy, hazeAllowed: 2 }))).toBe(`${PROVEN}×3`);
  });

  test('is held to that where its film was not read, or speaks against all that is known', () => {
    for (const read of [[], marks([120, 100], [121, 101])]) {
      const rung = ladderOn(paintOf({ ...first, marks: read }), model).find(
        ({ id }) => id === PROVEN,
      );
      expect(rung?.haze).toBe(2);
    }
  });

  test('leaves no less than it does as a rule for having been cleaner there', () => {
    const hazeOf = (...trials: readonly SpotTrial[]): number | undefined =>
      ladderOn(paintOf(...trials), model).find(({ id }) => id === PROVEN)?.haze;
    expect(hazeOf()).toBe(1);
    expect(hazeOf(again)).toBe(1);
    expect(hazeOf(first)).toBe(2);
  });
});

describe('beside a step that was tried', () => {
  const aCase = fc.record({
    shop: aSmallShop,
    isTried: fc.array(fc.constantFrom(true, false, false), { minLength: 8, maxLength: 8 }),
    budget: between(2, 6),
    aim: between(0.5, 0.85),
    grade: fc.constantFrom(2, 3, 4),
  });

  test('others are said to be untried, or to take more, and are', () => {
    const counts = new Map<string, number>();
    fc.assert(
      fc.property(aCase, ({ shop, isTried, budget, aim, grade }) => {
        const tried = new Set(ladder(shop).flatMap(({ id, rung }) => (isTried[rung] ? [id] : [])));
        const sdOf = (id: string): number => (tried.has(id) ? 0.1 : 0.6);
        const paint = {
          ...untried,
          removal: {
            ...untried.removal,
            of: (id: string) => ({ ...untried.removal.of(id), sd: sdOf(id) }),
          },
          hazeSeen: new Map([...tried].map((id) => [id, 0] as const)),
        };
        const { plan, why } = plannedOn([], {
          panels: [{ ...part, budget: micrometres(budget) }],
          paintOf: () => paint,
          defectsOf: () => [defect('swirl-marks', grade)],
          model: shop,
          aim,
          hazeAllowed: 4,
        });
        const isFirst = plan.reasons.some(({ code }) => code === 'tried-first');
        const strongest = (steps: readonly Step[]): string | undefined =>
          steps.reduce<Combination | undefined>(
            (most, { combination }) =>
              most === undefined || combination.care > most.care ? combination : most,
            undefined,
          )?.id;
        for (const { reason, steps } of why.rejected) {
          if (!['not-tried-here', 'may-take-more'].includes(reason.code)) continue;
          counts.set(reason.code, (counts.get(reason.code) ?? 0) + 1);
          const { logSd, median } = foretell(steps, paint, shop.removal.stepLogSd);
          const high = median * Math.exp(1.6448536 * logSd);
          expect([isFirst, tried.has(strongest(plan.steps) ?? '')]).toEqual([true, true]);
          expect(tried.has(strongest(steps) ?? '')).toBe(reason.code === 'may-take-more');
          if (reason.code === 'not-tried-here') continue;
          expect(median > plan.removal.median || high > plan.removal.high).toBe(true);
        }
      }),
      { numRuns: 1200, seed: 777 },
    );
    if (!inFull) return;
    expect(counts.get('not-tried-here') ?? 0).toBeGreaterThan(20);
    expect(counts.get('may-take-more') ?? 0).toBeGreaterThan(0);
  });
});
