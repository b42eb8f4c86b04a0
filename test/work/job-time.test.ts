import { describe, expect, it } from 'vitest';
import { minutes } from '../../src/base/units.ts';
import {
  jobTime,
  jobTimeQuantile,
  spreadShares,
  threePointMoments,
} from '../../src/work/job-time.ts';

const stage = (least: number, likely: number, most: number) => ({
  least: minutes(least),
  likely: minutes(likely),
  most: minutes(most),
});
const timed = (least: number, likely: number, most: number) =>
  threePointMoments(stage(least, likely, most));
const NO_SHARED = { paceLogSd: 0, jobLogSd: 0, aloneShare: 0.5 };
const USUAL = { paceLogSd: 0.15, jobLogSd: 0.15, aloneShare: 0.5 };

describe('the moments of a three-point time (PERT-beta)', () => {
  it('are (a + 4m + b)/6 and (μ − a)(b − μ)/7', () => {
    // 10, 15, 30: μ = 100/6 = 16.6667; σ² = 6.6667 · 13.3333/7 = 12.6984
    const { mean, variance } = threePointMoments(stage(10, 15, 30));
    expect(mean).toBeCloseTo(16.6667, 4);
    expect(variance).toBeCloseTo(12.6984, 4);
  });

  it('are those of the beta distribution with shapes 1 + 4(m − a)/(b − a) and 1 + 4(b − m)/(b − a)', () => {
    // Midpoint rule on the density x^(α−1)·(1−x)^(β−1), α = 2, β = 4 for 10, 15, 30.
    const [alpha, beta] = [2, 4];
    let [mass, first, second] = [0, 0, 0];
    for (let i = 0; i < 20_000; i += 1) {
      const x = (i + 0.5) / 20_000;
      const density = x ** (alpha - 1) * (1 - x) ** (beta - 1);
      const time = 10 + 20 * x;
      mass += density;
      first += density * time;
      second += density * time ** 2;
    }
    const { mean, variance } = threePointMoments(stage(10, 15, 30));
    expect(mean).toBeCloseTo(first / mass, 5);
    expect(variance).toBeCloseTo(second / mass - (first / mass) ** 2, 4);
  });

  it('of a certain time are itself and nothing', () => {
    expect(threePointMoments(stage(20, 20, 20))).toEqual({ mean: 20, variance: 0 });
  });
});

describe('the time of a whole job', () => {
  it('has the mean of its stages together and half of their variance, as a lognormal', () => {
    const stages = [timed(10, 15, 30), timed(20, 35, 60)];
    const mean = 100 / 6 + 220 / 6;
    // Half of (μ − a)(b − μ)/7 of each: 12.6984/2 + (16.6667 · 23.3333/7 = 55.5556)/2 = 34.1270
    const time = jobTime(stages, NO_SHARED);
    expect(time.mean).toBeCloseTo(mean, 9);
    const variance = time.median ** 2 * Math.exp(time.logSd ** 2) * (Math.exp(time.logSd ** 2) - 1);
    expect(variance).toBeCloseTo(34.127, 3);
    expect(time.median * Math.exp(time.logSd ** 2 / 2)).toBeCloseTo(mean, 9);
  });

  it('adds the shared pace and the noise of the job on the log scale', () => {
    const time = jobTime([timed(20, 20, 20)], USUAL);
    expect(time.logSd).toBeCloseTo(Math.hypot(0.15, 0.15), 12);
    expect(time.median).toBeCloseTo(20 * Math.exp(-(0.15 ** 2)), 12);
  });

  it('spreads less, in proportion, over many stages than over one', () => {
    const one = jobTime([timed(10, 15, 30)], NO_SHARED);
    const many = jobTime(
      Array.from({ length: 16 }, () => timed(10, 15, 30)),
      NO_SHARED,
    );
    expect(many.logSd / one.logSd).toBeCloseTo(1 / 4, 1);
  });

  it('of no stages is nothing', () => {
    expect(jobTime([], USUAL)).toEqual({
      mean: 0,
      median: 0,
      logSd: 0,
    });
  });

  it('has quantiles: the median in the middle, P80 at +.8416 and P95 at +1.6449 of its ln-SD', () => {
    const time = jobTime([timed(20, 20, 20)], USUAL);
    expect(jobTimeQuantile(time, 0.5)).toBeCloseTo(time.median, 9);
    expect(jobTimeQuantile(time, 0.8)).toBeCloseTo(
      time.median * Math.exp(0.8416212 * time.logSd),
      6,
    );
    expect(jobTimeQuantile(time, 0.95)).toBeCloseTo(
      time.median * Math.exp(1.6448536 * time.logSd),
      6,
    );
  });
});

describe('where the spread of a job comes from', () => {
  const stages = [timed(10, 15, 30), timed(20, 35, 60), timed(60, 60, 60)];

  it('is told in full by the stages, and in full by its grounds', () => {
    const { stages: byStage, own, pace, job } = spreadShares(stages, USUAL);
    expect(byStage.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(own + pace + job).toBeCloseTo(1, 12);
  });

  it('is, stage by stage, its part in the variance of the whole', () => {
    // S = 16.6667 + 36.6667 + 60 = 113.3333; half the variances 6.3492 and 27.7778, none of the third.
    // q = 2 · .15² = .045, e^q = 1.046028. Cov of the third = 60 · 113.3333 · .046028 = 312.99;
    // of the first: (6.3492 + 1888.89) · 1.046028 − 1888.89 = 93.58; of the second 220.32.
    const { stages: byStage } = spreadShares(stages, USUAL);
    const whole = 93.58 + 220.32 + 312.99;
    expect(byStage[0]).toBeCloseTo(93.58 / whole, 4);
    expect(byStage[1]).toBeCloseTo(220.32 / whole, 4);
    expect(byStage[2]).toBeCloseTo(312.99 / whole, 4);
  });

  it('is the stages’ own where there is neither pace nor job', () => {
    const { stages: byStage, own } = spreadShares(stages, NO_SHARED);
    expect(own).toBe(1);
    expect(byStage[2]).toBe(0);
  });

  it('is the pace the less, the better the shop knows it', () => {
    const known = { overall: { mean: 0.1, sd: 0.03 }, stages: new Map() };
    expect(spreadShares(stages, USUAL, known).pace).toBeLessThan(spreadShares(stages, USUAL).pace);
  });

  it('is nowhere in a job of no time', () => {
    expect(spreadShares([], USUAL)).toEqual({ stages: [], own: 0, pace: 0, job: 0 });
    const idle = { stages: [0, 0], own: 0, pace: 0, job: 0 };
    expect(spreadShares([timed(0, 0, 0), timed(0, 0, 0)], USUAL)).toEqual(idle);
  });
});

describe('the time of a job in a shop that knows its pace', () => {
  const known = { overall: { mean: Math.log(1.2), sd: 0.05 }, stages: new Map() };
  const usual = jobTime([timed(60, 90, 180)], USUAL);
  const own = jobTime([timed(60, 90, 180)], USUAL, known);

  it('lies in the middle by so much above the estimate', () => {
    expect(own.median).toBeCloseTo(1.2 * usual.median, 9);
  });

  it('spreads by what is still not known of the pace', () => {
    expect(own.logSd ** 2).toBeCloseTo(usual.logSd ** 2 - 0.15 ** 2 + 0.05 ** 2, 12);
    expect(own.mean).toBeCloseTo(own.median * Math.exp(own.logSd ** 2 / 2), 9);
  });
});
