/** A vehicle's survey and its defects → plan, time, materials and the order of the job. */
import type { Outcome } from '../base/diagnostics.ts';
import type { Remark } from '../base/remark.ts';
import type { CorrectionModel } from '../correction/catalogue.ts';
import type { Defect } from '../correction/defects.ts';
import type { Plan } from '../correction/plan.ts';
import { planCorrection } from '../correction/plan-correction.ts';
import { allowanceAfterSpot, allowanceAt } from '../film/allowance-at.ts';
import type { Panel } from '../film/template.ts';
import { planCautions } from '../work/cautions.ts';
import { estimateWork, type WorkEstimate } from '../work/estimate-work.ts';
import type { Assumption } from './assumption.ts';
import type { LoadedFile, ReadInput } from './read-request.ts';
import { recordedDefects, usualDefect } from './recorded-defects.ts';
import type { SurveyResult } from './survey-vehicle.ts';

export type PlanResult = SurveyResult & {
  readonly plan: Plan;
  readonly work: WorkEstimate;
  readonly cautions: readonly Remark[];
};

export function planVehicle(
  surveyed: SurveyResult,
  panels: readonly Panel[],
  defectsFile: LoadedFile | undefined,
): Outcome<PlanResult> {
  const { survey, settings } = surveyed;
  const recorded = recordedDefects(survey.template, settings, defectsFile);
  if (recorded.value === undefined) return { diagnostics: recorded.diagnostics };
  const known = recorded.value;
  const ids = new Set(panels.map(({ id }) => id));
  const asked = survey.panels.filter(({ panel }) => ids.has(panel.id));
  const { baseline } = survey;
  const grounds = { terms: settings.terms, baseline, model: settings.film };
  const plan = planCorrection({
    panels: asked,
    defectsOf: (id) => withGeneral(known.get(id) ?? [], settings.correction),
    aim: settings.aim.share,
    hazeAllowed: settings.hazeAllowed,
    paintOf: surveyed.paint.paintOf,
    allowanceAt: (part, logSd) =>
      surveyed.paint.hasOwnSpot(part.panel.id)
        ? allowanceAfterSpot(part, survey.panels, logSd, grounds)
        : allowanceAt(part, logSd, grounds),
    model: settings.correction,
    thinnerClear: settings.film.thinnerClear,
    edgeWidth: settings.film.edgeWidth,
  });
  const missing = asked.filter(
    ({ panel, points }) => points.length > 0 && !hasGeneral(known.get(panel.id) ?? []),
  );
  const work = estimateWork(plan, settings.work);
  const value = {
    ...surveyed,
    inputs: [...surveyed.inputs, ...defectsInput(defectsFile)],
    assumptions: [
      ...surveyed.assumptions,
      ...settings.planAssumptions,
      ...defectAssumption(missing.length, known.size, settings.correction),
    ],
    plan,
    work,
    cautions: planCautions(work, settings.work),
  };
  return { value, diagnostics: recorded.diagnostics };
}

const defectsInput = (file: LoadedFile | undefined): readonly ReadInput[] =>
  file === undefined ? [] : [{ file: file.name, sha256: file.sha256, decisions: null }];

const hasGeneral = (defects: readonly Defect[]): boolean =>
  defects.some(({ kind }) => kind.scope === 'general' || kind.scope === 'refinish');

/** Where no general defect was recorded, swirl marks of the assumed grade are taken to be there. */
function withGeneral(defects: readonly Defect[], model: CorrectionModel): readonly Defect[] {
  if (hasGeneral(defects)) return defects;
  const grade = model.correction.assumedGrade;
  return [...defects, { kind: usualDefect(model), grade, depth: null }];
}

function defectAssumption(
  missing: number,
  recorded: number,
  { correction }: CorrectionModel,
): readonly Assumption[] {
  if (missing === 0) return [];
  const grade = correction.assumedGrade;
  const where = recorded === 0 ? 'on every panel' : 'on panels read without a record';
  return [{ code: 'defects', text: `swirl marks of grade ${grade} ${where}`, origin: 'built-in' }];
}
