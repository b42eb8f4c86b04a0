import { describe, expect, test } from 'vitest';
import {
  effectiveDegreesOfFreedom,
  expandedUncertainty,
  standardUncertainty,
} from '../../../src/base/uncertainty.ts';
import { micrometres } from '../../../src/base/units.ts';
import {
  changeOfMeans,
  changeOfPairs,
  type GaugesCompared,
  hasGained,
  meanChange,
} from '../../../src/film/compare/compare-change.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { auto83b, sleep } from '../../reference/mean-differences.ts';

const exact: GaugesCompared = {
  cancels: true,
  before: { ...filmModel.measurement, proportional: 0 },
  after: { ...filmModel.measurement, proportional: 0 },
};
const noMeans = { before: 100, after: 100 };
const um = micrometres;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const sdOf = (values: readonly number[]): number =>
  Math.sqrt(
    values.reduce((sum, value) => sum + (value - mean(values)) ** 2, 0) / (values.length - 1),
  );

const spreadOf = (values: readonly number[]) => ({ sd: um(sdOf(values)), dof: values.length - 1 });
const sampleOf = (values: readonly number[]) => ({
  mean: um(mean(values)),
  count: values.length,
  spread: spreadOf(values),
});

describe('what came off at marked points', () => {
  test('has the paired t interval of Student’s sleep data (Student 1908)', () => {
    const differences = sleep.x.map((value, i) => value - (sleep.y[i] ?? 0));
    const change = changeOfPairs(differences, spreadOf(differences), noMeans, exact);
    expect(change.removed.value).toBeCloseTo(sleep.paired.difference, 12);
    expect(change.removed.value / standardUncertainty(change.removed)).toBeCloseTo(
      sleep.paired.t,
      9,
    );
    expect(effectiveDegreesOfFreedom(change.removed)).toBeCloseTo(sleep.paired.dof, 9);
    expect(change.low).toBeCloseTo(sleep.paired.interval95[0], 9);
    expect(change.high).toBeCloseTo(sleep.paired.interval95[1], 9);
    expect(change.resolved).toBe(false);
  });

  test('of one pair rests on the spread that it is held to have', () => {
    const change = changeOfPairs([3], { sd: um(2), dof: 6 }, noMeans, exact);
    // t at 97.5 % of 6 degrees of freedom: 2.4469 (tables)
    expect(change.high - change.removed.value).toBeCloseTo(2 * 2.4469, 3);
  });
});

describe('what came off by the means of a panel', () => {
  test('has the Welch statistic of Student’s sleep data, its degrees of freedom cut to a whole number', () => {
    const change = changeOfMeans(sampleOf(sleep.x), sampleOf(sleep.y), exact);
    expect(change.removed.value / standardUncertainty(change.removed)).toBeCloseTo(
      sleep.welch.t,
      9,
    );
    expect(effectiveDegreesOfFreedom(change.removed)).toBeCloseTo(sleep.welch.dof, 9);
    // 17.78 is cut to 17, t 2.109816 against 2.102: a little wider than the published interval.
    expect(expandedUncertainty(change.removed)).toBeCloseTo(
      2.109816 * standardUncertainty(change.removed),
      6,
    );
    expect(change.low).toBeLessThan(sleep.welch.interval95[0]);
    expect(change.low).toBeGreaterThan(sleep.welch.interval95[0] - 0.01);
    expect(change.high).toBeGreaterThan(sleep.welch.interval95[1]);
  });

  test('has the Welch statistic of AUTO83B (NIST e-Handbook 1.3.5.3)', () => {
    const of = ({ n, mean: value, sd }: (typeof auto83b)['first' | 'second']) => ({
      mean: um(value),
      count: n,
      spread: { sd: um(sd), dof: n - 1 },
    });
    const change = changeOfMeans(of(auto83b.first), of(auto83b.second), exact);
    expect(change.removed.value / standardUncertainty(change.removed)).toBeCloseTo(
      auto83b.welch.t,
      8,
    );
    expect(effectiveDegreesOfFreedom(change.removed)).toBeCloseTo(auto83b.welch.dof, 7);
    expect(change.low).toBeCloseTo(auto83b.welch.interval95[0], 3);
    expect(change.high).toBeCloseTo(auto83b.welch.interval95[1], 3);
  });
});

