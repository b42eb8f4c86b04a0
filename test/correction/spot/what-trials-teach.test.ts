import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import {
  ladderOn,
  paintKnowledge,
  removalPriors,
} from '../../../src/correction/removal/removal-knowledge.ts';
import {
  conflictWithPrior,
  type PriorConflict,
} from '../../../src/correction/spot/prior-conflict.ts';
import { observationsOf } from '../../../src/correction/spot/spot-trial.ts';
import { combination, marks, model, trial } from '../spot-trials.ts';

const MEDIUM = 'da/foam-medium/medium';
const gauge = { repeatability: micrometres(0.3), proportional: 0 };

describe('of trials on one paint', () => {
  const took = trial(MEDIUM, { marks: marks([112, 110.5], [114, 112.9]), cleared: 0.5 });

  test('each is learned from by what its marks say went, and what the eye saw', () => {
    const [one, ...others] = observationsOf([took], gauge, model);
    expect(others).toEqual([]);
    expect(one?.foretold).toBeCloseTo(2 * combination(MEDIUM).perSet, 12);
    expect(one?.removed?.value).toBeCloseTo(1.3, 12);
    expect(one?.cleared?.share).toBe(0.5);
  });

  test('one whose film rose teaches nothing, be it of some marks or of all that were read', () => {
    const rose = trial(MEDIUM, { marks: marks([112, 118], [114, 120.2]) });
    const gained = trial(MEDIUM, { gained: marks([112, 130]), cleared: 0.9 });
    expect(observationsOf([rose, gained], gauge, model)).toEqual([]);
    expect(observationsOf([rose, took, gained], gauge, model)).toEqual(
      observationsOf([took], gauge, model),
    );
    // The eye saw its haze, whatever was read of its film: none of what cleared, which no film bears out.
    const hazed = [rose, gained].map((one) => ({ ...one, haze: 3 }));
    const seen = observationsOf(hazed, gauge, model);
    expect(seen.map(({ removed, cleared, haze }) => [removed, cleared, haze])).toEqual([
      [null, null, 3],
      [null, null, 3],
    ]);
    const [none, hazy] = [[], seen].map((all) => paintKnowledge(all, 'unknown', model));
    expect(hazy?.removal.of(MEDIUM)).toEqual(none?.removal.of(MEDIUM));
    expect([hazy?.provisional, hazy?.hazeSeen]).toEqual([true, undefined]);
    const leaves = (paint = none) =>
      paint && ladderOn(paint, model).find(({ id }) => id === MEDIUM)?.haze;
    expect(leaves()).toBeLessThan(3);
    expect(leaves(hazy)).toBe(3);
    // Nor is a combination clean that another of its trials showed clean.
    const clean = { ...took, haze: 0 };
    const both = paintKnowledge(observationsOf([clean, ...hazed], gauge, model), 'unknown', model);
    expect(both.hazeSeen?.get(MEDIUM)).toBe(3);
    // A hair more is no more than the gauge makes.
    const hair = trial(MEDIUM, { marks: marks([112, 112.1], [114, 114]) });
    expect(observationsOf([hair], gauge, model)).toHaveLength(1);
  });
});

test.each(['soft', 'hard'] as const)(
  'of paint said to be %s a trial contradicts what is foretold of such paint',
  (hardness) => {
    const priors = removalPriors(hardness, model);
    const sd = Math.hypot(priors.hardness.sd, priors.combinationSd(MEDIUM), priors.stepSd);
    const foretold = combination(MEDIUM).perSet;
    expect(Math.abs(priors.hardness.mean)).toBeGreaterThan(0.1);
    const at = (sds: number): PriorConflict =>
      conflictWithPrior(
        {
          combination: MEDIUM,
          foretold,
          removed: {
            value: foretold * Math.exp(priors.hardness.mean + sds * sd),
            standardError: 1e-6,
          },
          cleared: null,
        },
        priors,
      );
    expect([-2.1, -1.9, 0, 1.9, 2.1].map(at)).toEqual(['less', null, null, null, 'more']);
  },
);
