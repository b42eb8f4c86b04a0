import { describe, expect, it } from 'vitest';
import { micrometres, millimetres } from '../../../src/base/units.ts';
import {
  type ConstraintContext,
  refusal,
  techniqueConstraints,
} from '../../../src/correction/plan/constraints.ts';
import { ladder } from '../../../src/correction/removal/combination.ts';
import {
  hazeAfter,
  medianRemoval,
  type Step,
  stepsId,
  strongestRung,
} from '../../../src/correction/removal/step.ts';
import { correctionModel } from '../../../src/formats/models.ts';

const rungs = ladder(correctionModel);
const step = (id: string, sets = 1): Step => {
  const combination = rungs.find((one) => one.id === id);
  if (combination === undefined) throw new Error(`no ${id}`);
  return { combination, sets };
};
const context: ConstraintContext = {
  budget: micrometres(50),
  flatWidth: millimetres(400),
  fullSizePad: 150,
  hazeCleared: micrometres(0.25),
  hazeAllowed: 1,
};
const refused = (steps: readonly Step[], rest: Partial<ConstraintContext> = {}) =>
  refusal(steps, { ...context, ...rest });

describe('a sequence of steps', () => {
  it('is allowed when it keeps every constraint', () => {
    expect(refused([step('da/foam-medium/medium', 3), step('da/foam-soft/fine')])).toBeUndefined();
  });

  it('is refused when a pad is wider than the flat stretch', () => {
    const steps = [step('da/foam-medium/medium')];
    expect(refused(steps, { flatWidth: millimetres(149) })).toEqual({
      constraint: 'pad-lies-flat',
      reason: 'a 150 mm pad does not lie flat on 149 mm',
    });
    expect(refused(steps, { flatWidth: millimetres(150) })).toBeUndefined();
  });

  it('is refused when its pad is small where a full-size one lies flat', () => {
    const small = [step('da-small/foam-medium/medium')];
    expect(refused(small)).toEqual({
      constraint: 'full-size-where-it-fits',
      reason: 'a 75 mm pad is for tight places, 150 mm lies flat here',
    });
    expect(refused(small, { flatWidth: millimetres(90), fullSizePad: 75 })).toBeUndefined();
    expect(refused([step('hand/foam-medium/medium')])).toBeUndefined();
  });

  it('by hand lies flat anywhere', () => {
    expect(
      refused([step('hand/foam-medium/medium')], { flatWidth: millimetres(20) }),
    ).toBeUndefined();
  });

  it('is refused when a step is as strong as the one before, or stronger', () => {
    const twice = [step('da/foam-medium/medium'), step('da/foam-medium/medium')];
    const upwards = [step('da/foam-soft/fine'), step('da/foam-medium/medium')];
    expect(refused(twice)?.constraint).toBe('each-step-milder');
    expect(refused(upwards)?.constraint).toBe('each-step-milder');
  });

  it('is refused when it ends with the rotary', () => {
    expect(refused([step('rotary/foam-soft/fine')], { hazeAllowed: 4 })?.constraint).toBe(
      'last-step-not-rotary',
    );
    const finished = [step('rotary/foam-medium/medium'), step('da/foam-medium/medium')];
    expect(refused(finished, { hazeAllowed: 4 })).toBeUndefined();
  });

  it('is refused when it leaves more haze than the aim lets stand', () => {
    expect(refused([step('da/foam-medium/heavy')])).toEqual({
      constraint: 'haze-cleared',
      reason: 'haze of grade 2 would be left, 1 is allowed',
    });
    expect(refused([step('da/foam-medium/medium')], { hazeAllowed: 0 })?.constraint).toBe(
      'haze-cleared',
    );
  });

  it('is refused when it takes more than the budget, and may take all of it', () => {
    const steps = [step('da/foam-medium/medium', 2)];
    const takes = medianRemoval(steps);
    expect(refused(steps, { budget: takes })).toBeUndefined();
    expect(refused(steps, { budget: micrometres(takes - 0.001) })?.constraint).toBe(
      'within-budget',
    );
    expect(refused(steps, { budget: micrometres(1) })?.reason).toBe(
      'takes 1.79 µm, 1.00 µm may go',
    );
  });

  it('may be judged by technique alone', () => {
    const steps = [step('da/foam-medium/medium', 3)];
    expect(
      refusal(steps, { ...context, budget: micrometres(0) }, techniqueConstraints),
    ).toBeUndefined();
  });
});

describe('the haze after a sequence', () => {
  const haze = (...steps: readonly Step[]): number => hazeAfter(steps, micrometres(0.25));

  it('falls a grade for every .25 µm that a following step takes', () => {
    // Rotary with polish leaves 3; .282 µm clears one grade, .565 two.
    expect(haze(step('rotary/foam-medium/medium'), step('da/foam-soft/fine', 1))).toBe(2);
    expect(haze(step('rotary/foam-medium/medium'), step('da/foam-soft/fine', 2))).toBe(1);
  });

  it('is never under what the last step itself leaves', () => {
    expect(haze(step('da/foam-medium/heavy'), step('da/foam-medium/medium', 3))).toBe(1);
  });

  it('counts just .25 µm as a grade', () => {
    const fine = step('da/foam-soft/fine');
    const exact = { ...fine, combination: { ...fine.combination, perSet: micrometres(0.25) } };
    expect(haze(step('da/foam-medium/medium'), exact)).toBe(0);
  });

  it('is none without steps', () => {
    expect(haze()).toBe(0);
  });
});

describe('the steps as a whole', () => {
  const steps = [step('da/foam-medium/medium', 3), step('da/foam-soft/fine')];

  it('take the sum of their medians: 3 · .897 + .282 = 2.97 µm', () => {
    expect(medianRemoval(steps)).toBeCloseTo(2.97, 2);
  });

  it('are as strong as their strongest step', () => {
    expect(strongestRung(steps)).toBe(steps[0]?.combination.rung);
    expect(strongestRung([])).toBe(-1);
  });

  it('have a name', () => {
    expect(stepsId(steps)).toBe('da/foam-medium/medium×3 + da/foam-soft/fine×1');
  });
});
