import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normalCdf, normalDensity } from '../../../src/base/stats/normal.ts';
import { integrate } from '../../../src/base/stats/quadrature.ts';
import { micrometres } from '../../../src/base/units.ts';
import {
  allowanceOver,
  clearAllowance,
  clearRisk,
  type PossibleClear,
} from '../../../src/film/limits/removal-risk.ts';

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
    room: fc.double({ min: 1, max: 60, noNaN: true }),
    sd: fc.double({ min: 0.8, max: 15, noNaN: true }),
  })
  .map(({ room, sd }) => ({ mean: micrometres(FLOOR + room), sd: micrometres(sd) }));
const logSd = fc.double({ min: 0.1, max: 0.9, noNaN: true });
const risk = fc.double({ min: 0.002, max: 0.3, noNaN: true });

describe('the risk of a removal', () => {
  test('is the same reckoned over the removal as over the clear, to 1e-7', () => {
    fc.assert(
      fc.property(
        clear,
        logSd,
        fc.double({ min: 0.05, max: 1.5, noNaN: true }),
        (of, sd, share) => {
          const median = micrometres(share * (of.mean - FLOOR));
          const found = clearRisk(of, FLOOR, { median, logSd: sd });
          expect(Math.abs(found - riskOverClear(of, median, sd))).toBeLessThan(1e-7);
        },
      ),
      { numRuns: 40, endOnFailure: true },
    );
  });
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

  test('is where the risk is just what is allowed, to 1e-6 µm', () => {
    fc.assert(
      fc.property(clear, logSd, risk, (of, sd, allowed) => {
        const found = clearAllowance(of, FLOOR, { risk: allowed, logSd: sd });
        fc.pre(found > 0.01);
        expect(errorOf([{ clear: of, chance: 1 }], allowed, sd, found)).toBeLessThan(1e-6);
      }),
      { numRuns: 40, endOnFailure: true },
    );
  });

  test('is that too where the clear may be either of two', () => {
    fc.assert(
      fc.property(
        clear,
        clear,
        fc.double({ min: 0.5, max: 0.99, noNaN: true }),
        logSd,
        risk,
        (one, other, chance, sd, allowed) => {
          const possible = [
            { clear: one, chance },
            { clear: other, chance: 1 - chance },
          ];
          const found = allowanceOver(possible, FLOOR, { risk: allowed, logSd: sd });
          fc.pre(found > 0.01);
          expect(errorOf(possible, allowed, sd, found)).toBeLessThan(1e-5);
        },
      ),
      { numRuns: 40, endOnFailure: true },
    );
  });

  test('is nothing where the clear is under its floor too surely already', () => {
    const thin = { mean: micrometres(31), sd: micrometres(4) };
    expect(clearAllowance(thin, FLOOR, { risk: 0.05, logSd: 0.5 })).toBe(0);
  });
});
