import { expect, test } from 'vitest';
import { normalQuantile } from '../../../src/base/stats/normal.ts';
import { repeatabilityLimit } from '../../../src/base/stats/repeatability-limit.ts';

test('the repeatability limit is 2.8 standard deviations, as ISO 5725-6 rounds it', () => {
  expect(repeatabilityLimit(1)).toBeCloseTo(2.8, 1);
  expect(repeatabilityLimit(1)).toBeCloseTo(normalQuantile(0.975) * Math.SQRT2, 12);
  expect(repeatabilityLimit(1.5)).toBeCloseTo(1.5 * repeatabilityLimit(1), 12);
});
