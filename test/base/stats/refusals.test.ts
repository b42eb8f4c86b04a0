/** What each function refuses, in the words that it refuses it with: each says what it needs. */
import { expect, test } from 'vitest';
import { conformanceProbability } from '../../../src/base/conformance.ts';
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
import { gaugeRr } from '../../../src/base/stats/gauge-rr.ts';
import {
  binomialUpperTail,
  fUpperTail,
  regularisedBeta,
} from '../../../src/base/stats/incomplete-beta.ts';
import { cohenKappa } from '../../../src/base/stats/kappa.ts';
import { solveLinear } from '../../../src/base/stats/linear.ts';
import { differenceInterval, pairedDifference } from '../../../src/base/stats/mean-difference.ts';
import { noncentralTCdf, noncentralTQuantile } from '../../../src/base/stats/noncentral-t.ts';
import { normalCdf, normalDensity, normalQuantile } from '../../../src/base/stats/normal.ts';
import { farthest, generalisedEsd, grubbsCritical } from '../../../src/base/stats/outliers.ts';
import { exactInterval } from '../../../src/base/stats/proportion-interval.ts';
import { gaussLegendre, integrate } from '../../../src/base/stats/quadrature.ts';
import { studentTCdf, studentTQuantile } from '../../../src/base/stats/student-t.ts';
import { mean, sampleVariance } from '../../../src/base/stats/summary.ts';
import {
  distributionFreeConfidence,
  distributionFreeCount,
  toleranceFactor,
} from '../../../src/base/stats/tolerance-factor.ts';
import { splitInTwo } from '../../../src/base/stats/two-groups.ts';
import { fitVariancePrior, moderateVariance } from '../../../src/base/stats/variance-prior.ts';
import { exactly, multiply, uncertain } from '../../../src/base/uncertainty.ts';
import { micrometres } from '../../../src/base/units.ts';

const { NaN: none, POSITIVE_INFINITY: endless } = Number;
const factor = { content: 0.95, confidence: 0.95, count: 5, dof: 10 };

