import { expect, test } from 'vitest';
import { micrometres, millimetres } from '../../../src/base/units.ts';
import { planCorrection } from '../../../src/correction/plan/plan-correction.ts';
import type { PlanRequest } from '../../../src/correction/plan/plan-request.ts';
import { whyNot } from '../../../src/correction/plan/why-not.ts';
import type { Step } from '../../../src/correction/removal/step.ts';
import { byItself, fiveAround, panelOf, plainPanel, surveyOf } from '../../film/car-builder.ts';
import { defect, shopWith, untried } from '../shop.ts';

const shop = shopWith('rotary', 'da');
const sound = surveyOf({
  panels: [plainPanel('sound')],
  readings: fiveAround('sound', 112),
  model: byItself,
});
const part = { ...panelOf(sound, 'sound'), budget: micrometres(6) };
const request: PlanRequest = {
  panels: [part],
  defectsOf: () => [defect('swirl-marks', 3)],
  aim: 0.95,
  hazeAllowed: 1,
  paintOf: () => untried,
  allowanceAt: (one) => one,
  model: shop,
  thinnerClear: micrometres(6),
  edgeWidth: millimetres(25),
};
const car = planCorrection(request);
const [plan] = car.panels;
if (plan === undefined) throw new Error('the panel is planned');

/** What one set takes of the step that takes most by it. */
const most = (steps: readonly Step[]): number =>
  Math.max(...steps.map(({ combination }) => combination.perSet));

test('of ways that clear as much, one by rotary is told apart from one with a harsher step', () => {
  const { rejected } = whyNot(part, plan, car, request);
  const stronger = rejected.filter(({ reason }) => reason.code === 'stronger-step');
  const byRotary = stronger.filter(({ steps }) => most(steps) < most(plan.steps));
  const harsher = stronger.filter(({ steps }) => most(steps) > most(plan.steps));
  expect(byRotary.length).toBeGreaterThan(0);
  expect(harsher.length).toBeGreaterThan(0);
  expect(byRotary.length + harsher.length).toBe(stronger.length);
  const factor = Math.exp(shop.removal.combinationLogSd);
  for (const { steps, reason } of byRotary) {
    expect(reason.text).toBe(
      'clears as much by a rotary, which is milder by less than its rate is known to, and brings heat',
    );
    const rotaries = steps.filter(
      ({ combination }) => combination.machine.motion.kind === 'rotary',
    );
    expect(most(rotaries) * factor).toBeGreaterThan(most(plan.steps));
  }
  for (const { reason } of harsher) {
    expect(reason.text).toBe('clears as much, with a harsher strongest step');
  }
});
