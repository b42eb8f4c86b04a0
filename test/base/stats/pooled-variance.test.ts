import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pooledVariance, pooledVarianceOf } from '../../../src/base/stats/pooled-variance.ts';
import { sampleVariance } from '../../../src/base/stats/summary.ts';
import { evenly } from '../../evenly.ts';

describe('the variance of several samples together', () => {
  it('is their squares about their own means over all degrees of freedom', () => {
    // 2 about 2 (1 + 0 + 1) on 2, 8 about 12 (4 + 4) on 1: (2 + 8)/3
    expect(
      pooledVarianceOf([
        [1, 2, 3],
        [10, 14],
      ]),
    ).toEqual({ variance: 10 / 3, dof: 3 });
  });
  it('is that of one sample where there is one, whatever stands beside it alone', () => {
    const values = [1, 4, 4, 9];
    expect(pooledVarianceOf([values, [50], []])).toEqual({
      variance: sampleVariance(values),
      dof: 3,
    });
  });
  it('is not known from values that stand alone, nor from none', () => {
    expect(pooledVarianceOf([[1], [2]])).toBeUndefined();
    expect(pooledVarianceOf([])).toBeUndefined();
    expect(pooledVariance([{ variance: 3, dof: 0 }])).toBeUndefined();
  });
  it('weighs each by its degrees of freedom, and lies between the least and the most', () => {
    const one = fc.record({ variance: evenly(0, 50), dof: fc.integer({ min: 1, max: 40 }) });
    fc.assert(
      fc.property(fc.array(one, { minLength: 1, maxLength: 8 }), (samples) => {
        const { variance = Number.NaN, dof } = pooledVariance(samples) ?? {};
        const all = samples.map((sample) => sample.variance);
        expect(dof).toBe(samples.reduce((sum, sample) => sum + sample.dof, 0));
        expect(variance).toBeGreaterThanOrEqual(Math.min(...all) - 1e-9);
        expect(variance).toBeLessThanOrEqual(Math.max(...all) + 1e-9);
      }),
    );
  });
});
