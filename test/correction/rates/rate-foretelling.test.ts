import { describe, expect, it } from 'vitest';
import { learnRates } from '../../../src/correction/rates/learn-rates.ts';
import type { RateEvidence } from '../../../src/correction/rates/rate-evidence.ts';
import {
  foretellEach,
  foretellingRecord,
  placeBuiltIn,
} from '../../../src/correction/rates/rate-foretelling.ts';
import { inFull } from '../../in-full.ts';
import { normal, seededRandom } from '../../samples/seeded-random.ts';
import { drawnShop, measured, usualPriors as priors } from '../rates-drawn.ts';

const three: readonly RateEvidence[] = [
  measured('a', 'k', 1.8, 2.6, 0.4),
  measured('b', 'k', 1.8, 2.4, 0.4),
  measured('b', 'l', 0.9, 0.7, 0.4),
  measured('c', 'k', 1.8, 2.9, 0.4),
];

describe('each vehicle foretold by the others', () => {
  it('is foretold by what is learned without it, in the order of the observations', () => {
    const each = foretellEach(three, priors);
    expect(each.map(({ evidence }) => evidence)).toEqual(three);
    for (const { evidence, byOthers } of each) {
      const others = three.filter(({ vehicle }) => vehicle !== evidence.vehicle);
      const [step] = evidence.steps;
      const learned = learnRates(others, priors, [step?.combination ?? '']);
      const next = learned.combinations.get(step?.combination ?? '')?.next;
      expect(byOthers.median).toBeCloseTo((step?.foretold ?? 0) * Math.exp(next?.mean ?? 0), 7);
      expect(byOthers.logSd).toBeCloseTo(Math.hypot(next?.sd ?? 0, priors.stepSd), 7);
    }
  });

  it('is foretold by what is built in where there is no other', () => {
    const [only] = foretellEach([measured('a', 'k', 1.8, 2.6, 0.4)], priors);
    expect(only?.byOthers).toEqual(only?.builtIn);
    expect(only?.byOthers.median).toBeCloseTo(1.8, 12);
    expect(only?.byOthers.logSd).toBeCloseTo(Math.hypot(0.35, 0.4, 0.15), 12);
  });

  it('sums the steps of an observation, each by its share of the spread', () => {
    const steps = [
      { combination: 'k', foretold: 2 },
      { combination: 'l', foretold: 1 },
    ];
    const [sum] = foretellEach(
      [{ vehicle: 'a', steps, sets: 3, removed: { value: 3, standardError: 0.3 } }],
      priors,
    );
    expect(sum?.builtIn.median).toBeCloseTo(3, 12);
    // Paint in common; rate and step of each by 2/3 and 1/3.
    const own = 0.4 ** 2 + 0.15 ** 2;
    expect(sum?.builtIn.logSd).toBeCloseTo(Math.sqrt(0.35 ** 2 + (5 / 9) * own), 12);
  });

  it('places a reading at one half where it is the median of what the others let expect', () => {
    // Almost no spread in the rate: the reading's own noise alone.
    const sure = { ...priors, paintSd: 1e-6, combinationSd: () => 1e-6, stepSd: 1e-6 };
    const at = (value: number): number => placeBuiltIn(measured('a', 'k', 2, value, 0.5), sure);
    expect(at(2)).toBeCloseTo(0.5, 5);
    expect(at(2 + 1.6448536 * 0.5)).toBeCloseTo(0.95, 5);
    expect(at(2 - 1.6448536 * 0.5)).toBeCloseTo(0.05, 5);
  });
});

describe('the place of a reading among those foretold', () => {
  it('is the same where all is so many times as much, however small the error against it', () => {
    const places = [0.01, 1, 100].map((times) =>
      placeBuiltIn(measured('a', 'k', 2 * times, 2.6 * times, 0.02 * times), priors),
    );
    // Φ(ln(2.6/2)/√(.35² + .4² + .15²)) = Φ(.47504) = .68262, but for the error of a twentieth.
    expect(places[1]).toBeCloseTo(0.6826, 2);
    for (const place of places) expect(place).toBeCloseTo(places[1] ?? Number.NaN, 9);
  });
});

