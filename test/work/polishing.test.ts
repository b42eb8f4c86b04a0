import { describe, expect, it } from 'vitest';
import { workModel } from '../../src/formats/models.ts';
import { polishingOf, staged } from '../../src/work/polishing.ts';
import { FINE, MEDIUM, panel, plan, step } from './small-plans.ts';

describe('the stage that a step stands for', () => {
  const stages = (...ids: readonly string[]) =>
    staged(ids.map((id) => step(id, 1, 5))).map(({ stage }) => stage);

  it('is the earliest that its pad and product are for', () => {
    expect(stages('rotary/wool/heavy')).toEqual(['cut']);
    expect(stages(MEDIUM)).toEqual(['cut']);
    expect(stages(FINE)).toEqual(['finish']);
  });

  it('comes after that of the step before', () => {
    expect(stages('rotary/wool/heavy', MEDIUM, FINE)).toEqual(['cut', 'refine', 'finish']);
    expect(stages(MEDIUM, FINE)).toEqual(['cut', 'finish']);
  });

  it('is the finish where a sequence has no stage left for it', () => {
    expect(stages('rotary/wool/heavy', 'da/wool/heavy')).toEqual(['cut', 'finish']);
  });
});

describe('the order of polishing', () => {
  it('is roof, then what lies flat, upper sides, and low parts last', () => {
    const one = [step(MEDIUM, 1, 5)];
    const panels = plan(
      panel('sill', 1, one, { facing: 'low' }),
      panel('door', 1, one, { facing: 'vertical' }),
      panel('bonnet', 1, one, { facing: 'horizontal' }),
      panel('wing', 1, one, { facing: 'vertical' }),
      panel('roof', 1, one, { facing: 'horizontal' }),
    );
    const ids = polishingOf(panels, workModel).map((work) => work.panel.id);
    expect(ids).toEqual(['roof', 'bonnet', 'door', 'wing', 'sill']);
  });
});
