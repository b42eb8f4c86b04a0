import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import {
  againstPlan,
  heldRemoval,
  placeInForecast,
} from '../../../src/correction/removal/measured-removal.ts';

const um = micrometres;
const foretold = { median: um(3), logSd: 0.5 };
const measured = (value: number, standardError: number) => ({
  value: um(value),
  standardError: um(standardError),
});

/** The same by a plain sum over a fine grid of removals. */
function byGrid(median: number, logSd: number, value: number, error: number) {
  let [total, first, second, below] = [0, 0, 0, 0];
  let mass = 0;
  const step = 0.0005;
  for (let r = step / 2; r < 60; r += step) {
    const prior = Math.exp(-(Math.log(r / median) ** 2) / (2 * logSd ** 2)) / r;
    const weight = prior * Math.exp(-((value - r) ** 2) / (2 * error ** 2));
    mass += prior;
    total += weight;
    first += weight * r;
    second += weight * r * r;
    below += prior * phi((value - r) / error);
  }
  const mean = first / total;
  return { mean, sd: Math.sqrt(second / total - mean ** 2), place: below / mass };
}

/** Φ by Abramowitz & Stegun 26.2.17, good to 7.5e-8. */
function phi(x: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(x));
  const poly =
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp(-(x * x) / 2) / Math.sqrt(2 * Math.PI)) * poly;
  return x > 0 ? 1 - tail : tail;
}

describe('what is held of a removal that was foretold and measured', () => {
  test.each([
    [2, 1],
    [3.5, 0.4],
    [1, 2],
    [6, 1],
  ])(
    'is the forecast by the measurement, as a sum over a grid has it: %s ± %s µm',
    (value, error) => {
      const grid = byGrid(3, 0.5, value, error);
      const held = heldRemoval(foretold, measured(value, error));
      expect(held.mean).toBeCloseTo(grid.mean, 4);
      expect(held.sd).toBeCloseTo(grid.sd, 4);
      expect(placeInForecast(foretold, measured(value, error))).toBeCloseTo(grid.place, 4);
    },
  );

  test('is the measurement alone where that refutes the forecast', () => {
    const held = heldRemoval(foretold, measured(15, 0.5));
    expect(held.mean).toBeCloseTo(15, 6);
    expect(held.sd).toBeCloseTo(0.5, 6);
  });

  test('is the measurement as a film record keeps it where nothing was foretold', () => {
    expect(heldRemoval(null, measured(10, 1))).toEqual({ mean: 10, sd: 1 });
    expect(heldRemoval(null, measured(0.5, 2))).toEqual({ mean: 0.5, sd: 2 });
    expect(heldRemoval(null, measured(-3, 2))).toEqual({ mean: 0, sd: 2 });
  });

  test('is never less than nothing, and never wilder than its two sources', () => {
    const value = fc.double({ min: -5, max: 15, noNaN: true });
    const error = fc.double({ min: 0.2, max: 4, noNaN: true });
    fc.assert(
      fc.property(value, error, fc.boolean(), (at, wide, planned) => {
        const held = heldRemoval(planned ? foretold : null, measured(at, wide));
        expect(held.mean).toBeGreaterThanOrEqual(0);
        expect(held.sd).toBeLessThanOrEqual(Math.max(wide, 3) + 1e-9);
        expect(Number.isFinite(held.mean + held.sd)).toBe(true);
      }),
    );
  });
});

describe('beside the plan', () => {
  test('a removal is more or less only beyond what both may be off by', () => {
    expect(againstPlan(foretold, measured(3, 0.5))).toBe('as-foretold');
    expect(againstPlan(foretold, measured(9.5, 0.5))).toBe('more');
    expect(againstPlan(foretold, measured(9.5, 3))).toBe('as-foretold');
    expect(againstPlan(foretold, measured(0.3, 0.3))).toBe('less');
    expect(againstPlan(foretold, measured(0.3, 1))).toBe('as-foretold');
  });

  test('a forecast without any spread leaves the doubt to the gauge', () => {
    const sure = { median: um(3), logSd: 0 };
    // Two-sided 5 %: 1.96 standard errors
    expect(againstPlan(sure, measured(4.95, 1))).toBe('as-foretold');
    expect(againstPlan(sure, measured(4.97, 1))).toBe('more');
    expect(againstPlan(sure, measured(1.03, 1))).toBe('less');
  });
});
