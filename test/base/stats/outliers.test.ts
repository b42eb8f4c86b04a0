import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { farthest, generalisedEsd, grubbsCritical } from '../../../src/base/stats/outliers.ts';
import {
  grubbsTable,
  naphthalene,
  rosner,
  uraniumIsotopes,
} from '../../reference/outlier-examples.ts';

describe('Grubbs’ test', () => {
  test('gives the distance and critical values of NIST e-Handbook 1.3.5.17.1', () => {
    const { values, distance, criticalOneSided, criticalTwoSided, outlier, printed } =
      uraniumIsotopes;
    const extreme = farthest(values);
    expect(values[extreme.index]).toBe(outlier);
    expect(extreme.distance).toBeCloseTo(distance, 10);
    expect(Math.trunc(extreme.distance * 1e4) / 1e4).toBe(printed.distance);
    expect(grubbsCritical(8, 0.05, 1)).toBeCloseTo(criticalOneSided, 10);
    expect(Number(grubbsCritical(8, 0.05, 1).toFixed(3))).toBe(printed.criticalOneSided);
    expect(grubbsCritical(8, 0.05, 2)).toBeCloseTo(criticalTwoSided, 9);
  });
  test.each(grubbsTable)('gives the tabled critical values at n = %d', (n, one, two, strict) => {
    expect(grubbsCritical(n, 0.05, 1)).toBeCloseTo(one, 8);
    expect(grubbsCritical(n, 0.05, 2)).toBeCloseTo(two, 8);
    expect(grubbsCritical(n, 0.01, 2)).toBeCloseTo(strict, 8);
  });
  test('sees no distance in a sample without spread', () => {
    expect(farthest([5, 5, 5]).distance).toBe(0);
  });
  test('refuses what it cannot work on', () => {
    expect(() => farthest([1, 2])).toThrow(RangeError);
    expect(() => farthest([1, 2, Number.NaN])).toThrow(RangeError);
    expect(() => grubbsCritical(2, 0.05, 1)).toThrow(RangeError);
    expect(() => grubbsCritical(5, 0, 1)).toThrow(RangeError);
  });
});

describe('the generalised ESD test', () => {
  test('gives every step of Rosner’s example (NIST e-Handbook 1.3.5.17.3)', () => {
    const { steps } = generalisedEsd(rosner.values, { most: rosner.most, level: 0.05 });
    expect(steps.map(({ index }) => rosner.values[index])).toEqual(rosner.removed);
    for (const [i, { distance, critical }] of steps.entries()) {
      expect(distance).toBeCloseTo(rosner.distances[i] ?? 0, 7);
      expect(critical).toBeCloseTo(rosner.criticals[i] ?? 0, 7);
      expect(Math.abs(distance - (rosner.printedDistances[i] ?? 0))).toBeLessThan(1e-3);
      expect(Math.abs(critical - (rosner.printedCriticals[i] ?? 0))).toBeLessThan(1e-3);
    }
  });
  test('takes the last step that passes: three outliers, though the first two do not', () => {
    const { steps, outliers } = generalisedEsd(rosner.values, { most: rosner.most, level: 0.05 });
    expect(steps.slice(0, 3).map(({ distance, critical }) => distance > critical)).toEqual([
      false,
      false,
      true,
    ]);
    expect(outliers.map((index) => rosner.values[index])).toEqual(rosner.outliers);
  });
  test('gives US EPA 2009 example 12-4', () => {
    const { steps, outliers } = generalisedEsd(naphthalene.values, { most: 2, level: 0.05 });
    for (const [i, { distance, critical }] of steps.entries()) {
      expect(distance).toBeCloseTo(naphthalene.distances[i] ?? 0, 6);
      expect(critical).toBeCloseTo(naphthalene.criticals[i] ?? 0, 6);
    }
    expect(outliers.map((index) => naphthalene.values[index])).toEqual(naphthalene.outliers);
  });
  test('flags the same values in any order and on any scale', () => {
    const sample = fc.array(fc.integer({ min: 50, max: 200 }), { minLength: 10, maxLength: 30 });
    fc.assert(
      fc.property(sample, fc.integer({ min: 1, max: 9 }), (values, turn) => {
        const flagged = (all: readonly number[]) =>
          generalisedEsd(all, { most: 2, level: 0.05 })
            .outliers.map((k) => all[k])
            .sort();
        const turned = [...values.slice(turn), ...values.slice(0, turn)];
        const scaled = values.map((value) => 2 * value);
        expect(flagged(turned)).toEqual(flagged(values));
        expect(flagged(scaled)).toEqual(
          flagged(values)
            .map((value) => 2 * (value ?? 0))
            .sort(),
        );
      }),
    );
  });
  test('refuses to take away more than leaves two values', () => {
    expect(() => generalisedEsd([1, 2, 3, 4], { most: 3, level: 0.05 })).toThrow(RangeError);
    expect(() => generalisedEsd([1, 2, 3, 4], { most: 0, level: 0.05 })).toThrow(RangeError);
  });
});
