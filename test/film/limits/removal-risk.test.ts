import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normalCdf, normalDensity } from '../../../src/base/stats/normal.ts';
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
