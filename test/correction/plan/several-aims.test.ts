/** A car planned under several aims shares what does not depend on them, and each plan is that of its own aim. */
import { expect, test } from 'vitest';
import { micrometres, millimetres } from '../../../src/base/units.ts';
import type { Plan } from '../../../src/correction/plan/plan.ts';
import { planCorrection, plannerFor } from '../../../src/correction/plan/plan-correction.ts';
import type { PlanAim, PlanGrounds } from '../../../src/correction/plan/plan-request.ts';
import { allowanceAt } from '../../../src/film/limits/allowance-at.ts';
import { allowanceOnPlace } from '../../../src/film/limits/allowance-on-place.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { amongSound, fiveAround, standardTerms } from '../../film/car-builder.ts';
import { defect, planned, shopWith, stepsOf, untried } from '../shop.ts';

const limits = { terms: standardTerms, baseline: micrometres(112), model: filmModel };
const { survey, panel: tested } = amongSound(fiveAround('tested', 106));
const grounds: PlanGrounds = {
  panels: survey.panels.slice(-2),
  defectsOf: (id) => [defect('swirl-marks', id === 'tested' ? 3 : 1), defect('deep-scratches', 2)],
  paintOf: () => untried,
  allowanceAt: (part, logSd) => allowanceAt(part, logSd, limits),
  allowanceOnPlace: (part, logSd) => allowanceOnPlace(part, logSd, limits),
  model: shopWith('da', 'da-small', 'hand'),
  thinnerClear: micrometres(6),
  edgeWidth: millimetres(25),
};
const aims: readonly PlanAim[] = [0.5, 0.85, 0.95].flatMap((aim) =>
  [0, 1].map((hazeAllowed) => ({ aim, hazeAllowed })),
);
const worked = (plan: Plan) => stepsOf(planned(plan, 'tested')).join(', ');

test('each plan is the one that its aim has by itself, in whatever order they are asked for', () => {
  const alone = aims.map((aim) => planCorrection({ ...grounds, ...aim }));
  expect(new Set(alone.map(worked)).size).toBeGreaterThan(3);
  for (const order of [aims, aims.toReversed()]) {
    const plannedUnder = plannerFor(grounds);
    for (const aim of order)
      expect(plannedUnder(aim).plan()).toEqual(alone[aims.indexOf(aim)] as Plan);
  }
});

test('a panel that is left under one aim and worked under another has the figures of either', () => {
  // What clears less than 80 % of the marks is not worth its film.
  const { correction, ...rest } = grounds.model;
  const model = { ...rest, correction: { ...correction, leastCorrection: 0.8 } };
  const plannedUnder = plannerFor({ ...grounds, model });
  const at = (aim: number) => planned(plannedUnder({ aim, hazeAllowed: 1 }).plan(), 'tested');
  for (const _ of ['at first', 'again']) {
    const [left, taken] = [at(0.5), at(0.85)];
    expect(left).toMatchObject({ verdict: 'leave', steps: [], removal: { median: 0 } });
    expect(taken.steps.length).toBeGreaterThan(0);
    expect(taken.removal.median).toBeGreaterThan(1);
    expect(taken.risk).toBeGreaterThan(left.risk ?? 1);
  }
});

test('what may go is asked once for a part at an ln-SD, and anew at another', () => {
  const asked = new Map<string, number>();
  const asking: PlanGrounds['allowanceAt'] = (part: PanelSurvey, logSd) => {
    const key = `${part.panel.id} ${logSd.toFixed(9)}`;
    asked.set(key, (asked.get(key) ?? 0) + 1);
    return allowanceAt(part, logSd, limits);
  };
  // Each way is known otherwise: the ln-SD goes by its combinations.
  const sdOf = (id: string): number => 0.2 + id.length / 100;
  const paint = {
    ...untried,
    removal: {
      ...untried.removal,
      of: (id: string) => ({ ...untried.removal.of(id), sd: sdOf(id) }),
    },
  };
  const plannedUnder = plannerFor({
    ...grounds,
    paintOf: () => paint,
    allowanceAt: asking,
  });
  const plans = aims.map((aim) => plannedUnder(aim).plan());
  expect([...asked.values()].filter((times) => times > 1)).toEqual([]);
  const logSds = [...asked.keys()].filter((key) => key.startsWith('tested'));
  expect(logSds.length).toBeGreaterThan(3);
  // What a plan shows is what may go at the ln-SD of its own steps.
  for (const plan of plans) {
    const { survey: shown, steps, removal } = planned(plan, 'tested');
    const logSd = Math.log(removal.high / removal.median) / 1.6448536;
    expect(steps.length).toBeGreaterThan(0);
    expect(shown.budget).toBeCloseTo(allowanceAt(tested, logSd, limits).budget, 4);
  }
});
