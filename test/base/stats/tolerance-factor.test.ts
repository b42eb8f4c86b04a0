import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { logGamma } from '../../../src/base/stats/gamma.ts';
import { normalCdf, normalQuantile } from '../../../src/base/stats/normal.ts';
import { mean, sampleStandardDeviation } from '../../../src/base/stats/summary.ts';
import {
  distributionFreeConfidence,
  distributionFreeCount,
  toleranceFactor,
} from '../../../src/base/stats/tolerance-factor.ts';
import { clearCoatPanels } from '../../reference/thickness-samples.ts';
import {
  achievedConfidences,
  chryseneExample,
  cmh17BasisA,
  cmh17BasisB,
  distributionFreeCounts,
  exactFactors,
} from '../../reference/tolerance-factors.ts';

const shares = (key: string): [number, number] => {
  const [content = '', confidence = ''] = key.split('/');
  return [Number(content) / 100, Number(confidence) / 100];
};

/** Another way to the confidence behind k: Simpson's rule over s with the chi density written out. */
const confidenceBySimpson = (k: number, content: number, count: number, dof: number): number => {
  const z = normalQuantile(content);
  const spread = 1 / Math.sqrt(2 * dof);
  const [from, to, steps] = [Math.max(1e-12, 1 - 9 * spread), 1 + 9 * spread, 20_000];
  const logConstant = Math.log(2) + (dof / 2) * Math.log(dof / 2) - logGamma(dof / 2);
  const at = (s: number): number =>
    normalCdf(Math.sqrt(count) * (k * s - z)) *
    Math.exp(logConstant + (dof - 1) * Math.log(s) - (dof * s * s) / 2);
  const step = (to - from) / steps;
  let sum = at(from) + at(to);
  for (let index = 1; index < steps; index += 1)
    sum += (index % 2 === 1 ? 4 : 2) * at(from + index * step);
  return (sum * step) / 3;
};

describe('a one-sided tolerance factor', () => {
  test.each(Object.entries(exactFactors))('matches the exact table at n = %s', (count, row) => {
    for (const [key, k] of Object.entries(row)) {
      const [content, confidence] = shares(key);
      expect(
        Math.abs(toleranceFactor({ content, confidence, count: Number(count) }) - k),
      ).toBeLessThan(1e-6);
    }
  });
  test('is the 1.8740 (n = 43) and 4.4111 (n = 6) of NIST e-Handbook 7.2.6.3, 90 % content at 99 % confidence', () => {
    expect(toleranceFactor({ content: 0.9, confidence: 0.99, count: 43 })).toBeCloseTo(
      1.87395360586,
      10,
    );
    expect(toleranceFactor({ content: 0.9, confidence: 0.99, count: 43 }).toFixed(4)).toBe(
      '1.8740',
    );
    expect(toleranceFactor({ content: 0.9, confidence: 0.99, count: 6 })).toBeCloseTo(
      4.41108057244,
      10,
    );
    expect(toleranceFactor({ content: 0.9, confidence: 0.99, count: 6 }).toFixed(4)).toBe('4.4111');
  });
  test('agrees with the CMH-17-1G tables to their printed accuracy', () => {
    for (const [count, k] of cmh17BasisB)
      expect(Math.abs(toleranceFactor({ content: 0.9, confidence: 0.95, count }) - k)).toBeLessThan(
        0.002,
      );
    for (const [count, k] of cmh17BasisA)
      expect(
        Math.abs(toleranceFactor({ content: 0.99, confidence: 0.95, count }) - k),
      ).toBeLessThan(0.001);
  });
  test('is 3.051543 for n = 20, 99 % content at 90 % confidence (EnvStats, tolIntNormK)', () => {
    expect(toleranceFactor({ content: 0.99, confidence: 0.9, count: 20 })).toBeCloseTo(3.051543, 6);
  });
  test('gives the upper limit of US EPA 2009 example 17-3', () => {
    const logs = chryseneExample.values.map(Math.log);
    const k = toleranceFactor({ content: 0.95, confidence: 0.95, count: logs.length });
    const limit = mean(logs) + k * sampleStandardDeviation(logs);
    expect(mean(logs)).toBeCloseTo(chryseneExample.meanOfLogs, 7);
    expect(sampleStandardDeviation(logs)).toBeCloseTo(chryseneExample.standardDeviationOfLogs, 7);
    expect(k).toBeCloseTo(chryseneExample.factor, 6);
    expect(limit).toBeCloseTo(chryseneExample.upperLimitOfLogs, 6);
    expect(Math.exp(limit)).toBeCloseTo(chryseneExample.upperLimit, 3);
  });
  test('gives the lower limits of the clear coat on 40 test panels', () => {
    const { values } = clearCoatPanels;
    for (const [content, expected] of clearCoatPanels.lowerLimits) {
      const k = toleranceFactor({ content, confidence: 0.95, count: values.length });
      expect(mean(values) - k * sampleStandardDeviation(values)).toBeCloseTo(expected, 9);
    }
  });
  test('takes degrees of freedom of their own: n = 5, ν = 40, 99/95 (R qt) and σ known', () => {
    expect(toleranceFactor({ content: 0.99, confidence: 0.95, count: 5, dof: 40 })).toBeCloseTo(
      3.2937514457,
      9,
    );
    expect(
      toleranceFactor({ content: 0.99, confidence: 0.95, count: 5, dof: Infinity }),
    ).toBeCloseTo(normalQuantile(0.99) + normalQuantile(0.95) / Math.sqrt(5), 13);
  });
  test.each([
    [2000, 0.999, 1999],
    [2000, 0.95, 1999],
    [500, 0.999, 30],
    [5, 0.95, 9.3],
    [3, 0.99, 4],
  ] as const)(
    'keeps its confidence under another quadrature: n = %d, content %d, ν = %d',
    (count, content, dof) => {
      for (const confidence of [0.9, 0.95, 0.99]) {
        const k = toleranceFactor({ content, confidence, count, dof });
        expect(Math.abs(confidenceBySimpson(k, content, count, dof) - confidence)).toBeLessThan(
          1e-10,
        );
      }
    },
  );
  test('rises with content and confidence and falls with more values or degrees of freedom', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 300 }),
        fc.double({ min: 0.5, max: 0.99, noNaN: true }),
        fc.double({ min: 0.5, max: 0.98, noNaN: true }),
        (count, content, confidence) => {
          const k = toleranceFactor({ content, confidence, count });
          expect(toleranceFactor({ content: content + 0.005, confidence, count })).toBeGreaterThan(
            k,
          );
          expect(
            toleranceFactor({ content, confidence: confidence + 0.01, count }),
          ).toBeGreaterThan(k);
          expect(toleranceFactor({ content, confidence, count: count + 1 })).toBeLessThanOrEqual(
            k + 1e-9,
          );
        },
      ),
      { numRuns: 60 },
    );
  });
  test('is refused for shares outside 0 to 1, for no values and for one value with no degrees of freedom', () => {
    expect(() => toleranceFactor({ content: 1, confidence: 0.95, count: 5 })).toThrow(RangeError);
    expect(() => toleranceFactor({ content: 0.9, confidence: 0, count: 5 })).toThrow(RangeError);
    expect(() => toleranceFactor({ content: 0.9, confidence: 0.95, count: 0 })).toThrow(RangeError);
    expect(() => toleranceFactor({ content: 0.9, confidence: 0.95, count: 1 })).toThrow(RangeError);
  });
});

