import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { halved, type Slope, solveIncreasing } from '../../../src/base/stats/root.ts';
import { evenly } from '../../evenly.ts';

/** Rises everywhere, and so little far from `middle` that its slope is lost there. */
const steep =
  (middle: number) =>
  (x: number): Slope => ({
    value: Math.tanh(x - middle),
    slope: Math.abs(x - middle) > 300 ? 0 : 1 / Math.cosh(x - middle) ** 2,
  });

describe('the root of an increasing function', () => {
  test('is found from either side where the slope at the start is lost', () => {
    for (const start of [-1000, -310, 0, 310, 1000, 12_345])
      expect(solveIncreasing(steep(3), { start }), `${start}`).toBeCloseTo(3, 12);
  });

  test('is found where the slope points far beyond it', () => {
    // x³ − 8: from near 0 Newton's step is enormous.
    const cube = (x: number): Slope => ({ value: x ** 3 - 8, slope: 3 * x ** 2 });
    for (const start of [0, 1e-9, -1e-4, 1e-3, 1e6, -1e6])
      expect(solveIncreasing(cube, { start }), `${start}`).toBeCloseTo(2, 12);
  });

  test('is looked for on its own side of the start, by steps that double', () => {
    const asked: number[] = [];
    const line =
      (root: number) =>
      (x: number): Slope => {
        asked.push(x);
        return { value: 1e-9 * (x - root), slope: 1e-9 };
      };
    expect(solveIncreasing(line(1e6), { start: 0 })).toBeCloseTo(1e6, 6);
    expect(Math.min(...asked)).toBe(0);
    expect(asked.slice(0, 5)).toEqual([0, 1, 3, 7, 15]);
    asked.length = 0;
    expect(solveIncreasing(line(-1e6), { start: 0 })).toBeCloseTo(-1e6, 6);
    expect(Math.max(...asked)).toBe(0);
    expect(asked.slice(0, 5)).toEqual([0, -1, -3, -7, -15]);
  });

  test('is found within limits that the function is asked in alone', () => {
    const asked: number[] = [];
    const log = (x: number): Slope => {
      asked.push(x);
      return { value: Math.log(x), slope: 1 / x };
    };
    expect(solveIncreasing(log, { start: 50, low: 0, high: 100 })).toBeCloseTo(1, 12);
    expect(Math.min(...asked)).toBeGreaterThan(0);
    expect(Math.max(...asked)).toBeLessThanOrEqual(100);
  });

  test('is found in fewer looks where the second derivative is told', () => {
    const looks = (isCurved: boolean): number => {
      let count = 0;
      const exp = (x: number): Slope => {
        count += 1;
        const value = Math.exp(x);
        return { value: value - 50, slope: value, ...(isCurved ? { curvature: value } : {}) };
      };
      expect(solveIncreasing(exp, { start: 2 })).toBeCloseTo(Math.log(50), 12);
      return count;
    };
    expect(looks(true)).toBeLessThan(looks(false));
  });

  test('is the end of Halley’s first step on a hyperbola', () => {
    const asked: number[] = [];
    const hyperbola = (x: number): Slope => {
      asked.push(x);
      return { value: (x - 3) / (x + 1), slope: 4 / (x + 1) ** 2, curvature: -8 / (x + 1) ** 3 };
    };
    expect(solveIncreasing(hyperbola, { start: 0, low: -1 })).toBe(3);
    expect(asked).toEqual([0, 3]);
  });

  test('is the end of Newton’s first step on a straight line, with both limits, one or none', () => {
    for (const limits of [{}, { low: 0 }, { high: 100 }, { low: 0, high: 100 }]) {
      const asked: number[] = [];
      const line = (x: number): Slope => {
        asked.push(x);
        return { value: x - 75, slope: 1 };
      };
      expect(solveIncreasing(line, { start: 10, ...limits })).toBe(75);
      expect(asked).toEqual([10, 75]);
    }
  });

  test('is as near as is asked for, and no nearer', () => {
    const steps = (absolute: number): number => {
      let count = 0;
      const cube = (x: number): Slope => {
        count += 1;
        return { value: x ** 3 - 8, slope: 3 * x ** 2 };
      };
      expect(
        Math.abs(solveIncreasing(cube, { start: 50, relative: 0, absolute }) - 2),
      ).toBeLessThan(absolute);
      return count;
    };
    expect(steps(1e-1)).toBeLessThan(steps(1e-9));
  });

  test('is told to the last digit by halving alone, after as many looks as there are digits', () => {
    let looks = 0;
    const unhelpful = (x: number): Slope => {
      looks += 1;
      return { value: x - 0.3, slope: 0 };
    };
    expect(solveIncreasing(unhelpful, { start: 0.9, low: 0, high: 1 })).toBeCloseTo(0.3, 15);
    expect(looks).toBeLessThan(60);
  });

  test('is the one of any straight line, wherever the search begins', () => {
    const root = evenly(-1e6, 1e6);
    const slope = evenly(1e-3, 1e3);
    fc.assert(
      fc.property(root, slope, root, (wanted, rise, start) => {
        const line = (x: number): Slope => ({ value: rise * (x - wanted), slope: rise });
        const found = solveIncreasing(line, { start });
        expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(wanted)));
      }),
    );
  });
});

describe('a root by halving', () => {
  test('is found to the last digit', () => {
    expect(halved((x) => x ** 2 - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(halved((x) => x, -1, 3)).toBeCloseTo(0, 300);
  });

  test('is the end on whose other side it would lie', () => {
    expect(halved(() => 1, 0, 1)).toBeCloseTo(0, 300);
    expect(halved(() => -1, 0, 1)).toBeCloseTo(1, 15);
  });
});