describe('what the gauge may be off by', () => {
  const pair = (gauges: GaugesCompared, removed = 5) =>
    changeOfPairs([removed], { sd: um(1), dof: 50 }, { before: 120, after: 120 - removed }, gauges);
  const { measurement } = filmModel;

  test('cancels with one gauge but for its share of the difference', () => {
    const { components } = pair({ cancels: true, before: measurement, after: measurement }).removed;
    // 2 % of 5 µm, rectangular
    expect(components.get('calibration')?.contribution).toBeCloseTo((0.02 * 5) / Math.sqrt(3), 12);
    expect([...components.keys()].sort()).toEqual(['calibration', 'marks']);
  });

  test('is as much of the means of a panel as of the means at its marks', () => {
    const gauges: GaugesCompared = { cancels: false, before: measurement, after: measurement };
    const read = (value: number) => ({ mean: um(value), count: 5, spread: { sd: um(2), dof: 4 } });
    const byGauge = ({ removed }: ReturnType<typeof pair>) =>
      [...removed.components].filter(([source]) => source.startsWith('calibration'));
    const ofMeans = byGauge(changeOfMeans(read(120), read(115), gauges));
    expect(ofMeans).toHaveLength(2);
    expect(ofMeans).toEqual(byGauge(pair(gauges)));
    for (const [, { contribution }] of ofMeans) expect(Math.abs(contribution)).toBeGreaterThan(1);
  });

  test('hides no change where it only grows with it', () => {
    const proportional = { ...measurement, proportional: 0.5 };
    const { detectable, removed } = pair({
      cancels: true,
      before: proportional,
      after: proportional,
    });
    // t at 97.5 % of 50 degrees of freedom is 2.0086 (tables), on the marks' 1 µm alone.
    expect(detectable.half).toBeCloseTo(2.0086, 3);
    expect(expandedUncertainty(removed)).toBeGreaterThan(2.5);
  });

  test('counts in full, before and after, where it does not', () => {
    const { removed, detectable } = pair({
      cancels: false,
      before: measurement,
      after: { ...measurement, fixed: um(2) },
    });
    const part = (name: string) => removed.components.get(name)?.contribution;
    expect(part('calibration-before')).toBeCloseTo((1 + 0.02 * 120) / Math.sqrt(3), 12);
    expect(part('calibration-after')).toBeCloseTo((2 + 0.02 * 115) / Math.sqrt(3), 12);
    // It may hide a change, so a change has to rise above it.
    expect(detectable.half).toBeCloseTo(expandedUncertainty(removed), 9);
  });
});

describe('a change that shows', () => {
  test('is 1.96 and 3.6·s·√(2/n) where the spread is known for certain', () => {
    const spread = { sd: um(1.5 * Math.SQRT2), dof: Number.POSITIVE_INFINITY };
    const { detectable } = changeOfPairs([1, 1, 1], spread, noMeans, exact);
    // s = 1.5 µm with 3 marks: 2.4 and 4.4 µm
    expect(detectable.half).toBeCloseTo(1.96 * 1.5 * Math.sqrt(2 / 3), 3);
    expect(detectable.surely).toBeCloseTo(4.4, 1);
  });

  test('is called seen only where the interval lies above nothing', () => {
    const of = (removed: number) =>
      changeOfPairs([removed], { sd: um(1), dof: 1e9 }, noMeans, exact);
    expect(of(1.95).resolved).toBe(false);
    expect(of(1.97).resolved).toBe(true);
    expect(of(-5).resolved).toBe(false);
  });

  test('is a gain only beyond the chance that is given', () => {
    const of = (removed: number) =>
      changeOfPairs([removed], { sd: um(1), dof: 1e9 }, noMeans, exact);
    // One-sided 1 %: 2.326
    expect(hasGained(of(-2.32), 0.01)).toBe(false);
    expect(hasGained(of(-2.33), 0.01)).toBe(true);
    expect(hasGained(of(5), 0.01)).toBe(false);
  });

  test('without any doubt is a gain as soon as it is under nothing', () => {
    const of = (removed: number) => changeOfPairs([removed], { sd: um(0), dof: 5 }, noMeans, exact);
    expect(hasGained(of(-0.1), 0.01)).toBe(true);
    expect(hasGained(of(0), 0.01)).toBe(false);
  });
});

describe('the mean over panels', () => {
  test('averages what scatters and not what the gauge is off by', () => {
    const gauges = { cancels: false, before: filmModel.measurement, after: filmModel.measurement };
    const change = changeOfPairs([2], { sd: um(3), dof: 9 }, noMeans, gauges);
    const car = meanChange([
      { name: 'roof', weight: 0.5, change },
      { name: 'bonnet', weight: 0.5, change },
    ]);
    const part = (name: string) => car.removed.components.get(name)?.contribution;
    expect(car.removed.value).toBe(2);
    expect(part('marks of roof')).toBe(1.5);
    expect(part('marks of bonnet')).toBe(1.5);
    expect(part('calibration-before')).toBeCloseTo(
      change.removed.components.get('calibration-before')?.contribution ?? 0,
      12,
    );
  });
});
