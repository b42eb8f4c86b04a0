/** The plan of one panel with swirl marks of grade 3, corrected to 85 %, and why it is no other. */
import { at } from '../../../src/base/at.ts';
import { micrometres, millimetres } from '../../../src/base/units.ts';
import { planCorrection } from '../../../src/correction/plan/plan-correction.ts';
import type { PlanRequest } from '../../../src/correction/plan/plan-request.ts';
import { whyNot } from '../../../src/correction/plan/why-not.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { amongSound, fiveAround } from '../../film/car-builder.ts';
import { defect } from '../shop.ts';

export type PlannedPanel = ReturnType<typeof planOfPanel>;

/** A sound panel of which so much may go, in µm. */
export const panelWith = (budget: number): PanelSurvey => ({
  ...amongSound(fiveAround('tested', 112)).panel,
  budget: micrometres(budget),
});

export function planOfPanel(
  part: PanelSurvey,
  paint: ReturnType<PlanRequest['paintOf']>,
  rest: Partial<PlanRequest> & Pick<PlanRequest, 'model'>,
) {
  const request: PlanRequest = {
    panels: [part],
    defectsOf: () => [defect('swirl-marks', 3)],
    aim: 0.85,
    hazeAllowed: 1,
    paintOf: () => paint,
    allowanceAt: (one) => one,
    thinnerClear: micrometres(6),
    edgeWidth: millimetres(25),
    ...rest,
  };
  const car = planCorrection(request);
  const plan = at(car.panels, 0);
  return { plan, why: whyNot(at(request.panels, 0), plan, car, request) };
}
