import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalDensity } from '../../../src/base/stats/normal.ts';
import { fitShop, learnRates } from '../../../src/correction/rates/learn-rates.ts';
import type { RateEvidence } from '../../../src/correction/rates/rate-evidence.ts';
import { inFull } from '../../in-full.ts';
import { normal, seededRandom } from '../../samples/seeded-random.ts';
import { drawnShop, measured, usualPriors as priors } from '../rates-drawn.ts';

const nextSd = (evidence: readonly RateEvidence[], id: string): number =>
  learnRates(evidence, priors).combinations.get(id)?.next.sd ?? Number.NaN;

/** Four vehicles; one removal that is not told from nothing, one under nothing, one of two steps. */
const mixed: readonly RateEvidence[] = [
  measured('a', 'k', 1.8, 2.6, 0.6),
  measured('a', 'l', 2.8, 1.9, 0.5),
  measured('b', 'k', 1.8, 2.4, 0.4),
  measured('c', 'k', 0.9, -0.3, 0.6),
  measured('c', 'l', 1.4, 0.4, 0.6),
  {
    vehicle: 'd',
    steps: [
      { combination: 'k', foretold: 1.8 },
      { combination: 'l', foretold: 1.4 },
    ],
    sets: 3,
    removed: { value: 4.1, standardError: 0.4 },
  },
];

/** The same posterior by drawing shop and vehicles from the prior and weighing by the readings. */
function byDrawing(evidence: readonly RateEvidence[], draws: number) {
  const random = seededRandom(2711);
  const vehicles = [...new Set(evidence.map(({ vehicle }) => vehicle))];
  const sums = new Map(['usual', 'k', 'l'].map((name) => [name, { first: 0, second: 0 }]));
  let total = 0;
  for (let i = 0; i < draws; i += 1) {
    const shop = drawnShop(random, priors, ['k', 'l']);
    // Several draws of each vehicle for one of the shop: the shop's weight is the product of their means.
    const weight = vehicles.reduce((product, vehicle) => {
      const own = evidence.filter((one) => one.vehicle === vehicle);
      const plan = own.flatMap(({ steps }) =>
        steps.map(({ combination, foretold }) => [combination, foretold] as const),
      );
      let sum = 0;
      for (let again = 0; again < 4; again += 1) {
        const z = [...shop.vehicle(plan)];
        sum += own.reduce((likelihood, { steps, removed }) => {
          const taken = steps.reduce(
            (all, { foretold }) => all + foretold * Math.exp(z.shift() ?? 0),
            0,
          );
          return likelihood * normalDensity((removed.value - taken) / removed.standardError);
        }, 1);
      }
      return product * sum;
    }, 1);
    total += weight;
    for (const [name, sum] of sums) {
      const value = name === 'usual' ? shop.usualPaint : (shop.rates.get(name) ?? 0);
      sum.first += weight * value;
      sum.second += weight * value ** 2;
    }
  }
  return (name: string) => {
    const { first = 0, second = 0 } = sums.get(name) ?? {};
    return { mean: first / total, sd: Math.sqrt(second / total - (first / total) ** 2) };
  };
}