describe('how well they foretell', () => {
  it('is not said of two vehicles, nor of four readings', () => {
    const two = three.filter(({ vehicle }) => vehicle !== 'c');
    expect(foretellingRecord(foretellEach([...two, ...two, ...two], priors))).toBeNull();
    expect(foretellingRecord(foretellEach(three, priors))).toBeNull();
    const five = [...three, measured('d', 'l', 0.9, 0.8, 0.4)];
    expect(foretellingRecord(foretellEach(five, priors))).not.toBeNull();
    const ofThree = [...three, measured('a', 'l', 0.9, 0.8, 0.4)];
    expect(foretellingRecord(foretellEach(ofThree, priors))).toMatchObject({
      readings: 5,
      vehicles: 3,
    });
  });

  it('is the root mean square of read less foretold a set, for both, and what noise adds', () => {
    const five = [...three, measured('d', 'l', 0.9, 0.8, 0.8)];
    const each = foretellEach(five, priors);
    const record = foretellingRecord(each);
    const rms = (offs: readonly number[]): number => Math.hypot(...offs) / Math.sqrt(offs.length);
    const builtIn = five.map(
      ({ removed, steps, sets }) => (removed.value - (steps[0]?.foretold ?? 0)) / sets,
    );
    expect(record?.builtInError).toBeCloseTo(rms(builtIn), 12);
    expect(record?.error).toBeCloseTo(
      rms(each.map((one) => (one.evidence.removed.value - one.byOthers.median) / 2)),
      12,
    );
    expect(record?.noise).toBeCloseTo(rms([0.2, 0.2, 0.2, 0.2, 0.4]), 12);
    expect(record).toMatchObject({ readings: 5, vehicles: 4, within: 5 });
    const nearer = ['a', 'b', 'c', 'd'].filter((vehicle) => {
      const own = each.filter(({ evidence }) => evidence.vehicle === vehicle);
      const off = (by: 'byOthers' | 'builtIn'): number =>
        Math.hypot(...own.map(({ evidence, ...one }) => evidence.removed.value - one[by].median));
      return off('byOthers') < off('builtIn');
    });
    expect(record?.nearer).toBe(nearer.length);
    expect(nearer).toContain('c');
  });

  it('is better than the built-in rates on each vehicle by itself', () => {
    const softer = ['a', 'b', 'c', 'd'].map((vehicle) => measured(vehicle, 'k', 1.8, 2.9, 0.2));
    const asBuiltIn = measured('e', 'k', 1.8, 1.8, 0.2);
    const each = foretellEach([...softer, asBuiltIn], priors);
    expect(foretellingRecord(each)).toMatchObject({ vehicles: 5, nearer: 4 });
  });

  it.runIf(inFull)('is in simulation how far a vehicle that was never seen is off', () => {
    const random = seededRandom(303);
    const [left, fresh, within]: [number[], number[], number[]] = [[], [], []];
    for (let i = 0; i < 150; i += 1) {
      const shop = drawnShop(random, priors, ['k', 'l']);
      const vehicle = (name: string): readonly RateEvidence[] => {
        const z = shop.vehicle([
          ['k', 1.8],
          ['l', 1.2],
        ]);
        return [
          measured(name, 'k', 1.8, 1.8 * Math.exp(z[0] ?? 0) + 0.4 * normal(random), 0.4),
          measured(name, 'l', 1.2, 1.2 * Math.exp(z[1] ?? 0) + 0.4 * normal(random), 0.4),
        ];
      };
      const known = Array.from({ length: 8 }, (_, v) => vehicle(`v${v}`)).flat();
      const record = foretellingRecord(foretellEach(known, priors));
      left.push((record?.error ?? 0) ** 2);
      within.push((record?.within ?? 0) / 16);
      const learned = learnRates(known, priors);
      for (const { steps, removed } of vehicle('new')) {
        const [step] = steps;
        const { mean = 0 } = learned.combinations.get(step?.combination ?? '')?.next ?? {};
        fresh.push(((removed.value - (step?.foretold ?? 0) * Math.exp(mean)) / 2) ** 2);
      }
    }
    const root = (squares: readonly number[]): number =>
      Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
    expect(root(left) / root(fresh)).toBeGreaterThan(0.85);
    expect(root(left) / root(fresh)).toBeLessThan(1.2);
    const share = within.reduce((sum, one) => sum + one, 0) / within.length;
    expect(share).toBeGreaterThan(0.87);
    expect(share).toBeLessThan(0.93);
  });
});
