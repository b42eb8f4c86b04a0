/** A vehicle's survey and its defects → plan, time, materials and the order of the job. */
import type { Outcome } from '../../base/diagnostics.ts';
import type { Remark } from '../../base/remark.ts';
import { type SquareMetres, squareMetres } from '../../base/units.ts';
import type { PanelPlan, Plan } from '../../correction/plan/plan.ts';
import { planCorrection } from '../../correction/plan/plan-correction.ts';
import type { PlanRequest } from '../../correction/plan/plan-request.ts';
import { type PartWhy, whyNot } from '../../correction/plan/why-not.ts';
import type { CorrectionModel } from '../../correction/removal/catalogue.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import { planCautions } from '../../work/cautions.ts';
import { estimateWork, type WorkEstimate } from '../../work/estimate-work.ts';
import { type Pace, unknownPace } from '../../work/pace.ts';
import { inputsOf, type LoadedFile } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';
import type { Settings } from '../settings/settings.ts';
import type { SurveyResult } from '../survey/survey-vehicle.ts';
import { planRequestOf } from './plan-request.ts';
import { type DefectsByPanel, recordedDefects } from './recorded-defects.ts';

export type PlanResult = SurveyResult & {
  readonly plan: Plan;
  /** Panels that are taken apart, with what their plans were chosen from. */
  readonly why: readonly PanelWhy[];
  readonly work: WorkEstimate;
  readonly cautions: readonly Remark[];
};

/** A panel's plan, and for each of its parts what else there was. */
export type PanelWhy = { readonly plan: PanelPlan; readonly parts: readonly PartWhy[] };

/** `why` names the panels to be taken apart, of those planned. */
export function planVehicle(
  surveyed: SurveyResult,
  panels: readonly Panel[],
  defectsFile: LoadedFile | undefined,
  why: readonly Panel[] = [],
): Outcome<PlanResult> {
  const { survey, settings } = surveyed;
  const recorded = recordedDefects(survey.template, settings, defectsFile);
  if (recorded.value === undefined) return { diagnostics: recorded.diagnostics };
  const request = planRequestOf(surveyed, panels, recorded.value);
  const plan = planCorrection(request);
  const result = planResult(surveyed, { plan, work: workOf(plan, surveyed) }, request, {
    recorded: recorded.value,
    file: defectsFile,
  });
  const apart = plan.panels.flatMap((panel, i) =>
    why.some(({ id }) => id === panel.survey.panel.id)
      ? [takenApart(panel, request.panels[i] ?? panel.survey, plan, request)]
      : [],
  );
  return { value: { ...result, why: apart }, diagnostics: recorded.diagnostics };
}

/** A plan that stands, with all that is to be said of it. */
export function planResult(
  surveyed: SurveyResult,
  { plan, work }: Pick<PlanResult, 'plan' | 'work'>,
  { panels }: Pick<PlanRequest, 'panels'>,
  defects: { readonly recorded: DefectsByPanel; readonly file: LoadedFile | undefined },
): PlanResult {
  const { settings } = surveyed;
  const { recorded, file } = defects;
  const missing = panels.filter(
    ({ panel, points }) => points.length > 0 && !recorded.has(panel.id),
  );
  return {
    ...surveyed,
    inputs: [...surveyed.inputs, ...inputsOf(file)],
    assumptions: [
      ...surveyed.assumptions,
      ...settings.planAssumptions,
      ...defectAssumption(missing.length, recorded.size, settings.correction),
      ...extentAssumption(recorded),
    ],
    plan,
    why: [],
    work,
    cautions: planCautions(work, settings.models.work),
  };
}

/** The parts as they were surveyed, before any plan, are what the search was asked about. */
const takenApart = (
  plan: PanelPlan,
  survey: PanelSurvey,
  car: Plan,
  request: PlanRequest,
): PanelWhy => ({
  plan,
  parts: partsOf(survey).map((part, i) => whyNot(part, plan.zones[i] ?? plan, car, request)),
});

/** The hours and materials of a plan for this vehicle, in the scope that was stated. */
export const workOf = (
  plan: Plan,
  { survey, settings }: Pick<SurveyResult, 'survey' | 'settings'>,
): WorkEstimate =>
  estimateWork(plan, settings.models.work, {
    scope: settings.scope,
    vehicleArea: paintedArea(survey.template),
    pace: paceOf(settings),
  });

/** How fast the shop is against its estimates: as its own hours teach it, if it has any. */
export const paceOf = ({ hours, models }: Pick<Settings, 'hours' | 'models'>): Pace =>
  hours?.pace ?? unknownPace(models.work.paceLogSd);

const paintedArea = ({ panels }: VehicleTemplate): SquareMetres =>
  squareMetres(panels.reduce((sum, { area }) => sum + area, 0));

/** A number looks as if something were reckoned by it; words do not. */
function extentAssumption(recorded: DefectsByPanel): readonly Assumption[] {
  const written = [...recorded.values()].flat().flatMap(({ extent = '' }) => extent.trim());
  const numbers = [...new Set(written.filter((extent) => /^\d[\d.,]*\s*%?$/.test(extent)))];
  const text = `the extent of a defect (${numbers.join(', ')}) changes nothing: its panel is worked as a whole`;
  return numbers.length === 0 ? [] : [{ code: 'defect-extent', text, origin: 'readings' }];
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
