import { describe, expect, test } from 'vitest';
import { conformanceProbability } from '../../src/base/conformance.ts';

const normal = (u: number) => ({ u, dof: Number.POSITIVE_INFINITY });

describe('the conformance probability of JCGM 106:2012', () => {
  test('of a breakdown voltage of 509.7 V, u 8.6 V, that may not be under 490 V is .99 (7.4)', () => {
    const limits = { lower: 490, upper: Number.POSITIVE_INFINITY };
    expect(conformanceProbability(509.7, normal(8.6), limits)).toBeCloseTo(0.989, 3);
  });

  test('of 13.6, u 1.8, between 12.5 and 16.3 is .6626', () => {
    const limits = { lower: 12.5, upper: 16.3 };
    expect(conformanceProbability(13.6, normal(1.8), limits)).toBeCloseTo(0.6626, 4);
  });

  test('is .95 at the edge of a one-sided guard band of 1.64485·u', () => {
    const limits = { lower: 0, upper: Number.POSITIVE_INFINITY };
    expect(conformanceProbability(1.64485 * 2.5, normal(2.5), limits)).toBeCloseTo(0.95, 6);
  });
});

test('few degrees of freedom make it less sure: t(.95; 4) = 2.131847 from tables', () => {
  const limits = { lower: Number.NEGATIVE_INFINITY, upper: 2.131847 };
  expect(conformanceProbability(0, { u: 1, dof: 4 }, limits)).toBeCloseTo(0.95, 6);
  expect(conformanceProbability(0, normal(1), limits)).toBeGreaterThan(0.98);
});

test('without uncertainty it is certain, and a limit itself conforms', () => {
  const limits = { lower: -3, upper: 3 };
  expect(conformanceProbability(3, normal(0), limits)).toBe(1);
  expect(conformanceProbability(-3, normal(0), limits)).toBe(1);
  expect(conformanceProbability(3.001, normal(0), limits)).toBe(0);
  expect(conformanceProbability(-3.001, normal(0), limits)).toBe(0);
});

test('limits that are one leave room for that value alone, where it is certain', () => {
  const limits = { lower: 2, upper: 2 };
  expect(conformanceProbability(2, normal(0), limits)).toBe(1);
  expect(conformanceProbability(2, normal(1), limits)).toBe(0);
});

test('it is never asked of nonsense', () => {
  const limits = { lower: 0, upper: 1 };
  expect(() => conformanceProbability(0, normal(Number.NaN), limits)).toThrow(RangeError);
  expect(() => conformanceProbability(0, normal(-1), limits)).toThrow(RangeError);
  expect(() => conformanceProbability(0, normal(1), { lower: 1, upper: 0 })).toThrow(RangeError);
});
