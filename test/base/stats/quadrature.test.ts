import { describe, expect, test } from 'vitest';
import { normalCdf, normalDensity } from '../../../src/base/stats/normal.ts';
import {
  expectOverNormal,
  gaussLegendre,
  integrate,
  normalRuleOf,
} from '../../../src/base/stats/quadrature.ts';

describe('a Gauss–Legendre rule', () => {
  test('has the five nodes and weights of Abramowitz & Stegun table 25.4', () => {
    const { nodes, weights } = gaussLegendre(5);
    for (const [index, x] of [
      -0.906179845938664, -0.538469310105683, 0, 0.538469310105683, 0.906179845938664,
    ].entries())
      expect(nodes[index]).toBeCloseTo(x, 14);
    for (const [index, w] of [0.236926885056189, 0.478628670499366, 0.568888888888889].entries())
      expect(weights[index]).toBeCloseTo(w, 14);
  });
  test('is exact for polynomials to degree 2n − 1 and for no more', () => {
    for (const count of [1, 2, 3, 8, 16]) {
      const { nodes, weights } = gaussLegendre(count);
      const power = (degree: number): number =>
        nodes.reduce((sum, x, index) => sum + (weights[index] ?? 0) * x ** degree, 0);
      for (let degree = 0; degree < 2 * count; degree += 1)
        expect(power(degree)).toBeCloseTo(degree % 2 === 0 ? 2 / (degree + 1) : 0, 13);
      if (count < 8) expect(Math.abs(power(2 * count) - 2 / (2 * count + 1))).toBeGreaterThan(1e-4);
    }
  });
  test('is even about the middle, where an odd rule has a node to the last digit', () => {
    for (const count of [1, 2, 3, 4, 5, 16, 21, 31]) {
      const { nodes, weights } = gaussLegendre(count);
      nodes.forEach((node, k) => {
        expect(node + (nodes[count - 1 - k] ?? Number.NaN), `${count}`).toBe(0);
        expect(weights[k]).toBeCloseTo(weights[count - 1 - k] ?? Number.NaN, 13);
        if (k > 0) expect(node).toBeGreaterThan(nodes[k - 1] ?? Number.NaN);
      });
      if (count % 2 === 1) expect(nodes[(count - 1) / 2]).toBe(0);
    }
  });
  test('is worked out once', () => {
    expect(gaussLegendre(11)).toBe(gaussLegendre(11));
    expect(gaussLegendre(11)).not.toBe(gaussLegendre(12));
  });
  test('refuses a number of nodes that is none', () => {
    expect(() => gaussLegendre(0)).toThrow(RangeError);
    expect(() => gaussLegendre(2.5)).toThrow(RangeError);
  });
});

describe('an integral', () => {
  test('of smooth functions is good to the last digits', () => {
    expect(integrate(Math.exp, 0, 1)).toBeCloseTo(Math.E - 1, 14);
    expect(integrate((x) => 1 / (1 + x * x), -4, 4)).toBeCloseTo(2 * Math.atan(4), 12);
    expect(integrate(Math.sin, Math.PI, 0)).toBeCloseTo(-2, 13);
  });
  test('is refused between ends that are not finite', () => {
    expect(() => integrate(Math.exp, 0, Infinity)).toThrow(RangeError);
  });
});

describe('an expectation over the standard normal', () => {
  test('has the moments 1, 0, 1, 0, 3, 0, 15, 0, 105', () => {
    for (const [power, moment] of [1, 0, 1, 0, 3, 0, 15, 0, 105].entries())
      expect(expectOverNormal((z) => z ** power)).toBeCloseTo(moment, 10);
  });
  test('has known closed forms: E Φ(a + bZ) and E exp(σZ)', () => {
    for (const [a, b] of [
      [0.3, 0.7],
      [-2, 1.5],
      [1, 4],
    ] as const)
      expect(expectOverNormal((z) => normalCdf(a + b * z))).toBeCloseTo(
        normalCdf(a / Math.sqrt(1 + b * b)),
        10,
      );
    for (const sigma of [0.15, 0.5, 1])
      expect(expectOverNormal((z) => Math.exp(sigma * z))).toBeCloseTo(
        Math.exp(sigma ** 2 / 2),
        12,
      );
  });
  test('is good to 1e-3 of the change of slope at a kink, wherever it lies', () => {
    for (const c of [0, 0.03, 0.075, 0.1, 1.23]) {
      const exact = normalDensity(c) - c * normalCdf(-c);
      expect(Math.abs(expectOverNormal((z) => Math.max(0, z - c)) - exact)).toBeLessThan(1e-3);
    }
  });
  test('follows a turn when it is told how sharp: E Φ(a + bZ) = Φ(a/√(1 + b²))', () => {
    for (const b of [0.1, 0.5, 1, 2.5, 5, 10, 20, 50, 100])
      for (const a of [-60, -20, 0, 3, 15])
        expect(expectOverNormal((z) => normalCdf(a + b * z), 1 / b)).toBeCloseTo(
          normalCdf(a / Math.hypot(1, b)),
          9,
        );
  });
  test('has steps as fine as the turn wants, an eighth of a halving finer at most', () => {
    // .9 on the scale of φ·f, whose spectrum is that of a normal of width 1/√(1 + 1/width²).
    for (const width of [100, 3, 1, 0.7, 0.1, 0.02]) {
      const step = stepOf(width) * Math.hypot(1, 1 / width);
      expect(step, `${width}`).toBeLessThanOrEqual(0.9);
      expect(step, `${width}`).toBeGreaterThan(0.9 * 2 ** (-1 / 8));
    }
  });
  test('has no finer steps for a jump than 512 of the widest', () => {
    for (const width of [1e-3, 1e-9]) expect(stepOf(width)).toBeCloseTo(0.9 / 512, 12);
    expect(normalRuleOf(1e-9)).toBe(normalRuleOf(1e-3));
  });
  test('is the same each time', () => {
    expect(expectOverNormal(Math.cos)).toBe(expectOverNormal(Math.cos));
  });
});

const stepOf = (width: number): number => {
  const { nodes } = normalRuleOf(width);
  return (nodes[1] ?? Number.NaN) - (nodes[0] ?? Number.NaN);
};
