import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normalCdf, normalDensity, normalQuantile } from '../../../src/base/stats/normal.ts';
import { integrate } from '../../../src/base/stats/quadrature.ts';
import { micrometres } from '../../../src/base/units.ts';
import {
  allowanceOver,
  allowanceUpTo,
  clearAllowance,
  clearRisk,
  type PossibleClear,
} from '../../../src/film/limits/removal-risk.ts';
import { evenly } from '../../evenly.ts';

const FLOOR = micrometres(30);

/**
 * The risk the other way about: over the clear in place of the removal. P(R > C − floor) = E Φ((ln m − ln(C − floor))/σ),
 * and 1 where the clear is under its floor already.
 */
function riskOverClear(
  { mean, sd }: PossibleClear['clear'],
  median: number,
  logSd: number,
): number {
  const under = (FLOOR - mean) / sd;
  const leastOver = Math.max(-9, under);
  const removed = (x: number): number =>
    normalDensity(x) *
    normalCdf((Math.log(median) - Math.log(Math.max(1e-300, mean + sd * x - FLOOR))) / logSd);
  return normalCdf(under) + integrate(removed, leastOver, 9, { panels: 1500, nodes: 16 });
}

const clear = fc
  .record({
    room: evenly(1, 60),
    sd: evenly(0.8, 15),
  })
  .map(({ room, sd }) => ({ mean: micrometres(FLOOR + room), sd: micrometres(sd) }));
const logSd = evenly(0.1, 0.9);
const risk = evenly(0.002, 0.3);

describe('the risk of a removal', () => {
  test('is the same reckoned over the removal as over the clear, to 2e-6', () => {
    fc.assert(
      fc.property(clear, logSd, evenly(0.05, 1.5), (of, sd, share) => {
        const median = micrometres(share * (of.mean - FLOOR));
        const found = clearRisk(of, FLOOR, { median, logSd: sd });
        expect(Math.abs(found - riskOverClear(of, median, sd))).toBeLessThan(2e-6);
      }),
      { numRuns: 40, endOnFailure: true },
    );
  });
});

test('the risk of a removal is the same whatever else was asked in between', () => {
  const of = { mean: micrometres(FLOOR + 15), sd: micrometres(4.8) };
  const at = (sd: number) => clearRisk(of, FLOOR, { median: micrometres(4), logSd: sd });
  const spreads = Array.from({ length: 40 }, (_, k) => 0.5 + k * 1e-4);
  const first = spreads.map(at);
  expect(spreads.map(at)).toEqual(first);
  expect(new Set(first).size).toBe(40);
});

describe('what may come off at a risk', () => {
  const errorOf = (possible: readonly PossibleClear[], allowed: number, sd: number, at: number) => {
    const total = (median: number): number =>
      possible.reduce(
        (sum, { clear, chance }) => sum + chance * riskOverClear(clear, median, sd),
        0,
      );
    const step = 1e-3;
    const slope = (total(at + step) - total(at - step)) / (2 * step);
    return Math.abs(total(at) - allowed) / slope;
  };

  test('is where the risk is just what is allowed, to 2e-6 µm', () => {
    fc.assert(
      fc.property(clear, logSd, risk, (of, sd, allowed) => {
        const found = clearAllowance(of, FLOOR, { risk: allowed, logSd: sd });
        fc.pre(found > 0.01);
        expect(errorOf([{ clear: of, chance: 1 }], allowed, sd, found)).toBeLessThan(2e-6);
      }),
      { numRuns: 40, endOnFailure: true },
    );
  });

  test('is that to 3e-4 µm where the clear may be either of two, however unlike they are', () => {
    fc.assert(
      fc.property(
        clear,
        clear,
        evenly(0.5, 0.99),
        logSd,
        risk,
        (one, other, chance, sd, allowed) => {
          const possible = [
            { clear: one, chance },
            { clear: other, chance: 1 - chance },
          ];
          const found = allowanceOver(possible, FLOOR, { risk: allowed, logSd: sd });
          fc.pre(found > 0.01);
          expect(errorOf(possible, allowed, sd, found)).toBeLessThan(3e-4);
        },
      ),
      { numRuns: 40, endOnFailure: true },
    );
  });

  test('up to a most is the smaller of the two, and never more than the risk allows', () => {
    fc.assert(
      fc.property(clear, clear, logSd, risk, evenly(0, 3), (one, other, sd, allowed, share) => {
        const possible = [
          { clear: one, chance: 0.8 },
          { clear: other, chance: 0.2 },
        ];
        const terms = { risk: allowed, logSd: sd };
        const all = allowanceOver(possible, FLOOR, terms);
        const most = micrometres(share * all);
        const found = allowanceUpTo(most, possible, FLOOR, terms);
        expect(found).toBeLessThanOrEqual(most);
        expect(Math.abs(found - Math.min(most, all))).toBeLessThan(3e-4);
      }),
      { numRuns: 200 },
    );
  });

  test('is nothing where the clear is under its floor too surely already', () => {
    const thin = { mean: micrometres(31), sd: micrometres(4) };
    expect(clearAllowance(thin, FLOOR, { risk: 0.05, logSd: 0.5 })).toBe(0);
  });
});

