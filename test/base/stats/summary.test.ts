import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { studentTQuantile } from '../../../src/base/stats/student-t.ts';
import {
  maximum,
  mean,
  median,
  medianAbsoluteDeviation,
  minimum,
  rootMeanSquare,
  sampleStandardDeviation,
  sampleVariance,
} from '../../../src/base/stats/summary.ts';
import { certifiedSets } from '../../reference/nist-strd.ts';
import { clearCoatPanels, micaWashers } from '../../reference/thickness-samples.ts';

/** Correct significant digits (log relative error, as NIST counts them). */
const digits = (value: number, certified: number): number =>
  value === certified ? 17 : -Math.log10(Math.abs(value - certified) / Math.abs(certified));

const sample = (least: number) =>
  fc.array(fc.integer({ min: -50_000, max: 50_000 }), { minLength: least, maxLength: 40 });

describe('a summary of a sample', () => {
  test.each(certifiedSets)('keeps the certified digits of NIST StRD $name', (set) => {
    expect(digits(mean(set.values), set.mean)).toBeGreaterThan(14.5);
    expect(digits(sampleStandardDeviation(set.values), set.standardDeviation)).toBeGreaterThan(
      set.digits,
    );
  });

  test('describes the clear coat of 40 test panels as R does', () => {
    const { values } = clearCoatPanels;
    expect(mean(values)).toBeCloseTo(clearCoatPanels.mean, 10);
    expect(sampleStandardDeviation(values)).toBeCloseTo(clearCoatPanels.standardDeviation, 10);
    expect(median(values)).toBeCloseTo(clearCoatPanels.median, 12);
    expect(medianAbsoluteDeviation(values)).toBeCloseTo(
      clearCoatPanels.medianAbsoluteDeviation,
      12,
    );
    expect(minimum(values)).toBe(clearCoatPanels.minimum);
    expect(maximum(values)).toBe(clearCoatPanels.maximum);
  });

  test.each([clearCoatPanels, micaWashers])(
    'gives the published 95 % interval of the mean with Student’s t',
    (facts) => {
      const n = facts.values.length;
      const half =
        (studentTQuantile(0.975, n - 1) * sampleStandardDeviation(facts.values)) / Math.sqrt(n);
      expect(mean(facts.values) - half).toBeCloseTo(facts.meanInterval95[0], 9);
      expect(mean(facts.values) + half).toBeCloseTo(facts.meanInterval95[1], 9);
    },
  );

  test('has a root mean square that the mean and the scatter about it make up together', () => {
    expect(rootMeanSquare([3, -4])).toBeCloseTo(Math.sqrt(12.5), 12);
    fc.assert(
      fc.property(sample(2), (values) => {
        const n = values.length;
        const square = mean(values) ** 2 + ((n - 1) / n) * sampleVariance(values);
        expect(rootMeanSquare(values) / (Math.sqrt(square) || 1)).toBeCloseTo(
          square > 0 ? 1 : 0,
          9,
        );
      }),
    );
    expect(() => rootMeanSquare([])).toThrow(RangeError);
  });

  test('does not depend on the order of the values and leaves them alone', () => {
    fc.assert(
      fc.property(sample(2), (values) => {
        const copy = [...values];
        const turned = values.toReversed();
        for (const summarise of [
          mean,
          sampleVariance,
          median,
          medianAbsoluteDeviation,
          minimum,
          maximum,
        ])
          expect(summarise(turned)).toBeCloseTo(summarise(values), 5);
        expect(values).toEqual(copy);
      }),
    );
  });

  test('moves with a shift and stretches with a factor', () => {
    fc.assert(
      fc.property(
        sample(2),
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: -999, max: 999 }),
        (values, factor, shift) => {
          const moved = values.map((value) => factor * value + shift);
          expect(mean(moved)).toBeCloseTo(factor * mean(values) + shift, 6);
          expect(sampleStandardDeviation(moved)).toBeCloseTo(
            factor * sampleStandardDeviation(values),
            6,
          );
          expect(medianAbsoluteDeviation(moved)).toBeCloseTo(
            factor * medianAbsoluteDeviation(values),
            6,
          );
        },
      ),
    );
  });

  test('is refused for no values, for a spread of one, and for values that are not finite', () => {
    for (const summarise of [mean, median, medianAbsoluteDeviation, minimum, maximum]) {
      expect(() => summarise([])).toThrow(RangeError);
      expect(() => summarise([1, Number.NaN, 3])).toThrow(RangeError);
      expect(() => summarise([1, Infinity])).toThrow(RangeError);
      expect(summarise([7])).toBe(summarise === medianAbsoluteDeviation ? 0 : 7);
    }
    expect(() => sampleVariance([5])).toThrow(RangeError);
    expect(() => sampleStandardDeviation([5])).toThrow(RangeError);
  });
});
