import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import {
  adjusted,
  type CheckedShim,
  checkAdjusted,
  fitAdjustment,
} from '../../../src/film/gauge/gauge-adjustment.ts';
import { evenly } from '../../evenly.ts';

const read = (shim: number, mean: number, count = 1) => ({
  shim: micrometres(shim),
  mean: micrometres(mean),
  count,
});

describe('the adjustment of a gauge', () => {
  it('is the inverse of the least-squares line through the shims, and undoes it', () => {
    // readings 2 + 1.03·t exactly
    const adjustment = fitAdjustment([50, 100, 250].map((shim) => read(shim, 2 + 1.03 * shim)));
    expect(adjustment?.slope).toBeCloseTo(1 / 1.03, 12);
    expect(adjustment?.offset).toBeCloseTo(-2 / 1.03, 10);
    if (adjustment === null) throw new Error('a sound line');
    expect(adjusted(micrometres(2 + 1.03 * 120), adjustment)).toBeCloseTo(120, 10);
  });

  it('weighs a shim by its readings, as the normal equations solved by hand do', () => {
    // x: 0 (once, reads 0), 100 (three times, mean 101), 200 (once, reads 201)
    // Sx = 500, Sy = 504, Sxx = 70000, Sxy = 30300 + 40200 = 70500, n = 5
    // β = (5·70500 − 500·504)/(5·70000 − 500²) = 100500/100000 = 1.005; α = (504 − 1.005·500)/5 = .3
    const adjustment = fitAdjustment([read(0, 0), read(100, 101, 3), read(200, 201)]);
    expect(adjustment?.slope).toBeCloseTo(1 / 1.005, 12);
    expect(adjustment?.offset).toBeCloseTo(-0.3 / 1.005, 10);
  });

  it('from one shim is an offset alone', () => {
    expect(fitAdjustment([read(100, 103, 2)])).toEqual({ offset: -3, slope: 1 });
  });

  it('is refused where the line is none of a sound gauge', () => {
    expect(fitAdjustment([read(50, 100), read(100, 100)])).toBeNull(); // flat: slope infinite
    expect(fitAdjustment([read(50, 100), read(100, 50)])).toBeNull(); // falls
    expect(fitAdjustment([read(50, 25), read(100, 45)])).toBeNull(); // shows under half
    expect(fitAdjustment([read(100, 160)])).toBeNull(); // 60 µm off
  });

  it('brings back any sound line from shims read without scatter', () => {
    const sound = fc.record({
      offset: evenly(-20, 20),
      slope: evenly(0.8, 1.25),
      thickness: evenly(0, 500),
    });
    fc.assert(
      fc.property(sound, ({ offset, slope, thickness }) => {
        const shown = (t: number) => micrometres(offset + slope * t);
        const adjustment = fitAdjustment([0, 50, 125, 250].map((shim) => read(shim, shown(shim))));
        if (adjustment === null) throw new Error('a sound line');
        expect(adjusted(shown(thickness), adjustment)).toBeCloseTo(thickness, 8);
      }),
    );
  });
});

describe('a check after adjusting', () => {
  const check = (shim: number, mean: number, expanded: number, permitted: number): CheckedShim => ({
    shim: micrometres(shim),
    mean: micrometres(mean),
    expanded: micrometres(expanded),
    permitted: micrometres(permitted),
  });
  const minusThree = { offset: micrometres(-3), slope: 1 };

  it('decides on what is left of the errors', () => {
    const { verdict, shims } = checkAdjusted(
      [check(50, 53.5, 0.4, 2), check(100, 102.9, 0.4, 3), check(250, 253, 0.4, 6)],
      minusThree,
    );
    expect(verdict).toBe('pass');
    expect(shims.map(({ residual }) => residual)).toEqual([
      expect.closeTo(0.5, 10),
      expect.closeTo(-0.1, 10),
      expect.closeTo(0, 10),
    ]);
  });

  it('is undecided where the line meets every shim whatever they say', () => {
    expect(checkAdjusted([check(100, 103, 0.4, 3)], minusThree).verdict).toBe('undecided');
    expect(
      checkAdjusted([check(50, 53, 0.4, 2), check(100, 103, 0.4, 3)], minusThree).verdict,
    ).toBe('undecided');
  });

  it('fails all the same where the residual is beyond the limit', () => {
    expect(checkAdjusted([check(100, 107, 0.4, 3)], minusThree).verdict).toBe('fail');
  });

  it('lets U grow with the slope and never shrink', () => {
    const [up] = checkAdjusted([check(100, 100, 1, 3)], {
      offset: micrometres(0),
      slope: 1.2,
    }).shims;
    const [down] = checkAdjusted([check(100, 100, 1, 3)], {
      offset: micrometres(0),
      slope: 0.8,
    }).shims;
    expect([up?.expanded, down?.expanded]).toEqual([1.2, 1]);
  });
});