describe('what earlier vehicles teach of a shop’s rates', () => {
  it('is nothing without an observation: what is built in stands', () => {
    const { usualPaint, nextPaint, combinations, unobservedVariance } = learnRates([], priors);
    expect(combinations.size).toBe(0);
    expect(usualPaint).toEqual({ mean: 0, sd: 0.35 * Math.sqrt(0.25) });
    expect(nextPaint.mean).toBe(0);
    expect(nextPaint.sd).toBeCloseTo(0.35, 14);
    expect(unobservedVariance).toBe(0);
  });

  it.runIf(inFull)(
    'agrees with weighted draws, unresolved, negative and summed removals included',
    () => {
      const found = learnRates(mixed, priors);
      const drawn = byDrawing(mixed, 120_000);
      expect(Math.abs(found.usualPaint.mean - drawn('usual').mean)).toBeLessThan(0.02);
      expect(Math.abs(found.usualPaint.sd - drawn('usual').sd)).toBeLessThan(0.01);
      for (const id of ['k', 'l']) {
        const { mean = 0, sd = 0 } = found.combinations.get(id)?.usual ?? {};
        expect(Math.abs(mean - drawn(id).mean)).toBeLessThan(0.05);
        expect(Math.abs(sd - drawn(id).sd)).toBeLessThan(0.03);
      }
    },
  );

  it('is the weighted mean of a textbook where nothing but the shop’s rate varies', () => {
    // Small deviations, so that ln is straight: mean Σ(y/s²)/(Σ1/s² + 1/v) with v the shop's own variance.
    const sharp = { ...priors, paintSd: 1e-9, combinationSd: () => 0.02, stepSd: 1e-9 };
    const own = { ...sharp, combinationShare: 1 };
    const readings = [10.1, 10.3, 9.9].map((value, i) => measured(`v${i}`, 'k', 10, value, 0.6));
    const weight = 3 / 0.6 ** 2;
    const expected = ((0.3 / 3) * weight) / (weight + 1 / 0.2 ** 2) / 10;
    const { mean } = learnRates(readings, own).combinations.get('k')?.next ?? { mean: Number.NaN };
    expect(mean).toBeCloseTo(expected, 4);
  });

  it('finds the mode however far off the readings are, where K·pull is the mean itself', () => {
    const shared = priors.paintShare * priors.paintSd ** 2;
    const own = priors.combinationShare * priors.combinationSd('k') ** 2;
    for (const [count, value, error] of [
      [1, 80, 0.1],
      [1, 200, 0.1],
      [3, 50, 0.1],
      [10, 0.01, 0.01],
    ] as const) {
      const far = Array.from({ length: count }, (_, i) =>
        measured(`v${i}`, 'k', 1, value * (1 + 0.1 * (i % 3)), error),
      );
      const { mean, pull } = fitShop(far, priors, ['k']);
      // One reading of 80 times as much: steps overshoot there. pull − K⁻¹·mean is nothing at the end.
      const [all = Number.NaN, ofK = Number.NaN] = pull;
      expect(mean[0]).toBeCloseTo(shared * (all + ofK), 6);
      expect(mean[1]).toBeCloseTo(shared * (all + ofK) + own * ofK, 6);
    }
  });

  it('counts the observations and vehicles of each combination', () => {
    const { combinations } = learnRates(mixed, priors);
    expect(combinations.get('k')).toMatchObject({ observations: 4, vehicles: 4 });
    expect(combinations.get('l')).toMatchObject({ observations: 3, vehicles: 3 });
  });

  it('is less sure from one vehicle read twice than from two vehicles', () => {
    const again = [measured('a', 'k', 1.8, 1.8, 0.2), measured('a', 'k', 1.8, 1.8, 0.2)];
    const other = [measured('a', 'k', 1.8, 1.8, 0.2), measured('b', 'k', 1.8, 1.8, 0.2)];
    expect(nextSd(again, 'k')).toBeGreaterThan(nextSd(other, 'k') + 0.02);
  });

  it('lets a faster combination speak a little of the paint, and so of a combination never tried', () => {
    const seen = ['a', 'b', 'c'].flatMap((vehicle) =>
      ['k', 'l', 'm'].map((id) => measured(vehicle, id, 1.8, 1, 0.2)),
    );
    const { usualPaint, nextPaint } = learnRates(seen, priors);
    expect(Math.exp(usualPaint.mean)).toBeLessThan(0.9);
    expect(Math.exp(usualPaint.mean)).toBeGreaterThan(0.6);
    expect(nextPaint.sd).toBeLessThan(0.35);
  });

  it('moves combinations that share parts with one that was observed, the more the more they share', () => {
    const seen = ['a', 'b', 'c'].map((vehicle) => measured(vehicle, 'da/soft/fine', 1, 1.8, 0.1));
    const ids = ['da/soft/medium', 'da/wool/medium', 'rotary/wool/medium'];
    const { combinations, usualPaint } = learnRates(seen, priors, ids);
    const own = (id: string): number => combinations.get(id)?.own.mean ?? Number.NaN;
    expect(own('da/soft/fine')).toBeGreaterThan(own('da/soft/medium') + 0.05);
    expect(own('da/soft/medium')).toBeGreaterThan(own('da/wool/medium') + 0.05);
    expect(own('da/wool/medium')).toBeGreaterThan(0.05);
    expect(own('rotary/wool/medium')).toBeCloseTo(0, 9);
    expect(usualPaint.mean).toBeGreaterThan(0);
    // By correlation: two parts of three in common, of three quarters of what stays the same.
    expect(own('da/soft/medium') / own('da/soft/fine')).toBeCloseTo((0.75 * 2) / 3, 9);
    expect(combinations.get('da/soft/medium')).toMatchObject({ observations: 0, vehicles: 0 });
  });

  it('leaves a combination that shares nothing with those observed as it would be without them', () => {
    const seen = [measured('a', 'da/soft/fine', 1, 1.8, 0.1)];
    const [alone, beside] = [[], ['rotary/wool/heavy']].map((ids) => learnRates(seen, priors, ids));
    const other = beside?.combinations.get('rotary/wool/heavy');
    const unobserved = Math.hypot(
      alone?.nextPaint.sd ?? 0,
      0.4,
      Math.sqrt(alone?.unobservedVariance ?? 0),
    );
    expect(other?.next.mean).toBeCloseTo(alone?.usualPaint.mean ?? Number.NaN, 9);
    expect(other?.next.sd).toBeCloseTo(unobserved, 9);
    expect(beside?.combinations.get('da/soft/fine')?.next).toEqual(
      alone?.combinations.get('da/soft/fine')?.next,
    );
  });

  it('moves by an unresolved removal less than by a resolved one of the same size', () => {
    const moved = (error: number): number =>
      learnRates([measured('a', 'k', 1.8, 3, error)], priors).combinations.get('k')?.next.mean ?? 0;
    expect(moved(2)).toBeGreaterThan(0);
    expect(moved(2)).toBeLessThan(moved(0.4) / 3);
  });

  it('takes a removal under nothing as a sign of a slow rate, and does not drop it', () => {
    const { mean, sd } = learnRates([measured('a', 'k', 1.8, -0.4, 0.5)], priors).combinations.get(
      'k',
    )?.next ?? { mean: Number.NaN, sd: Number.NaN };
    expect(mean).toBeLessThan(-0.2);
    expect(sd).toBeGreaterThan(0.4);
  });
});

