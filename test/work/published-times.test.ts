import { describe, expect, it } from 'vitest';
import { minutes } from '../../src/base/units.ts';
import { jobTime, jobTimeQuantile, threePointMoments } from '../../src/work/job-time.ts';
import { lognormalSums, threePointTimes } from '../reference/three-point-times.ts';

describe('times against published values', () => {
  it.each(threePointTimes)('$times has the mean and SD of the PERT-beta', ({ times, mean, sd }) => {
    const [least, likely, most] = times;
    const moments = threePointMoments({
      least: minutes(least),
      likely: minutes(likely),
      most: minutes(most),
    });
    expect(moments.mean).toBeCloseTo(mean, 8);
    expect(Math.sqrt(moments.variance)).toBeCloseTo(sd, 8);
  });

  it.each(lognormalSums)(
    'a sum of mean $mean is Fenton’s lognormal',
    ({ mean, variance, ...is }) => {
      const time = jobTime([{ mean, variance }], { paceLogSd: 0, jobLogSd: 0, aloneShare: 1 });
      expect(Math.log(time.median)).toBeCloseTo(is.mu, 11);
      expect(time.logSd).toBeCloseTo(is.sigma, 11);
      // The exact quantiles of such a sum lie within .7 % of the lognormal’s.
      expect(jobTimeQuantile(time, 0.5) / is.exact.p50).toBeCloseTo(1, 2);
      expect(Math.abs(jobTimeQuantile(time, 0.9) / is.exact.p90 - 1)).toBeLessThan(0.007);
      expect(Math.abs(jobTimeQuantile(time, 0.95) / is.exact.p95 - 1)).toBeLessThan(0.007);
    },
  );
});
