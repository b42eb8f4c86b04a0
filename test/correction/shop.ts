/** Shops and panels for tests of the planner. */
import { micrometres, millimetres } from '../../src/base/units.ts';
import type { Defect } from '../../src/correction/defects.ts';
import type { PanelPlan, Plan } from '../../src/correction/plan/plan.ts';
import { planCorrection } from '../../src/correction/plan/plan-correction.ts';
import type { PlanRequest } from '../../src/correction/plan/plan-request.ts';
import type { CorrectionModel } from '../../src/correction/removal/catalogue.ts';
import { paintKnowledge } from '../../src/correction/removal/removal-knowledge.ts';
import type { Survey } from '../../src/film/survey.ts';
import { correctionModel } from '../../src/formats/models.ts';

/** Every built-in pad and product on the machines named. */
export const shopWith = (...machines: readonly string[]): CorrectionModel => ({
  ...correctionModel,
  machines: correctionModel.machines.filter(({ id }) => machines.includes(id)),
});

export function defect(id: string, grade: number, depth: number | null = null): Defect {
  const kind = correctionModel.defects.find((one) => one.id === id);
  if (kind === undefined) throw new Error(`no defect ${id}`);
  return { kind, grade, depth: depth === null ? null : micrometres(depth) };
}

/** Paint on which nothing was tried. */
export const untried = paintKnowledge([], 'unknown', correctionModel);

export const planOf = (survey: Survey, rest: Partial<PlanRequest> = {}): Plan =>
  planCorrection({
    panels: survey.panels,
    defectsOf: () => [defect('swirl-marks', 3)],
    aim: 0.85,
    hazeAllowed: 1,
    paintOf: () => untried,
    allowanceAt: (part) => part,
    model: shopWith('rotary', 'da', 'da-small', 'hand'),
    thinnerClear: micrometres(6),
    edgeWidth: millimetres(25),
    ...rest,
  });

export function planned({ panels }: Plan, id: string): PanelPlan {
  const found = panels.find(({ survey }) => survey.panel.id === id);
  if (found === undefined) throw new Error(`no panel ${id}`);
  return found;
}

/** `da/foam-medium/medium × 3` and so on. */
export const stepsOf = ({ steps }: PanelPlan): readonly string[] =>
  steps.map(({ combination, sets }) => `${combination.id} × ${sets}`);