describe('the smallest of n values as a limit', () => {
  test('needs the published number of values', () => {
    for (const [key, count] of Object.entries(distributionFreeCounts))
      expect(distributionFreeCount(...shares(key))).toBe(count);
  });
  test('reaches the confidence 1 − pⁿ', () => {
    for (const [count, row] of Object.entries(achievedConfidences))
      for (const [index, content] of [0.9, 0.95, 0.99].entries())
        expect(distributionFreeConfidence(content, Number(count))).toBeCloseTo(
          row[index] ?? Number.NaN,
          11,
        );
    expect(distributionFreeConfidence(0.95, 40)).toBeCloseTo(
      clearCoatPanels.confidenceOfSmallest,
      11,
    );
  });
  test('covers 0.8826538 with n = 24 at 95 % (US EPA 2009 example 17-4)', () => {
    expect(distributionFreeConfidence(0.8826538, 24)).toBeCloseTo(0.95, 6);
  });
  test('takes as many values as reach a confidence, however many they are', () => {
    for (let count = 100; count <= 8000; count += 100)
      expect(distributionFreeCount(0.999, distributionFreeConfidence(0.999, count))).toBe(count);
  });
  test('takes the fewest values that suffice', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.999, noNaN: true }),
        fc.double({ min: 0.05, max: 0.999, noNaN: true }),
        (content, confidence) => {
          const count = distributionFreeCount(content, confidence);
          expect(distributionFreeConfidence(content, count)).toBeGreaterThanOrEqual(
            confidence - 1e-8,
          );
          if (count > 1)
            expect(distributionFreeConfidence(content, count - 1)).toBeLessThan(confidence);
        },
      ),
    );
    expect(distributionFreeCount(0.5, 0.75)).toBe(2);
    // In floating point ln(1 − .271)/ln .9 is 3 and a last digit: three values suffice, not four.
    expect(Math.log1p(-0.271) / Math.log(0.9)).toBeGreaterThan(3);
    expect(distributionFreeCount(0.9, 0.271)).toBe(3);
    expect(distributionFreeCount(0.8, 0.488)).toBe(3);
    expect(distributionFreeCount(0.999, 1e-9)).toBe(1);
  });
});
