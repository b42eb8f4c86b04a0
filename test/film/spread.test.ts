import { describe, expect, it } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import {
  fallbackPrior,
  leastPointVariance,
  moderatedSpread,
  ownSpread,
  pooledSpread,
  spreadPrior,
} from '../../src/film/spread.ts';
import { filmModel } from '../../src/formats/models.ts';

const um = (...values: readonly number[]) => values.map(micrometres);
const { spread: model } = filmModel;

describe('the spread over a panel', () => {
  it('says nothing of its own on two points or fewer', () => {
    expect(ownSpread(um(100), 0)).toEqual({ variance: 0, sample: 0, dof: 0 });
    expect(ownSpread(um(100, 140), 0)).toEqual({ variance: 0, sample: 0, dof: 0 });
  });

  it('is at least what the gauge’s noise must have put there', () => {
    expect(ownSpread(um(100, 100, 100), 2.25)).toEqual({ variance: 2.25, sample: 0, dof: 2 });
    expect(leastPointVariance(micrometres(1.5), 1, micrometres(1))).toBe(2.25);
    expect(leastPointVariance(micrometres(1.5), 3, micrometres(1))).toBe(0.75);
    // A coarse display hides the noise: δ²/12 takes over.
    expect(leastPointVariance(micrometres(1.5), 1, micrometres(10))).toBeCloseTo(100 / 12, 12);
    expect(leastPointVariance(micrometres(1.5), 0.2, micrometres(0))).toBe(2.25);
  });

  it('is an assumption where fewer than three panels can be pooled: 5 % of the mean, at least 4 µm', () => {
    expect(fallbackPrior([120], model)).toEqual({ variance: 36, dof: 6, dofCeiling: Infinity });
    expect(fallbackPrior([60], model).variance).toBe(16);
    expect(fallbackPrior([], model).variance).toBe(16);
    const two = [
      ownSpread(um(100, 104, 108), 0),
      ownSpread(um(100, 104, 108), 0),
      ownSpread(um(1, 2), 0),
    ];
    expect(spreadPrior(two, [100, 100, 100], model)).toEqual({
      variance: 25,
      dof: 6,
      dofCeiling: Infinity,
    });
  });

  it('pools three panels and more by their degrees of freedom, and trusts the pool with at most 6', () => {
    const panels = [
      { variance: 16, sample: 16, dof: 4 },
      { variance: 25, sample: 25, dof: 4 },
      { variance: 10, sample: 10, dof: 2 },
    ];
    const prior = spreadPrior(panels, [110, 110, 110], model);
    // (16·4 + 25·4 + 10·2)/10 = 18.4
    expect(prior.variance).toBeCloseTo(18.4, 12);
    expect(prior.dofCeiling).toBe(10);
    expect(prior.dof).toBeGreaterThan(0);
    expect(prior.dof).toBeLessThanOrEqual(6);
  });

  it('pools what panels tell without asking how alike they are: the same, or nothing of fewer than three', () => {
    const panels = [
      { variance: 16, sample: 16, dof: 4 },
      { variance: 0, sample: 0, dof: 0 },
      { variance: 25, sample: 25, dof: 4 },
      { variance: 10, sample: 10, dof: 2 },
    ];
    const { variance, dofCeiling } = spreadPrior(panels, [110, 110, 110, 110], model);
    expect(pooledSpread(panels, model)).toEqual({ variance, dofCeiling });
    expect(pooledSpread(panels.slice(0, 3), model)).toBeNull();
  });

  it('moves a panel’s own variance towards the pool’s by their weights', () => {
    const prior = { variance: 25, dof: 6, dofCeiling: 40 };
    // (6·25 + 4·9)/10 = 18.6 on min(10, 40)
    const moderated = moderatedSpread({ variance: 9, sample: 9, dof: 4 }, prior);
    expect(moderated.sd).toBeCloseTo(Math.sqrt(18.6), 12);
    expect(moderated.dof).toBe(10);
  });

  it('never claims more degrees of freedom than all panels have', () => {
    const prior = { variance: 25, dof: 6, dofCeiling: 7 };
    expect(moderatedSpread({ variance: 9, sample: 9, dof: 4 }, prior).dof).toBe(7);
  });

  it('is the pool’s own for a panel of two points', () => {
    const prior = { variance: 25, dof: 6, dofCeiling: 40 };
    expect(moderatedSpread({ variance: 0, sample: 0, dof: 0 }, prior)).toEqual({ sd: 5, dof: 6 });
  });
});