const reading = fc.record({
  vehicle: fc.constantFrom('a', 'b', 'c', 'd'),
  combination: fc.constantFrom('k', 'l', 'm'),
  foretold: fc.double({ min: 0.1, max: 6, noNaN: true }),
  factor: fc.double({ min: -0.5, max: 3, noNaN: true }),
  error: fc.double({ min: 0.05, max: 3, noNaN: true }),
});
const observations = fc
  .array(reading, { minLength: 1, maxLength: 12 })
  .map((all) =>
    all.map(({ vehicle, combination, foretold, factor, error }) =>
      measured(vehicle, combination, foretold, factor * foretold, error),
    ),
  );

describe('whatever was observed', () => {
  it('in whatever order it was, the same is learnt', () => {
    fc.assert(
      fc.property(
        observations.chain((all) =>
          fc.tuple(
            fc.constant(all),
            fc.shuffledSubarray(all, { minLength: all.length, maxLength: all.length }),
          ),
        ),
        ([all, shuffled]) => {
          const [a, b] = [learnRates(all, priors), learnRates(shuffled, priors)];
          expect(b.usualPaint.mean).toBeCloseTo(a.usualPaint.mean, 6);
          expect([...b.combinations.keys()]).toEqual([...a.combinations.keys()]);
          for (const [id, { next }] of a.combinations) {
            expect(b.combinations.get(id)?.next.mean).toBeCloseTo(next.mean, 6);
            expect(b.combinations.get(id)?.next.sd).toBeCloseTo(next.sd, 6);
          }
        },
      ),
    );
  });

  /** The ln-variance of a removal about the shop's own. */
  const varying = 0.75 * 0.35 ** 2 + 0.25 * 0.4 ** 2 + 0.15 ** 2;

  it('a further vehicle that comes out exactly as foretold narrows its combination and moves nothing', () => {
    fc.assert(
      fc.property(observations, fc.double({ min: 0.05, max: 3, noNaN: true }), (all, error) => {
        const before = learnRates(all, priors);
        for (const [id, { next }] of before.combinations) {
          const expected = measured('new', id, 1.8, 1.8 * Math.exp(next.mean + varying / 2), error);
          const after = learnRates([...all, expected], priors).combinations.get(id)?.next;
          expect(after?.mean).toBeCloseTo(next.mean, 5);
          expect(after?.sd).toBeLessThan(next.sd + 1e-7);
        }
      }),
    );
  });

  it('no spread exceeds what was held before, nor falls under that from vehicle to vehicle', () => {
    const least = Math.sqrt(0.75 * 0.35 ** 2 + 0.25 * 0.4 ** 2);
    fc.assert(
      fc.property(observations, (all) => {
        const { nextPaint, combinations, unobservedVariance } = learnRates(all, priors);
        const unobserved = Math.hypot(nextPaint.sd, 0.4, Math.sqrt(unobservedVariance));
        expect(unobserved).toBeLessThan(Math.hypot(0.35, 0.4) + 1e-9);
        expect(unobservedVariance).toBeGreaterThanOrEqual(0);
        for (const { next, own } of combinations.values()) {
          expect(next.sd).toBeGreaterThanOrEqual(least - 1e-12);
          expect(own.sd).toBeGreaterThanOrEqual(0.2 - 1e-12);
          expect(next.sd).toBeLessThan(Math.hypot(0.35, 0.4) + 1e-9);
        }
      }),
    );
  });
});

