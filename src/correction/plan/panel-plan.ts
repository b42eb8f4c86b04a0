import { type Micrometres, micrometres, minutes, type SquareMetres } from '../../base/units.ts';
import {
  clearRisk,
  type ExpectedRemoval,
  removalQuantile,
} from '../../film/limits/removal-risk.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { heatCautions } from '../heat/heat-cautions.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import { meanRemoval, untriedLogSd } from '../removal/removal-knowledge.ts';
import { setTime } from '../removal/removal-rate.ts';
import type { Step } from '../removal/step.ts';
import type { RatedCandidate } from './choose-steps.ts';
import type { PartDecision } from './decide-car.ts';
import { allowanceUntried, reaches } from './decide-part.ts';
import type { PanelPlan, PlannedStep, RemovalForecast, Verdict } from './plan.ts';
import { asElsewhere, cautionsOf, choiceReasons, defectRemarks } from './plan-remarks.ts';
import type { PlanGrounds, PlanRequest } from './plan-request.ts';

export const NO_REMOVAL: RemovalForecast = {
  median: micrometres(0),
  mean: micrometres(0),
  low: micrometres(0),
  high: micrometres(0),
};

/** What steps come to on a part, whatever was aimed at. */
export type Figures = Pick<
  PanelPlan,
  'survey' | 'steps' | 'removal' | 'risk' | 'riskIfThin' | 'already' | 'cautions'
>;

export function figuresOf(
  part: PanelSurvey,
  { steps, removal }: Pick<RatedCandidate, 'steps' | 'removal'>,
  { allowanceAt, model, thinnerClear, edgeWidth }: PlanGrounds,
): Figures {
  const survey = { ...part, ...allowanceAt(part, removal.logSd) };
  return {
    survey,
    steps: steps.map((step) => plannedStep(step, survey.panel.area, model)),
    removal: forecast(removal),
    ...risksOf(survey, removal, thinnerClear),
    cautions: [
      ...cautionsOf(survey, steps, { edgeWidth, heat: model.heat }),
      ...heatCautions(survey.panel.substrate, steps, model),
    ],
  };
}

/** The plan of a part that is worked by one of the candidates that are equal for it. */
export function workedPlan(
  { part, by, choice, taken }: Extract<PartDecision, { kind: 'work' }>,
  figures: Figures,
  request: PlanRequest,
): PanelPlan {
  const verdict: Verdict = by === 'hand' ? 'hand' : reaches(taken, request) ? 'polish' : 'lighter';
  return {
    ...common(part, request),
    ...figures,
    verdict,
    expected: taken.correction,
    reasons: [
      ...choiceReasons(verdict, figures.survey),
      ...asElsewhere(taken, choice.best),
      ...defectRemarks(request.defectsOf(part.panel.id)),
    ],
  };
}

/** The plan of a part that is left alone. */
export function untouchedPlan(
  { part, verdict, reason }: Extract<PartDecision, { kind: 'none' }>,
  request: PlanRequest,
): PanelPlan {
  const { stepLogSd } = request.model.removal;
  const survey = { ...part, ...allowanceUntried(part, request) };
  const none = {
    median: micrometres(0),
    logSd: untriedLogSd(request.paintOf(part), stepLogSd),
  };
  return {
    ...common(part, request),
    survey,
    verdict,
    steps: [],
    removal: NO_REMOVAL,
    expected: 0,
    ...risksOf(survey, none, request.thinnerClear),
    reasons: [reason, ...defectRemarks(request.defectsOf(part.panel.id))],
    cautions: [],
  };
}

const common = (survey: PanelSurvey, { aim, paintOf }: PlanRequest) => ({
  aimed: aim,
  provisional: paintOf(survey).provisional,
  local: [],
  zones: [],
});

type Risks = Pick<PanelPlan, 'risk' | 'riskIfThin' | 'already'>;

function risksOf({ topcoat }: PanelSurvey, expected: ExpectedRemoval, thinner: Micrometres): Risks {
  if (topcoat === null) return { risk: null, riskIfThin: null, already: null };
  const { clear, clearFloor } = topcoat;
  const none = { ...expected, median: micrometres(0) };
  const thin = { ...clear, mean: micrometres(clear.mean - thinner) };
  return {
    risk: clearRisk(clear, clearFloor, expected),
    riskIfThin: clearRisk(thin, clearFloor, expected),
    already: clearRisk(clear, clearFloor, none),
  };
}

export const forecast = (removal: ExpectedRemoval): RemovalForecast => ({
  median: removal.median,
  mean: meanRemoval(removal),
  low: removalQuantile(removal, 0.05),
  high: removalQuantile(removal, 0.95),
});

export const plannedStep = (
  step: Step,
  area: SquareMetres,
  { removal }: CorrectionModel,
): PlannedStep => ({
  ...step,
  removal: micrometres(step.combination.perSet * step.sets),
  machineTime: minutes(step.sets * setTime(step.combination.machine, area, removal)),
});
