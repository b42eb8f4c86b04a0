import { describe, expect, test } from 'vitest';
import { normalDensity, normalQuantile } from '../../../src/base/stats/normal.ts';
import { learnRemoval } from '../../../src/correction/spot/removal-posterior.ts';
import type {
  RemovalPriors,
  TrialObservation,
} from '../../../src/correction/spot/trial-observation.ts';
import { inFull } from '../../in-full.ts';
import { normal, seededRandom } from '../../samples/seeded-random.ts';

const priors: RemovalPriors = {
  hardness: { mean: 0, sd: 0.35 },
  combinationSd: () => 0.4,
  usualCombinationSd: 0.4,
  stepSd: 0.15,
  depthScaleSd: 0.5,
  depthLogSd: 0.6,
  eyeSd: 0.35,
};

const trial = (
  combination: string,
  foretold: number,
  removed: TrialObservation['removed'],
  cleared: TrialObservation['cleared'] = null,
): TrialObservation => ({ combination, foretold, removed, cleared });

const three: readonly TrialObservation[] = [
  trial('a', 1.8, { value: 1.1, standardError: 0.6 }, { share: 0.5, depth: 1.1 }),
  trial('a', 0.9, { value: 0.9, standardError: 0.6 }),
  trial('b', 2.8, { value: 1.9, standardError: 0.5 }, { share: 0.85, depth: 1.1 }),
];

/** The same posterior by drawing everything from the prior and weighing by the likelihood. */
function byDrawing(observations: readonly TrialObservation[], draws: number) {
  const random = seededRandom(811);
  const ids = [...new Set(observations.map(({ combination }) => combination))];
  const names = ['h', 'd', ...ids];
  const sums = new Map(names.map((name) => [name, { first: 0, second: 0, withDepth: 0 }]));
  let total = 0;
  for (let i = 0; i < draws; i += 1) {
    const h = priors.hardness.sd * normal(random);
    const d = priors.depthScaleSd * normal(random);
    const own = new Map(ids.map((id) => [id, h + 0.4 * normal(random)]));
    let weight = 1;
    for (const { combination, foretold, removed, cleared } of observations) {
      const a = (own.get(combination) ?? 0) + priors.stepSd * normal(random);
      const truly = foretold * Math.exp(a);
      if (removed !== null)
        weight *= normalDensity((removed.value - truly) / removed.standardError);
      if (cleared !== null) {
        const seen = 0.6 * normalQuantile(cleared.share);
        weight *= normalDensity((Math.log(truly / cleared.depth) - d - seen) / priors.eyeSd);
      }
    }
    total += weight;
    for (const [name, sum] of sums) {
      const value = name === 'h' ? h : name === 'd' ? d : (own.get(name) ?? 0);
      sum.first += weight * value;
      sum.second += weight * value ** 2;
      sum.withDepth += weight * value * d;
    }
  }
  const depth = (sums.get('d')?.first ?? 0) / total;
  return (name: string) => {
    const { first = 0, second = 0, withDepth = 0 } = sums.get(name) ?? {};
    const mean = first / total;
    return {
      mean,
      sd: Math.sqrt(second / total - mean ** 2),
      withDepth: withDepth / total - mean * depth,
    };
  };
}

