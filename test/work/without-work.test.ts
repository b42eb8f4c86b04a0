import { expect, test } from 'vitest';
import { isTouched, workedParts } from '../../src/correction/plan/plan.ts';
import { withoutWorkOn } from '../../src/work/without-work.ts';
import { MEDIUM, noRemoval, panel, plan, step } from './small-plans.ts';

test('nothing is done on the panels that are left, in no zone and at no place; the others stay as they were', () => {
  const one = panel('bonnet', 2, [step(MEDIUM, 2, 10)]);
  const spot = {
    defect: { kind: 'swirl-marks', grade: 3 } as never,
    ...{ steps: [step(MEDIUM, 1, 2)], removal: noRemoval, cleared: 1, risk: null, place: null },
    reasons: [],
  };
  const left = {
    ...panel('roof', 2, [step(MEDIUM, 1, 10)]),
    local: [spot],
    zones: [{ ...panel('roof', 1, [step(MEDIUM, 1, 5)]), zone: 'thicker' as const, local: [spot] }],
  };
  const rest = withoutWorkOn(plan(one, left), ({ survey }) => survey.panel.id === 'roof');
  expect(rest.panels[0]).toBe(one);
  expect(workedParts(plan(one, left)).filter(isTouched)).toHaveLength(2);
  expect(workedParts(rest).filter(isTouched)).toEqual([one]);
  expect(rest.panels[1]?.survey).toBe(left.survey);
});
