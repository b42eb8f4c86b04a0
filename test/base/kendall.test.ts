/** Kendall’s S: published variances without correlation, and drawn ones with it. */
import { describe, expect, test } from 'vitest';
import { kendallVariance } from '../../src/base/stats/kendall.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';

describe('the variance of Kendall’s S', () => {
  test('without correlation is n(n − 1)(2n + 5)/18 (Kendall 1938)', () => {
    expect(kendallVariance(2)).toBeCloseTo(1, 12);
    expect(kendallVariance(4)).toBeCloseTo(8.6667, 4);
    expect(kendallVariance(10)).toBeCloseTo(125, 10);
  });

  test('of two pairs is that of a coin, and nothing where all lie in one order', () => {
    expect(kendallVariance(2, 0.6)).toBeCloseTo(1 - 0.36, 12);
    for (const count of [2, 5, 9]) {
      expect(kendallVariance(count, 1)).toBeCloseTo(0, 10);
      expect(kendallVariance(count, 1)).toBeGreaterThanOrEqual(0);
    }
    expect(kendallVariance(5, -0.4)).toBeCloseTo(kendallVariance(5, 0.4), 12);
  });

  test('in a normal law is what drawn values show', () => {
    const random = seededRandom(1_938);
    const [count, rho, draws] = [5, 0.7, 40_000];
    const drawn = Array.from({ length: draws }, () => {
      const pairs = Array.from({ length: count }, () => {
        const x = normal(random);
        return [x, rho * x + Math.sqrt(1 - rho ** 2) * normal(random)] as const;
      });
      return pairs
        .flatMap(([x, y], i) =>
          pairs.slice(i + 1).map((other) => Math.sign(x - other[0]) * Math.sign(y - other[1])),
        )
        .reduce((sum, one) => sum + one, 0);
    });
    const tau = (2 / Math.PI) * Math.asin(rho);
    const centre = drawn.reduce((sum, one) => sum + one, 0) / draws;
    const variance = drawn.reduce((sum, one) => sum + (one - centre) ** 2, 0) / (draws - 1);
    expect(centre).toBeCloseTo(10 * tau, 1);
    // Within four standard errors of a drawn variance, about 1 %.
    expect(variance / kendallVariance(count, tau)).toBeGreaterThan(0.96);
    expect(variance / kendallVariance(count, tau)).toBeLessThan(1.04);
  });
});
