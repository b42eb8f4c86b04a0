import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import {
  type PairedPoints,
  type ScatterRules,
  scatterOfDifferences,
} from '../../../src/film/compare/difference-scatter.ts';
import { filmModel } from '../../../src/formats/models.ts';

/** Points that read 100 after, on a display of whole micrometres, and so much more before. */
const panel = (id: string, ...off: readonly number[]): PairedPoints => ({
  id,
  pairs: off.map((one, i) => ({
    point: `${i + 1}`,
    before: micrometres(100 + one),
    after: micrometres(100),
    repeats: { before: 1, after: 1 },
  })),
});

const { measurement, spread } = filmModel;
const rules = (leastDof = measurement.repeatabilityLeastDof): ScatterRules => ({
  model: {
    ...filmModel,
    measurement: {
      ...measurement,
      repeatability: micrometres(1.5),
      repeatabilityLeastDof: leastDof,
    },
    spread: { ...spread, leastPanels: 3 },
  },
  scatterDof: 8,
});

/** 2·(1.5² + 1²/12): two readings of a gauge of 1.5 µm, each rounded to 1 µm. */
const BY_GAUGE = 2 * (2.25 + 1 / 12);
const held = { variance: BY_GAUGE, dof: 8, dofCeiling: Number.POSITIVE_INFINITY };

describe('how what came off scatters over a panel', () => {
  test('is as the gauge makes it, where fewer than three panels tell it', () => {
    const two = [panel('a', 1, 3, 5), panel('b', 2, 4, 9)];
    const { prior, least } = scatterOfDifferences(two, rules());
    expect(prior).toEqual({ ...held, variance: expect.closeTo(BY_GAUGE, 9) });
    // Rounding alone, of both readings.
    expect(least).toBeCloseTo(2 / 12, 9);
    const untold = [panel('c', 1, 9), panel('d', 4), panel('e')];
    expect(scatterOfDifferences([...two, ...untold], rules()).prior.dof).toBe(8);
    // However many points the two have.
    const many = [panel('a', 1, 3, 5, 3), panel('b', 2, 4, 9, 5), ...untold];
    expect(scatterOfDifferences(many, rules()).prior).toEqual(prior);
  });

  test('is as three panels that tell it say together, each by its degrees of freedom', () => {
    // Sums of squares about their means: 8, 26 and 5, on 2, 2 and 3 degrees.
    const three = [panel('a', 1, 3, 5), panel('b', 2, 4, 9), panel('c', 1, 2, 3, 4)];
    const { prior } = scatterOfDifferences(three, rules());
    expect(prior.variance).toBeCloseTo((8 + 26 + 5) / 7, 9);
    expect(prior.dofCeiling).toBe(7);
  });

  test('is as the gauge makes it while the panels have fewer degrees of freedom than a gauge is judged by', () => {
    const three = [panel('a', 1, 3, 5), panel('b', 2, 4, 9), panel('c', 1, 2, 3, 4)];
    expect(scatterOfDifferences(three, rules(7)).prior.variance).toBeCloseTo(39 / 7, 9);
    expect(scatterOfDifferences(three, rules(8)).prior.variance).toBeCloseTo(BY_GAUGE, 9);
  });

  test('is told without a point that stands out, which is named', () => {
    const calm = ['b', 'c', 'd'].map((id) => panel(id, 1, 3, 2, 1, 3));
    const { prior, apart } = scatterOfDifferences([panel('a', 1, 3, 2, 1, 53), ...calm], rules());
    expect([...apart].map(([id, one]) => [id, one.apart])).toEqual([['a', [4]]]);
    // Three panels of 4 on 4 degrees, and 2.75 on 3 without the slip.
    expect(prior.variance).toBeCloseTo((3 * 4 + 2.75) / 15, 9);
    expect(prior.dofCeiling).toBe(15);
  });

  test('is a fifth of what came off at the least, before one point stands out', () => {
    const calm = ['b', 'c', 'd', 'e'].map((id) => panel(id, 1, 3, 2, 1, 3));
    const reach = (off: number): number => {
      const worked = panel('a', off, off, off, off, off + 90);
      const { apart } = scatterOfDifferences([worked, ...calm], rules());
      return apart.get('a')?.reach ?? Number.NaN;
    };
    // SDs of 6 and 9 in place of some 1.
    expect(reach(45) / reach(30)).toBeCloseTo(1.5, 6);
    expect(reach(30) / reach(15)).toBeCloseTo(2, 6);
    expect(reach(30)).toBeGreaterThan(6 * 3);
    expect(reach(2)).toBeLessThan(reach(15) / 2);
  });
});
