import fc from 'fast-check';
import { qchisq, qnorm, qt } from 'lib-r-math.js';
import { describe, expect, test } from 'vitest';
import { chiSquareCdf, chiSquareQuantile } from '../../../src/base/stats/chi-square.ts';
import {
  digamma,
  inverseTrigamma,
  logGamma,
  logGammaHalfStep,
  regularisedLowerGamma,
  regularisedUpperGamma,
  stirlingError,
  trigamma,
} from '../../../src/base/stats/gamma.ts';
import { noncentralTCdf, noncentralTQuantile } from '../../../src/base/stats/noncentral-t.ts';
import {
  fillNormal,
  type NormalTable,
  normalCdf,
  normalDensity,
  normalQuantile,
} from '../../../src/base/stats/normal.ts';
import { studentTCdf, studentTQuantile } from '../../../src/base/stats/student-t.ts';
import { evenly } from '../../evenly.ts';
import {
  digammas,
  logGammas,
  lowerGammas,
  noncentralTProbabilities,
  normalProbabilities,
  normalQuantiles,
  studentTProbabilities,
  studentTQuantiles,
  trigammas,
  upperGammas,
} from '../../reference/distributions.ts';

const relative = (value: number, expected: number): number =>
  Math.abs(value - expected) / (Math.abs(expected) || 1);

test('a table of the normal distribution holds φ and Φ of each of its values', () => {
  fc.assert(
    fc.property(fc.array(evenly(-37, 37), { minLength: 1, maxLength: 9 }), (values) => {
      const { density, below } = tableOf(values);
      expect([...density]).toEqual(values.map(normalDensity));
      for (const [k, z] of values.entries()) {
        expect(relative(below[k] ?? Number.NaN, normalCdf(z))).toBeLessThan(1e-13);
      }
    }),
  );
});

test('a table of the normal distribution is as good at its centre', () => {
  const values = Array.from({ length: 135 }, (_, k) => (k - 67) / 100);
  const { below } = tableOf(values);
  for (const [k, z] of values.entries()) {
    expect(relative(below[k] ?? Number.NaN, normalCdf(z))).toBeLessThan(1e-15);
  }
});

function tableOf(values: readonly number[]): NormalTable {
  const table = {
    z: Float64Array.from(values),
    density: new Float64Array(values.length),
    below: new Float64Array(values.length),
  };
  fillNormal(table);
  return table;
}

describe('the gamma function and its kin', () => {
  test('agree with 40-digit arithmetic', () => {
    for (const [x, value] of logGammas) expect(relative(logGamma(x), value)).toBeLessThan(3e-14);
    for (const [x, value] of digammas) expect(relative(digamma(x), value)).toBeLessThan(1e-14);
    for (const [x, value] of trigammas) expect(relative(trigamma(x), value)).toBeLessThan(1e-14);
    for (const [a, x, p] of lowerGammas)
      expect(relative(regularisedLowerGamma(a, x), p)).toBeLessThan(1e-13);
    for (const [a, x, q] of upperGammas)
      expect(relative(regularisedUpperGamma(a, x), q)).toBeLessThan(1e-13);
  });
  test('have known values: Γ(1/2) = √π, ψ(1) = −γ, ψ′(1) = π²/6', () => {
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 14);
    expect(digamma(1)).toBeCloseTo(-0.5772156649015329, 14);
    expect(trigamma(1)).toBeCloseTo(Math.PI ** 2 / 6, 14);
  });
  test('have helpers that match the differences of logGamma they replace', () => {
    for (const a of [0.3, 2, 14.9, 15, 40]) {
      expect(logGammaHalfStep(a)).toBeCloseTo(logGamma(a + 0.5) - logGamma(a), 12);
      const stirling = (a - 0.5) * Math.log(a) - a + Math.log(2 * Math.PI) / 2;
      expect(stirlingError(a)).toBeCloseTo(logGamma(a) - stirling, 12);
    }
    // Far out they keep digits that the difference has lost: 1/(12a), and ½ ln a less 1/(8a).
    expect(relative(stirlingError(1e9), 1 / 12e9)).toBeLessThan(1e-14);
    expect(logGammaHalfStep(1e9)).toBeCloseTo(Math.log(1e9) / 2 - 1 / 8e9, 14);
  });
  test('have an inverse of trigamma over 20 decades', () => {
    for (const x of [1e-10, 1e-5, 0.1, 1, 7, 1e4, 1e10])
      expect(relative(trigamma(inverseTrigamma(x)), x)).toBeLessThan(1e-13);
  });
  test('are refused outside the domain', () => {
    for (const f of [logGamma, digamma, trigamma, inverseTrigamma])
      for (const x of [0, -1, Number.NaN]) expect(() => f(x)).toThrow(RangeError);
    expect(() => regularisedLowerGamma(1, -1)).toThrow(RangeError);
  });
});

