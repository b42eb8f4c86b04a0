/**
 * How often the bound x̄ − k·s̃ leaves at least 95 % of a panel's face above it, with the spread moderated
 * by the panels of the same car. Stated: 95 %. Where panels vary unequally the estimated prior leaves .93 to
 * .98; where they vary alike the cap on the prior's weight errs to the safe side, by up to .984. The thinnest
 * credible film subtracts the gauge's error from it and goes no higher than the smallest point: it covers more.
 */
import { describe, expect, test } from 'vitest';
import { normalCdf } from '../../src/base/stats/normal.ts';
import { mean } from '../../src/base/stats/summary.ts';
import { toleranceFactor } from '../../src/base/stats/tolerance-factor.ts';
import { micrometres } from '../../src/base/units.ts';
import { moderatedSpread, ownSpread, spreadPrior } from '../../src/film/spread.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';

const SPREAD = {
  priorDofCap: 6,
  fallbackShare: 0.05,
  fallbackLeast: micrometres(4),
  leastPanels: 3,
  leastShareOfMedian: 0.1,
};
const CARS = 1000;
const PANELS = 11;

type Sds = (random: () => number) => number;
const equal: Sds = () => 5;
/** As unequal as a shop sees them: SDs lognormal about 5 with a factor of 1.35. */
const unequal: Sds = (random) => 5 * Math.exp(0.3 * normal(random));

function coverage(n: number, sds: Sds): number {
  const random = seededRandom(5_300 + n);
  let covered = 0;
  for (let car = 0; car < CARS; car += 1) {
    const panels = Array.from({ length: PANELS }, () => {
      const sd = sds(random);
      const centre = 112 + 8 * normal(random);
      const values = Array.from({ length: n }, () => micrometres(centre + sd * normal(random)));
      return { sd, centre, values };
    });
    const own = panels.map(({ values }) => ownSpread(values, 0));
    const prior = spreadPrior(
      own,
      panels.map(({ values }) => mean(values)),
      SPREAD,
    );
    for (const [i, { sd, centre, values }] of panels.entries()) {
      const spread = moderatedSpread(own[i] ?? { variance: 0, sample: 0, dof: 0 }, prior);
      const k = toleranceFactor({ content: 0.95, confidence: 0.95, count: n, dof: spread.dof });
      const bound = mean(values) - k * spread.sd;
      if (normalCdf((centre - bound) / sd) >= 0.95) covered += 1;
    }
  }
  return covered / (CARS * PANELS);
}

describe.each([3, 5, 9])('with %d points a panel', (n) => {
  test('the bound covers .95 to .985 where all panels vary alike', () => {
    const share = coverage(n, equal);
    expect(share).toBeGreaterThanOrEqual(0.95);
    expect(share).toBeLessThanOrEqual(0.985);
  });
  test('the bound covers .93 to .98 where panels vary unequally', () => {
    const share = coverage(n, unequal);
    expect(share).toBeGreaterThanOrEqual(0.93);
    expect(share).toBeLessThanOrEqual(0.98);
  });
});
