/** The ends of each distribution, and what is no value or parameter of it. */
import { describe, expect, test } from 'vitest';
import { chiSquareCdf, chiSquareQuantile } from '../../../src/base/stats/chi-square.ts';
import {
  inverseTrigamma,
  regularisedLowerGamma,
  regularisedUpperGamma,
  trigamma,
} from '../../../src/base/stats/gamma.ts';
import { gaugeRr } from '../../../src/base/stats/gauge-rr.ts';
import { noncentralTCdf, noncentralTQuantile } from '../../../src/base/stats/noncentral-t.ts';
import { fillNormal, normalCdf, normalDensity } from '../../../src/base/stats/normal.ts';
import { halved, solveIncreasing } from '../../../src/base/stats/root.ts';
import { studentTCdf, studentTQuantile } from '../../../src/base/stats/student-t.ts';
import { fitVariancePrior, moderateVariance } from '../../../src/base/stats/variance-prior.ts';

const { NaN: none, POSITIVE_INFINITY: endless, NEGATIVE_INFINITY: below } = Number;

describe('at the ends of its range', () => {
  test('chi-square is 0 up to 0, and its quantiles run from 0 to infinity', () => {
    expect([chiSquareCdf(-1, 3), chiSquareCdf(0, 3)]).toEqual([0, 0]);
    expect([chiSquareQuantile(0, 3), chiSquareQuantile(1, 3)]).toEqual([0, endless]);
  });
  test('the incomplete gamma functions begin and end at 0 and 1', () => {
    expect([0, endless].map((x) => regularisedLowerGamma(2, x))).toEqual([0, 1]);
    expect([0, endless].map((x) => regularisedUpperGamma(2, x))).toEqual([1, 0]);
  });
  test('ψ′ is inverted far out on either side, where its leading term is all there is', () => {
    expect(trigamma(inverseTrigamma(1e-15)) / 1e-15).toBeCloseTo(1, 12);
    expect(trigamma(inverseTrigamma(1e15)) / 1e15).toBeCloseTo(1, 6);
    // ψ′(y) ≈ 1/y² near 0 and 1/y far out.
    expect(1e150 * inverseTrigamma(1e300)).toBeCloseTo(1, 12);
    for (const x of [1e-300, 1.6595869074376649e-298, 5.011872336273247e-297, 3e-250])
      expect(x * inverseTrigamma(x)).toBeCloseTo(1, 12);
  });
  test('the normal distribution has no tail left where no double can tell one', () => {
    expect([normalDensity(41), normalCdf(-39), normalCdf(39)]).toEqual([0, 0, 1]);
    const table = {
      z: Float64Array.of(-39, 39, 41),
      density: new Float64Array(3),
      below: new Float64Array(3),
    };
    fillNormal(table);
    expect([...table.below]).toEqual([0, 1, 1]);
    expect(table.density[2]).toBe(0);
    expect(() => fillNormal({ ...table, z: Float64Array.of(0, Number.NaN, 1) })).toThrow(
      RangeError,
    );
  });
  test('Student’s t and the noncentral one are 0 and 1 at infinity, normal with endless degrees of freedom', () => {
    expect([studentTCdf(below, 4), studentTCdf(endless, 4)]).toEqual([0, 1]);
    expect(studentTQuantile(0.5, 4)).toBe(0);
    expect([studentTQuantile(0, 4), studentTQuantile(1, 4)]).toEqual([below, endless]);
    expect([noncentralTCdf(below, 4, 1), noncentralTCdf(endless, 4, 1)]).toEqual([0, 1]);
    expect(noncentralTCdf(2.5, endless, 1)).toBe(normalCdf(1.5));
  });
});

describe('outside its domain', () => {
  test.each([
    ['chi-square without degrees of freedom', () => chiSquareCdf(1, 0)],
    ['chi-square with endless ones', () => chiSquareCdf(1, endless)],
    ['chi-square of no number', () => chiSquareCdf(none, 1)],
    ['a quantile of chi-square at no probability', () => chiSquareQuantile(1.5, 1)],
    ['the lower gamma function under 0', () => regularisedLowerGamma(1, -1)],
    ['the upper gamma function under 0', () => regularisedUpperGamma(1, -1)],
    ['the normal density of no number', () => normalDensity(none)],
    ['the normal distribution of no number', () => normalCdf(none)],
    ['Student’s t without degrees of freedom', () => studentTCdf(1, 0)],
    ['Student’s t of no number', () => studentTCdf(none, 1)],
    ['a quantile of Student’s t at no probability', () => studentTQuantile(-0.1, 1)],
    ['the noncentral t of no number', () => noncentralTCdf(none, 1, 0)],
    ['a quantile of the noncentral t at no probability', () => noncentralTQuantile(2, 1, 0)],
    ['a moderated variance under 0', () => moderateVariance(-1, 1, { dof: 1, variance: 1 })],
    ['a variance that nothing is known of', () => moderateVariance(1, 0, { dof: 0, variance: 1 })],
    ['gauge R&R of no parts', () => gaugeRr([])],
    ['gauge R&R of parts that nobody read', () => gaugeRr([[], []])],
  ])('%s is refused', (_, ask) => {
    expect(ask).toThrow(RangeError);
  });
});

test('variances that are mostly nothing still fit a prior', () => {
  const { dof, variance } = fitVariancePrior([0, 0, 4], [3, 3, 3]);
  expect(variance).toBeGreaterThan(0);
  expect(dof).toBeGreaterThan(0);
});

test('a root is found where Newton’s step would leave the bracket, and after as many steps as there are', () => {
  const cubeRoot = solveIncreasing((x) => ({ value: x ** 3 - 8, slope: 3 * x ** 2 }), {
    start: 1e-6,
    low: 0,
    high: 1e6,
  });
  expect(cubeRoot).toBeCloseTo(2, 12);
  // A slope that is never the right one: halving has to do it all.
  const halvings = solveIncreasing((x) => ({ value: x - 0.3, slope: -1 }), {
    start: 0.9,
    low: 0,
    high: 1,
  });
  expect(halvings).toBeCloseTo(0.3, 12);
  const unbounded = solveIncreasing((x) => ({ value: x - 0.3, slope: -1 }), { start: 0.9 });
  expect(unbounded).toBeCloseTo(0.3, 12);
  // A slope twenty times too steep: each step goes a twentieth of the way, and the three hundredth is the last.
  let looks = 0;
  const creeping = solveIncreasing(
    (x) => {
      looks += 1;
      return { value: x - 0.3, slope: 20 };
    },
    { start: 0.9 },
  );
  expect(creeping).toBeCloseTo(0.3, 5);
  expect(looks).toBe(300);
});

test('halving comes to rest at the last digit', () => {
  expect(halved((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
});