describe('the normal distribution', () => {
  test('has 40-digit probabilities down to z = −37', () => {
    for (const [z, p] of normalProbabilities) expect(relative(normalCdf(z), p)).toBeLessThan(2e-14);
  });
  test('has 40-digit quantiles, and those of R', () => {
    for (const [p, z] of normalQuantiles) {
      // Half a last digit of p, carried to z by the slope 1/φ(z), is in the question and not in the answer.
      const fromRounding = (1.2e-16 * p) / normalDensity(z);
      expect(Math.abs(normalQuantile(p) - z)).toBeLessThan(1e-14 + fromRounding);
    }
    for (const p of [1e-250, 1e-30, 0.0749, 0.0751, 0.3, 0.999])
      expect(relative(normalQuantile(p), qnorm(p))).toBeLessThan(1e-14);
  });
  test('is symmetric, rises, and its quantile undoes it', () => {
    fc.assert(
      fc.property(evenly(-8, 8), (z) => {
        expect(normalCdf(z) + normalCdf(-z)).toBeCloseTo(1, 14);
        expect(normalDensity(z)).toBe(normalDensity(-z));
        expect(normalCdf(z + 0.01)).toBeGreaterThanOrEqual(normalCdf(z));
        if (z < 0) expect(normalQuantile(normalCdf(z))).toBeCloseTo(z, 11);
      }),
    );
  });
  test('has its ends, and refuses what is no probability', () => {
    expect([
      normalQuantile(0),
      normalQuantile(1),
      normalCdf(-Infinity),
      normalCdf(Infinity),
    ]).toEqual([-Infinity, Infinity, 0, 1]);
    for (const p of [-0.1, 1.1, Number.NaN]) expect(() => normalQuantile(p)).toThrow(RangeError);
  });
});

describe('the chi-square distribution', () => {
  test('gives the 1 % point for 42 degrees of freedom of NIST e-Handbook 7.2.6.3, printed 23.650', () => {
    expect(chiSquareQuantile(0.01, 42)).toBeCloseTo(23.65, 3);
  });
  test('gives the quantiles of R and undoes them', () => {
    for (const dof of [0.5, 1, 2, 9, 42, 500])
      for (const p of [0.001, 0.05, 0.5, 0.95, 0.999]) {
        const x = chiSquareQuantile(p, dof);
        expect(relative(x, qchisq(p, dof))).toBeLessThan(1e-9);
        expect(relative(chiSquareCdf(x, dof), p)).toBeLessThan(1e-12);
      }
  });
  test('with two degrees of freedom is exponential', () => {
    for (const p of [1e-9, 0.3, 0.9999])
      expect(relative(chiSquareQuantile(p, 2), -2 * Math.log1p(-p))).toBeLessThan(1e-12);
    // So far up only the upper tail has digits left: 2⁻⁴⁰ of it.
    expect(relative(chiSquareQuantile(1 - 2 ** -40, 2), 80 * Math.LN2)).toBeLessThan(1e-12);
  });
});