describe.runIf(inFull)('in simulation of shops whose rates are known', () => {
  const ids = ['k', 'l', 'm', 'n'];
  const foretold = [0.9, 1.8, 2.7, 1.2];

  /** A shop after so many vehicles, of each two combinations tried. */
  function workedShop(random: () => number, vehicles: number) {
    const shop = drawnShop(random, priors, ids);
    const evidence = Array.from({ length: vehicles }, (_, v) => {
      const picked = [v % 4, (v + 1 + Math.floor(random() * 3)) % 4];
      const plan = picked.map((i) => [ids[i] ?? '', foretold[i] ?? 0] as const);
      const z = shop.vehicle(plan);
      return plan.map(([id, usual], i) => {
        const error = 0.2 + 0.5 * random();
        const taken = usual * Math.exp(z[i] ?? 0);
        return measured(`v${v}`, id, usual, taken + error * normal(random), error);
      });
    }).flat();
    return { shop, evidence };
  }

  it('the true factor of a combination lies in its 90 % range nine times of ten', () => {
    const random = seededRandom(4471);
    for (const vehicles of [3, 8, 20]) {
      let [within, all, error] = [0, 0, 0];
      for (let i = 0; i < 250; i += 1) {
        const { shop, evidence } = workedShop(random, vehicles);
        for (const [id, { usual }] of learnRates(evidence, priors).combinations) {
          const off = ((shop.rates.get(id) ?? 0) - usual.mean) / usual.sd;
          within += Math.abs(off) <= 1.645 ? 1 : 0;
          error += off;
          all += 1;
        }
      }
      expect(within / all).toBeGreaterThan(0.87);
      expect(within / all).toBeLessThan(0.93);
      // In SDs of what is stated: the errors of many vehicles do not add up.
      expect(Math.abs(error / all)).toBeLessThan(0.1);
    }
  });

  it('what the next vehicle loses lies in the range foretold for it nine times of ten', () => {
    const random = seededRandom(919);
    for (const vehicles of [3, 12]) {
      let [within, all] = [0, 0];
      for (let i = 0; i < 300; i += 1) {
        const { shop, evidence } = workedShop(random, vehicles);
        const learned = learnRates(evidence, priors);
        const z = shop.vehicle(ids.map((id) => [id, 1] as const));
        for (const [j, id] of ids.entries()) {
          const next = learned.combinations.get(id)?.next;
          if (next === undefined) continue;
          const off = ((z[j] ?? 0) - next.mean) / Math.hypot(next.sd, priors.stepSd);
          within += Math.abs(off) <= 1.645 ? 1 : 0;
          all += 1;
        }
      }
      expect(within / all).toBeGreaterThan(0.87);
      expect(within / all).toBeLessThan(0.93);
    }
  });
});