describe('what test spots teach of a paint', () => {
  test('is nothing without a record: the prior stands', () => {
    const { hardness, depthScale, of } = learnRemoval([], priors);
    expect(hardness.mean).toBeCloseTo(0, 12);
    expect(hardness.sd).toBeCloseTo(0.35, 7);
    expect(depthScale.sd).toBeCloseTo(0.5, 7);
    expect(of('any').sd).toBeCloseTo(Math.hypot(0.35, 0.4), 7);
    expect(of('any').withDepth).toBeCloseTo(0, 12);
  });

  test.runIf(inFull)('agrees with 400,000 weighted draws from the prior', () => {
    const found = learnRemoval(three, priors);
    const drawn = byDrawing(three, 400_000);
    expect(found.hardness.mean).toBeCloseTo(drawn('h').mean, 2);
    expect(found.hardness.sd).toBeCloseTo(drawn('h').sd, 2);
    expect(found.depthScale.mean).toBeCloseTo(drawn('d').mean, 2);
    expect(found.depthScale.sd).toBeCloseTo(drawn('d').sd, 2);
    for (const id of ['a', 'b']) {
      expect(found.of(id).mean).toBeCloseTo(drawn(id).mean, 2);
      expect(found.of(id).sd).toBeCloseTo(drawn(id).sd, 2);
      expect(found.of(id).withDepth).toBeCloseTo(drawn(id).withDepth, 2);
    }
  });

  test('of the eye alone is the normal update of a textbook (Bolstad: 12 fish, mean 32, N(30, 4²) before)', () => {
    // One unknown mean with known noise 2: the eye is the only witness and nothing else varies.
    const bolstad: RemovalPriors = {
      hardness: { mean: 30, sd: 4 },
      combinationSd: () => 0,
      usualCombinationSd: 0,
      stepSd: 0,
      depthScaleSd: 0,
      depthLogSd: 1,
      eyeSd: 2,
    };
    const fish = Array.from({ length: 12 }, () =>
      trial('trout', 1, null, { share: 0.5, depth: Math.exp(32) }),
    );
    const { hardness } = learnRemoval(fish, bolstad);
    expect(hardness.mean).toBeCloseTo(31.9591836735, 7);
    expect(hardness.sd).toBeCloseTo(0.571428571429, 6);
  });

  test('has the variance of linear normal theory where only the eye saw', () => {
    // y = h + k + e − d + noise: prior variance of the sum v = .35² + .4² + .15² + .5² + .35²
    const y = Math.log(1.1 / 1.8) + 0.6 * normalQuantile(0.9);
    const v = 0.35 ** 2 + 0.4 ** 2 + 0.15 ** 2 + 0.5 ** 2 + 0.35 ** 2;
    const found = learnRemoval([trial('a', 1.8, null, { share: 0.9, depth: 1.1 })], priors);
    expect(found.hardness.mean).toBeCloseTo((0.35 ** 2 / v) * y, 6);
    expect(found.hardness.sd).toBeCloseTo(Math.sqrt(0.35 ** 2 - 0.35 ** 4 / v), 6);
    expect(found.depthScale.mean).toBeCloseTo((-(0.5 ** 2) / v) * y, 6);
    const own = 0.35 ** 2 + 0.4 ** 2;
    expect(found.of('a').mean).toBeCloseTo((own / v) * y, 6);
    expect(found.of('a').withDepth).toBeCloseTo((own * 0.5 ** 2) / v, 6);
  });

  test.each([
    [1, 6, 0.3],
    [6, 1, 0.3],
    [2, 2.4, 0.2],
    [1, 1, 3],
  ])(
    'of the gauge alone is one integral over the sum of all that varies: %d µm foretold, %d ± %d read',
    (foretold, value, standardError) => {
      // a = h + k + e: of its normal prior each part has its share of variance in what a is found to be.
      const variance = 0.35 ** 2 + 0.4 ** 2 + 0.15 ** 2;
      let [total, first] = [0, 0];
      for (let a = -4; a <= 4; a += 1e-4) {
        const off = (value - foretold * Math.exp(a)) / standardError;
        const weight = normalDensity(a / Math.sqrt(variance)) * normalDensity(off);
        total += weight;
        first += weight * a;
      }
      const found = learnRemoval([trial('a', foretold, { value, standardError })], priors);
      expect(found.hardness.mean).toBeCloseTo(((0.35 ** 2 / variance) * first) / total, 6);
      const own = 0.35 ** 2 + 0.4 ** 2;
      expect(found.of('a').mean).toBeCloseTo(((own / variance) * first) / total, 6);
    },
  );

  test.each([
    [1, 0.97],
    [0, 0.03],
  ])(
    'takes a share of %d that the eye saw go for %d: nobody sees the last marks',
    (seen, taken) => {
      const y = Math.log(1.1 / 1.8) + 0.6 * normalQuantile(taken);
      const v = 0.35 ** 2 + 0.4 ** 2 + 0.15 ** 2 + 0.5 ** 2 + 0.35 ** 2;
      const found = learnRemoval([trial('a', 1.8, null, { share: seen, depth: 1.1 })], priors);
      expect(found.hardness.mean).toBeCloseTo((0.35 ** 2 / v) * y, 5);
    },
  );

  test('moves nothing by a record in which gauge and eye contradict each other beyond all measure', () => {
    const impossible = trial(
      'a',
      1.8,
      { value: 1.8, standardError: 0.1 },
      { share: 0.97, depth: 1e12 },
    );
    const { hardness, depthScale, of } = learnRemoval([impossible], priors);
    expect([hardness.mean, depthScale.mean, of('a').mean]).toEqual([
      expect.closeTo(0, 6),
      expect.closeTo(0, 6),
      expect.closeTo(0, 6),
    ]);
    expect(hardness.sd).toBeCloseTo(0.35, 6);
    expect(of('a').sd).toBeCloseTo(Math.hypot(0.35, 0.4), 6);
  });

  test('does not depend on the order of the records', () => {
    const there = learnRemoval(three, priors);
    const back = learnRemoval([...three].reverse(), priors);
    expect(back.hardness.mean).toBeCloseTo(there.hardness.mean, 10);
    expect(back.of('b').sd).toBeCloseTo(there.of('b').sd, 10);
    expect(back.depthScale.sd).toBeCloseTo(there.depthScale.sd, 10);
  });

  test('takes a removal that looks negative for what it is: noise about little', () => {
    const { of } = learnRemoval([trial('a', 0.9, { value: -0.8, standardError: 0.7 })], priors);
    expect(of('a').mean).toBeLessThan(0);
    expect(of('a').mean).toBeGreaterThan(-1.5);
    expect(of('a').sd).toBeLessThan(Math.hypot(0.35, 0.4));
  });

  test('stays finite when records contradict each other beyond belief', () => {
    const absurd = [
      trial('a', 1, { value: 60, standardError: 0.5 }, { share: 0.03, depth: 40 }),
      trial('a', 1, { value: -30, standardError: 0.5 }),
    ];
    const { hardness, of } = learnRemoval(absurd, priors);
    expect(Number.isFinite(hardness.mean + hardness.sd + of('a').mean + of('a').sd)).toBe(true);
  });

  test('narrows what ten marks can tell: more after stacked sets than after one', () => {
    // SD 1.5 µm a reading, ten marks before and after: standard error 1.5·√(2/10) = .67 µm.
    const standardError = 1.5 * Math.sqrt(2 / 10);
    const nextStep = (sets: number): number => {
      const removed = { value: 0.897 * sets, standardError };
      const { of } = learnRemoval([trial('a', 0.897 * sets, removed)], priors);
      return Math.hypot(of('a').sd, priors.stepSd);
    };
    // Before any trial .552; without the gauge's noise a trial leaves √(v·.15²/(v + .15²) + .15²) = .208.
    expect([1, 2, 3].map((sets) => Number(nextStep(sets).toFixed(2)))).toEqual([0.46, 0.37, 0.31]);
  });
});

test('a trial whose gauge and eye rule each other out entirely teaches nothing, and no figure is lost by it', () => {
  // What was measured lies so far under what the eye saw that no removal at all explains both.
  const sure = { ...priors, eyeSd: 0.005 };
  const against = trial(
    'a',
    1,
    { value: 0.5, standardError: 0.001 },
    { share: 0.5, depth: 80_000 },
  );
  const { hardness, depthScale, of } = learnRemoval([against], sure);
  const before = learnRemoval([], sure);
  expect(of('a').mean).toBeCloseTo(before.of('a').mean, 2);
  expect(of('a').sd).toBeCloseTo(before.of('a').sd, 2);
  expect(hardness.sd).toBeCloseTo(sure.hardness.sd, 2);
  expect(depthScale.sd).toBeCloseTo(sure.depthScaleSd, 2);
});
