/** A trial that nothing held before it allows for makes nothing surer. */
import { describe, expect, test } from 'vitest';
import { normalCdf } from '../../../src/base/stats/normal.ts';
import {
  foretell,
  paintKnowledge,
  removalPriors,
} from '../../../src/correction/removal/removal-knowledge.ts';
import {
  conflictWithPrior,
  type PriorConflict,
} from '../../../src/correction/spot/prior-conflict.ts';
import type { TrialObservation } from '../../../src/correction/spot/trial-observation.ts';
import { normal, seededRandom } from '../../samples/seeded-random.ts';
import { combination, model } from '../spot-trials.ts';

const MEDIUM = 'da/foam-medium/medium';
const foretold = combination(MEDIUM).perSet;
const priors = removalPriors('unknown', model);
const sd = Math.hypot(priors.hardness.sd, priors.combinationSd(MEDIUM), priors.stepSd);
const trialOf = (value: number, standardError = 0.3): TrialObservation => ({
  combination: MEDIUM,
  foretold,
  removed: { value, standardError },
  cleared: null,
});

describe('a trial contradicts what was held before it', () => {
  test('where a gauge without error shows it beyond 1.96 SDs of what was foretold, either way', () => {
    const at = (sds: number): PriorConflict =>
      conflictWithPrior(trialOf(foretold * Math.exp(sds * sd), 1e-6), priors);
    expect([-2.1, -1.9, 0, 1.9, 2.1].map(at)).toEqual(['less', null, null, null, 'more']);
  });

  test('the less, the worse the gauge knows it', () => {
    const six = [0.3, 0.8, 3].map((error) => conflictWithPrior(trialOf(6, error), priors));
    expect(six).toEqual(['more', 'more', null]);
  });

  test('not where its film was not read', () => {
    expect(conflictWithPrior({ ...trialOf(6), removed: null }, priors)).toBeNull();
  });

  test('once in twenty of the paints and gauges that are held to be', () => {
    const random = seededRandom(41);
    const draws = 4000;
    let found = 0;
    for (let i = 0; i < draws; i += 1) {
      const truly = foretold * Math.exp(sd * normal(random));
      if (conflictWithPrior(trialOf(truly + 0.3 * normal(random)), priors) !== null) found += 1;
    }
    // 0.05 ± 3 standard errors.
    expect(Math.abs(found / draws - 0.05)).toBeLessThan(3 * Math.sqrt((0.05 * 0.95) / draws));
  });
});

describe('what is learnt of a paint', () => {
  const doubtOf = (trials: readonly TrialObservation[]): readonly number[] => {
    const paint = paintKnowledge(trials, 'unknown', model);
    return [MEDIUM, 'rotary/foam-soft/medium'].map(
      (id) =>
        foretell([{ combination: combination(id), sets: 1 }], paint, model.removal.stepLogSd).logSd,
    );
  };
  const untried = doubtOf([]);

  test('is surer by a trial as foretold, and so more of its step may go', () => {
    expect(doubtOf([trialOf(foretold)])[0]).toBeLessThan((untried[0] ?? 0) * 0.8);
  });

  test('is no surer by one that contradicts, of any step, however many agree besides', () => {
    for (const trials of [[trialOf(6, 0.7)], [trialOf(6, 0.7), trialOf(foretold)]]) {
      doubtOf(trials).forEach((one, i) => {
        expect(one).toBeGreaterThanOrEqual((untried[i] ?? 0) - 1e-12);
      });
    }
  });

  test('is softer paint all the same: what it took counts', () => {
    const { removal } = paintKnowledge([trialOf(6, 0.7)], 'unknown', model);
    expect(Math.exp(removal.of(MEDIUM).mean)).toBeGreaterThan(3);
    expect(normalCdf(removal.hardness.mean / removal.hardness.sd)).toBeGreaterThan(0.95);
  });

  test('is nothing by one that took far too little, by film or by eye: no step is to be stronger for it', () => {
    const nothing = { ...trialOf(0, 0.1), cleared: { share: 0, depth: 1 } };
    const untriedPaint = paintKnowledge([], 'unknown', model);
    const alone = paintKnowledge([nothing], 'unknown', model);
    expect(alone.provisional).toBe(true);
    expect(alone.removal.of(MEDIUM)).toEqual(untriedPaint.removal.of(MEDIUM));
    expect(alone.removal.depthScale).toEqual(untriedPaint.removal.depthScale);
    const beside = paintKnowledge([nothing, trialOf(2 * foretold)], 'unknown', model);
    const without = paintKnowledge([trialOf(2 * foretold)], 'unknown', model);
    expect(beside.provisional).toBe(false);
    expect(beside.removal.of(MEDIUM).mean).toBe(without.removal.of(MEDIUM).mean);
  });
});