describe('Student’s t distribution', () => {
  test.each(Object.entries(studentTQuantiles))(
    'has the tabulated quantiles for %s degrees of freedom',
    (dof, row) => {
      for (const [index, p] of [0.9, 0.95, 0.975, 0.99, 0.995].entries())
        expect(studentTQuantile(p, Number(dof))).toBeCloseTo(row[index] ?? Number.NaN, 8);
    },
  );
  test('has 40-digit probabilities for real degrees of freedom', () => {
    for (const [t, dof, p] of studentTProbabilities)
      expect(relative(studentTCdf(t, dof), p)).toBeLessThan(2e-13);
  });
  test('is Cauchy at one degree of freedom and normal at infinitely many', () => {
    for (const p of [1e-9, 0.001, 0.2, 0.4999]) {
      expect(relative(studentTQuantile(p, 1), -1 / Math.tan(Math.PI * p))).toBeLessThan(2e-12);
    }
    expect(studentTQuantile(0.75, 1)).toBeCloseTo(1, 13);
    expect(studentTQuantile(0.975, Infinity)).toBe(normalQuantile(0.975));
  });
  test('does not jump where the large-ν formula takes over', () => {
    for (const p of [1e-9, 0.01, 0.4]) {
      const [below, at, above] = [4999, 5000, 5001].map((dof) => studentTQuantile(p, dof));
      expect(Math.abs((below ?? 0) - 2 * (at ?? 0) + (above ?? 0))).toBeLessThan(1e-9);
    }
  });
  test('undoes itself and is symmetric for any ν from 0.5 to 10⁶', () => {
    fc.assert(
      fc.property(evenly(1e-6, 0.5), evenly(-0.3, 6), (p, logDof) => {
        const dof = 10 ** logDof;
        const t = studentTQuantile(p, dof);
        expect(relative(studentTCdf(t, dof), p)).toBeLessThan(1e-11);
        expect(studentTCdf(-t, dof)).toBeCloseTo(1 - p, 12);
      }),
    );
  });
});

describe('the noncentral t distribution', () => {
  test('has the probabilities of a 25-digit integration, δ to 140 and ν from 1 to 2000', () => {
    for (const [t, dof, delta, p] of noncentralTProbabilities)
      expect(Math.abs(noncentralTCdf(t, dof, delta) - p)).toBeLessThan(1e-12);
  });
  test('is Student’s t without noncentrality and a shifted normal with infinite ν', () => {
    for (const dof of [1, 2.5, 30, 900])
      expect(noncentralTQuantile(0.95, dof, 0)).toBeCloseTo(studentTQuantile(0.95, dof), 10);
    expect(noncentralTQuantile(0.95, Infinity, 3)).toBeCloseTo(3 + normalQuantile(0.95), 14);
  });
  test('has the quantiles of R where R’s algorithm holds (δ to 30)', () => {
    for (const [p, dof, delta] of [
      [0.95, 4, 3.7],
      [0.99, 42, 8.4037],
      [0.9, 9, 7.4],
      [0.05, 12, 2],
      [0.5, 20, 25],
      [0.95, 99, 16.4],
    ] as const)
      expect(relative(noncentralTQuantile(p, dof, delta), qt(p, dof, delta))).toBeLessThan(1e-8);
  });
  test('obeys P(T ≤ 0) = Φ(−δ) and reflection', () => {
    fc.assert(
      fc.property(evenly(-6, 6), evenly(1, 300), evenly(-9, 9), (delta, dof, t) => {
        expect(noncentralTCdf(0, dof, delta)).toBeCloseTo(normalCdf(-delta), 11);
        expect(noncentralTCdf(t, dof, delta) + noncentralTCdf(-t, dof, -delta)).toBeCloseTo(1, 11);
      }),
    );
  });
  test('undoes its quantile over the whole range of the tool', () => {
    for (const dof of [1, 1.5, 4, 40, 500, 1999, 1e6])
      for (const delta of [-2, 0, 3, 40, 140])
        for (const p of [0.001, 0.05, 0.5, 0.95, 0.999])
          expect(
            Math.abs(noncentralTCdf(noncentralTQuantile(p, dof, delta), dof, delta) - p),
          ).toBeLessThan(1e-11);
  });
  test('has its ends and refuses what is outside the domain', () => {
    expect([noncentralTQuantile(0, 5, 1), noncentralTQuantile(1, 5, 1)]).toEqual([
      -Infinity,
      Infinity,
    ]);
    expect(() => noncentralTQuantile(0.5, 0, 1)).toThrow(RangeError);
    expect(() => noncentralTCdf(1, 5, Number.NaN)).toThrow(RangeError);
  });
});
