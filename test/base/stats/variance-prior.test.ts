import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitVariancePrior, moderateVariance } from '../../../src/base/stats/variance-prior.ts';
import { moderatedVarianceCases } from '../../reference/moderated-variances.ts';

describe('a prior on variances', () => {
  test.each(moderatedVarianceCases)(
    'agrees with R limma: $name',
    ({ variances, dofs, priorDof, priorVariance, moderated }) => {
      const prior = fitVariancePrior(variances, dofs);
      if (priorDof === Infinity) expect(prior.dof).toBe(Infinity);
      else expect(Math.abs(prior.dof / priorDof - 1)).toBeLessThan(1e-10);
      expect(Math.abs(prior.variance / priorVariance - 1)).toBeLessThan(1e-10);
      for (const [index, expected] of moderated.entries()) {
        const value = moderateVariance(
          variances[index] ?? Number.NaN,
          dofs[index] ?? Number.NaN,
          prior,
        );
        expect(Math.abs(value / expected - 1)).toBeLessThan(1e-10);
      }
    },
  );
  const sets = fc.array(
    fc.tuple(fc.double({ min: 0.5, max: 200, noNaN: true }), fc.integer({ min: 1, max: 20 })),
    { minLength: 2, maxLength: 12 },
  );
  test('scales with the square of the unit and does not depend on the order', () => {
    fc.assert(
      fc.property(sets, (pairs) => {
        const variances = pairs.map(([variance]) => variance);
        const dofs = pairs.map(([, dof]) => dof);
        const prior = fitVariancePrior(variances, dofs);
        const scaled = fitVariancePrior(
          variances.map((variance) => 4 * variance),
          dofs,
        );
        const turned = fitVariancePrior(variances.toReversed(), dofs.toReversed());
        expect(scaled.variance / prior.variance).toBeCloseTo(4, 6);
        expect(turned.variance / prior.variance).toBeCloseTo(1, 6);
      }),
    );
  });
  test('scales so too where a variance is nothing, and counts as 1e-5 of the middle one', () => {
    const [variances, dofs] = [
      [0, 4, 9, 5],
      [3, 3, 3, 3],
    ];
    const prior = fitVariancePrior(variances, dofs);
    const scaled = fitVariancePrior(
      variances.map((variance) => 100 * variance),
      dofs,
    );
    expect(scaled.variance / prior.variance).toBeCloseTo(100, 9);
    expect(scaled.dof / prior.dof).toBeCloseTo(1, 9);
    expect(prior).toEqual(fitVariancePrior([4.5e-5, 4, 9, 5], dofs));
  });
  test('pulls every variance towards the prior and past neither', () => {
    fc.assert(
      fc.property(sets, (pairs) => {
        const prior = fitVariancePrior(
          pairs.map(([variance]) => variance),
          pairs.map(([, dof]) => dof),
        );
        for (const [variance, dof] of pairs) {
          const moderated = moderateVariance(variance, dof, prior);
          expect(moderated).toBeGreaterThanOrEqual(
            Math.min(variance, prior.variance) * (1 - 1e-12),
          );
          expect(moderated).toBeLessThanOrEqual(Math.max(variance, prior.variance) * (1 + 1e-12));
        }
      }),
    );
  });
  test('bears a variance of zero, and from one variance claims nothing', () => {
    expect(fitVariancePrior([0, 4, 9, 5], [3, 3, 3, 3]).variance).toBeGreaterThan(0);
    const alone = fitVariancePrior([4], [3]);
    expect(alone).toEqual({ dof: 0, variance: 4 });
    expect(moderateVariance(7, 3, alone)).toBe(7);
  });
  test('is refused for nothing, for zeros only and for lists of unequal length', () => {
    expect(() => fitVariancePrior([], [])).toThrow(RangeError);
    expect(() => fitVariancePrior([0, 0], [2, 2])).toThrow(RangeError);
    expect(() => fitVariancePrior([1, 2], [2])).toThrow(RangeError);
    expect(() => fitVariancePrior([1, 2], [2, 0])).toThrow(RangeError);
  });
});