describe('a clear known within next to nothing', () => {
  const decades = Array.from({ length: 61 }, (_, k) => 10 ** (-8 + k / 6));

  /** Over the removal, the panels of the rule ending where its step does. */
  function riskOverRemoval(
    { mean, sd }: PossibleClear['clear'],
    median: number,
    logSd: number,
  ): number {
    const room = mean - FLOOR;
    const z = (removed: number): number =>
      removed > 0 ? Math.max(-9, Math.min(9, Math.log(removed / median) / logSd)) : -9;
    const risky = (x: number): number =>
      normalDensity(x) * normalCdf((median * Math.exp(logSd * x) - room) / sd);
    const ends = [-9, z(room - 9 * sd), z(room), z(room + 9 * sd), 9];
    return ends
      .slice(1)
      .reduce((sum, end, k) => sum + integrate(risky, ends[k] as number, end, { panels: 60 }), 0);
  }

  const narrow = (sd: number) => ({ mean: micrometres(FLOOR + 8.7), sd: micrometres(sd) });
  const terms = { risk: 0.05, logSd: 0.552 };
  const certain = 8.7 * Math.exp(-normalQuantile(0.95) * 0.552);

  test.each(decades.slice(0, 52))(
    'of SD %d µm is risked as reckoned over the removal, to 2e-6',
    (sd) => {
      for (const logSd of sd < 0.01 ? [0.1, 0.552, 1.3] : [0.1, 0.552, 0.9]) {
        for (const median of [0.05, 2, 3.5, 8.6, 8.7, 9, 30]) {
          const found = clearRisk(narrow(sd), FLOOR, { median: micrometres(median), logSd });
          expect(Math.abs(found - riskOverRemoval(narrow(sd), median, logSd))).toBeLessThan(
            sd < 0.01 ? 1e-9 : 2e-6,
          );
        }
      }
    },
  );

  test('lets come off what one known exactly does, and never more the less it is known', () => {
    const allowed = decades.map((sd) => clearAllowance(narrow(sd), FLOOR, terms));
    expect(Math.abs((allowed[0] as number) - certain)).toBeLessThan(1e-7);
    for (const [k, one] of allowed.entries())
      expect(one).toBeLessThanOrEqual((allowed[k - 1] ?? certain) + 1e-7);
    const [last = 0] = allowed.slice(-1);
    expect(last).toBe(0);
  });

  test('beside another that is known as usual keeps the sum of the two at the risk', () => {
    const other = { mean: micrometres(FLOOR + 14), sd: micrometres(3) };
    for (const sd of decades.slice(0, 42)) {
      const possible = [
        { clear: narrow(sd), chance: 0.7 },
        { clear: other, chance: 0.3 },
      ];
      const found = allowanceOver(possible, FLOOR, terms);
      const [one, two] = possible.map(
        ({ clear: of, chance }) => chance * riskOverRemoval(of, found, terms.logSd),
      );
      expect((one as number) + (two as number)).toBeCloseTo(0.05, 7);
    }
  });
});
