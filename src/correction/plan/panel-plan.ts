import { remark } from '../../base/remark.ts';
import { type Micrometres, micrometres, minutes, type SquareMetres } from '../../base/units.ts';
import { type Allowance, bounded } from '../../film/limits/allowance.ts';
import { CLEAR_COAT_FAILED } from '../../film/limits/outright-limits.ts';
import { type ExpectedRemoval, removalQuantile } from '../../film/limits/removal-risk.ts';
import { risksOf } from '../../film/limits/topcoat-risk.ts';
import { overrunNotes } from '../../film/overrun-note.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { heatCautions } from '../heat/heat-cautions.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import {
  ladderOn,
  meanRemoval,
  strongestTried,
  untriedLogSd,
} from '../removal/removal-knowledge.ts';
import { setTime } from '../removal/removal-rate.ts';
import type { Step } from '../removal/step.ts';
import type { RatedCandidate } from './choose-steps.ts';
import type { PartDecision } from './decide-car.ts';
import { allowanceUntried, reaches } from './decide-part.ts';
import type { PanelPlan, PlannedStep, RemovalForecast, Verdict } from './plan.ts';
import {
  asElsewhere,
  cautionsOf,
  choiceReasons,
  defectRemarks,
  otherThanSurveyed,
  triedFirst,
} from './plan-remarks.ts';
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
  const survey = withAllowance(part, allowanceAt(part, removal.logSd));
  return {
    survey,
    ...risksAt(survey, removal, thinnerClear),
    steps: steps.map((step) => plannedStep(step, survey.panel.area, model)),
    removal: forecast(removal),
    cautions: [
      ...cautionsOf(survey, steps, { edgeWidth, heat: model.heat }),
      ...heatCautions(survey.panel.substrate, steps, model),
    ],
  };
}

/** The same of a part that is left alone. */
export function figuresUntouched(part: PanelSurvey, grounds: PlanGrounds): Figures {
  const survey = withAllowance(part, allowanceUntried(part, grounds));
  const none = {
    median: micrometres(0),
    logSd: untriedLogSd(grounds.paintOf(part), grounds.model.removal.stepLogSd),
  };
  return {
    survey,
    steps: [],
    removal: NO_REMOVAL,
    ...risksAt(survey, none, grounds.thinnerClear),
    cautions: overrunNotes(survey),
  };
}

/** Field by field: a survey has thirty of them, and every part of every car comes by here. */
const withAllowance = (
  part: PanelSurvey,
  { topcoat, limits, budget, boundBy }: Allowance,
): PanelSurvey => ({ ...part, topcoat, limits, budget, boundBy });

/** The plan of a part that is worked by one of the candidates that are equal for it. */
export function workedPlan(
  { part, by, choice, taken, isHeldByFilm }: Extract<PartDecision, { kind: 'work' }>,
  figures: Figures,
  request: PlanRequest,
): PanelPlan {
  const isShort = !reaches(taken, request);
  const verdict: Verdict = by === 'hand' ? 'hand' : isShort ? 'lighter' : 'polish';
  const { machines } = request.model;
  const tried = strongestTriedOn(part, request);
  const reasons = [
    ...choiceReasons(verdict, figures.survey, { machines, isHeldByFilm, tried, isShort }),
    ...asElsewhere(taken, choice.best),
    ...triedFirst(choice),
    ...otherThanSurveyed(part, figures.survey),
    ...defectRemarks(request.defectsOf(part.panel.id), part),
  ];
  return partPlan(figures, { verdict, expected: taken.correction, reasons }, request);
}

/** Of repaint; nothing limits the steps on other paint. */
function strongestTriedOn(part: PanelSurvey, { paintOf, model }: PlanRequest) {
  const paint = paintOf(part);
  return paint.triedHere === undefined ? undefined : strongestTried(paint, ladderOn(paint, model));
}

/** The plan of a part that is left alone. */
export const untouchedPlan = (
  { part, verdict, reason }: Extract<PartDecision, { kind: 'none' }>,
  figures: Figures,
  request: PlanRequest,
): PanelPlan => {
  const reasons = [reason, ...defectRemarks(request.defectsOf(part.panel.id), part)];
  const shown = verdict === 'refinish' ? { ...figures, survey: failed(figures.survey) } : figures;
  return partPlan(shown, { verdict, expected: 0, reasons }, request);
};

/** Whatever its film would allow: of failed clear nothing is polished. */
const failed = (survey: PanelSurvey): PanelSurvey => ({
  ...survey,
  ...bounded([
    ...survey.limits.filter(({ code }) => code !== 'clear-coat-failure'),
    {
      ...remark('clear-coat-failure', CLEAR_COAT_FAILED, 0),
      code: 'clear-coat-failure',
      value: micrometres(0),
    },
  ]),
});

const partPlan = (
  { survey, steps, removal, risk, riskIfThin, already, cautions }: Figures,
  { verdict, expected, reasons }: Pick<PanelPlan, 'verdict' | 'expected' | 'reasons'>,
  { aim, paintOf }: PlanRequest,
): PanelPlan => ({
  survey,
  verdict,
  steps,
  removal,
  aimed: aim,
  expected,
  risk,
  riskIfThin,
  already,
  provisional: paintOf(survey).provisional,
  reasons,
  cautions,
  local: [],
  zones: [],
});

type Risks = Pick<PanelPlan, 'risk' | 'riskIfThin' | 'already'>;

const risksAt = (
  { topcoat }: PanelSurvey,
  expected: ExpectedRemoval,
  thinner: Micrometres,
): Risks =>
  topcoat === null
    ? { risk: null, riskIfThin: null, already: null }
    : risksOf(topcoat, expected, thinner);

export const forecast = (removal: ExpectedRemoval): RemovalForecast => ({
  median: removal.median,
  mean: meanRemoval(removal),
  low: removalQuantile(removal, 0.05),
  high: removalQuantile(removal, 0.95),
});

export const plannedStep = (
  { combination, sets }: Step,
  area: SquareMetres,
  { removal }: CorrectionModel,
): PlannedStep => ({
  combination,
  sets,
  removal: micrometres(combination.perSet * sets),
  machineTime: minutes(sets * setTime(combination.machine, area, removal)),
});