test.each([
  [
    'a standard uncertainty is 0 or more',
    () => conformanceProbability(1, { u: -1, dof: 3 }, { lower: 0, upper: 2 }),
  ],
  [
    'limits run from the lower to the upper',
    () => conformanceProbability(1, { u: 1, dof: 3 }, { lower: 2, upper: 0 }),
  ],
  ['chi-square needs finite degrees of freedom above zero', () => chiSquareCdf(1, 0)],
  ['chi-square needs finite degrees of freedom above zero', () => chiSquareQuantile(0.5, endless)],
  ['chiSquareCdf needs a number', () => chiSquareCdf(none, 1)],
  ['chiSquareQuantile needs a probability', () => chiSquareQuantile(1.5, 1)],
  ['regularisedLowerGamma needs x of zero or more', () => regularisedLowerGamma(1, -1)],
  ['regularisedUpperGamma needs x of zero or more', () => regularisedUpperGamma(1, -1)],
  ['trigamma needs a finite number above zero', () => trigamma(0)],
  ['digamma needs a finite number above zero', () => digamma(-1)],
  ['logGamma needs a finite number above zero', () => logGamma(endless)],
  ['logGammaHalfStep needs a finite number above zero', () => logGammaHalfStep(0)],
  ['stirlingError needs a finite number above zero', () => stirlingError(none)],
  ['regularisedLowerGamma needs a finite number above zero', () => regularisedLowerGamma(0, 1)],
  ['regularisedUpperGamma needs a finite number above zero', () => regularisedUpperGamma(0, 1)],
  ['a test for outliers needs three values or more', () => farthest([1, 2])],
  ['a level must lie between 0 and 1', () => grubbsCritical(5, 1, 2)],
  ['a level must lie between 0 and 1', () => generalisedEsd([1, 2, 3, 4], { most: 1, level: 0 })],
  ['Grubbs’ test needs n of 3 or more', () => grubbsCritical(2, 0.05, 2)],
  ['Grubbs’ test needs n of 3 or more', () => grubbsCritical(4.5, 0.05, 2)],
  [
    'each step must leave two values or more',
    () => generalisedEsd([1, 2, 3, 4], { most: 3, level: 0.05 }),
  ],
  [
    'each step must leave two values or more',
    () => generalisedEsd([1, 2, 3, 4], { most: 0, level: 0.05 }),
  ],
  [
    'each step must leave two values or more',
    () => generalisedEsd([1, 2, 3, 4], { most: 1.5, level: 0.05 }),
  ],
  ['an uncertain value must be finite', () => exactly(micrometres(endless))],
  ['a factor must be finite', () => multiply(exactly(micrometres(1)), endless)],
  [
    'the contribution of gauge must be finite',
    () => uncertain(micrometres(1), { gauge: { contribution: none, dof: 3 } }),
  ],
  [
    'the degrees of freedom of gauge must be above zero',
    () => uncertain(micrometres(1), { gauge: { contribution: 1, dof: 0 } }),
  ],
  ['inverseTrigamma needs a finite number above zero', () => inverseTrigamma(0)],
  [
    'parts, operators and trials must be two or more, and the table even',
    () =>
      gaugeRr([
        [
          [1, 2],
          [1, 2],
        ],
        [
          [1, 2],
          [1, 2],
          [1, 2],
        ],
      ]),
  ],
  ['parts, operators and trials must be two or more, and the table even', () => gaugeRr([])],
  ['F is 0 or more', () => fUpperTail(-1, 2, 3)],
  ['the incomplete beta function needs a, b above 0 and x from 0 to 1', () => fUpperTail(1, 0, 3)],
  [
    'the incomplete beta function needs a, b above 0 and x from 0 to 1',
    () => regularisedBeta(0.5, 0, 1),
  ],
  [
    'the incomplete beta function needs a, b above 0 and x from 0 to 1',
    () => regularisedBeta(0.5, 1, 0),
  ],
  [
    'the incomplete beta function needs a, b above 0 and x from 0 to 1',
    () => regularisedBeta(-0.5, 1, 1),
  ],
  ['a binomial tail needs whole numbers', () => binomialUpperTail(1.5, 3, 0.5)],
  ['a binomial tail needs whole numbers', () => binomialUpperTail(1, -1, 0.5)],
  ['kappa needs a square table of counts that is not empty', () => cohenKappa([])],
  ['kappa needs a square table of counts that is not empty', () => cohenKappa([[1, 2], [3]])],
  ['these equations have no answer', () => solveLinear([[0]], [[1]])],
  ['pairs need lists of equal length', () => pairedDifference([1, 2], [1])],
  [
    'a confidence must lie between 0 and 1',
    () => differenceInterval(pairedDifference([1, 2, 4], [1, 1, 1]), 1),
  ],
  ['noncentral t needs degrees of freedom above zero', () => noncentralTCdf(1, 0, 1)],
  ['noncentral t needs a finite noncentrality', () => noncentralTCdf(1, 3, endless)],
  ['noncentralTCdf needs a number', () => noncentralTCdf(none, 3, 1)],
  ['noncentralTQuantile needs a probability', () => noncentralTQuantile(2, 3, 1)],
  ['normalDensity needs a number', () => normalDensity(none)],
  ['normalCdf needs a number', () => normalCdf(none)],
  ['normalQuantile needs a probability', () => normalQuantile(-0.1)],
  ['a share needs whole numbers, of one trial or more', () => exactInterval(0, 0)],
  ['a share needs whole numbers, of one trial or more', () => exactInterval(1.5, 3)],
  ['gaussLegendre needs a whole number of nodes', () => gaussLegendre(1.5)],
  ['integrate needs finite ends', () => integrate((x) => x, 0, endless)],
  ["Student's t needs degrees of freedom above zero", () => studentTCdf(1, 0)],
  ['studentTCdf needs a number', () => studentTCdf(none, 1)],
  ['studentTQuantile needs a probability', () => studentTQuantile(-0.1, 1)],
  ['a sample of 1 or more values is needed', () => mean([])],
  ['a sample of 2 or more values is needed', () => sampleVariance([1])],
  ['a sample must hold finite numbers only', () => mean([1, none])],
  ['content must lie between 0 and 1', () => toleranceFactor({ ...factor, content: 1 })],
  ['confidence must lie between 0 and 1', () => toleranceFactor({ ...factor, confidence: 0 })],
  ['count must be a whole number above zero', () => toleranceFactor({ ...factor, count: 0 })],
  ['content must lie between 0 and 1', () => distributionFreeConfidence(1, 5)],
  ['count must be a whole number above zero', () => distributionFreeConfidence(0.9, 0.5)],
  ['content must lie between 0 and 1', () => distributionFreeCount(0, 0.95)],
  ['confidence must lie between 0 and 1', () => distributionFreeCount(0.9, 1)],
  ['two groups need two values or more', () => splitInTwo([1])],
  ['a sample must hold finite numbers only', () => splitInTwo([1, none])],
  ['each variance needs its degrees of freedom', () => fitVariancePrior([1, 2], [1])],
  ['variances must not be below zero nor all be zero', () => fitVariancePrior([0, 0], [1, 1])],
  ['variances must not be below zero nor all be zero', () => fitVariancePrior([-1, 2], [1, 1])],
  ['degrees of freedom must be finite and above zero', () => fitVariancePrior([1, 2], [1, 0])],
  [
    'degrees of freedom must be finite and above zero',
    () => fitVariancePrior([1, 2], [1, endless]),
  ],
  [
    'moderateVariance needs a variance and its dof',
    () => moderateVariance(-1, 1, { dof: 1, variance: 1 }),
  ],
  [
    'moderateVariance needs degrees of freedom',
    () => moderateVariance(1, 0, { dof: 0, variance: 1 }),
  ],
])('%s: else it is refused so', (message, ask) => {
  expect(ask).toThrow(new RangeError(message));
});
