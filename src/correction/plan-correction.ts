/** Survey and defects → plan: on each panel the mildest steps that reach the aim within every limit. */
import { type Remark, remark } from '../base/remark.ts';
import { type Micrometres, micrometres, minutes } from '../base/units.ts';
import type { Allowance } from '../film/allowance.ts';
import type { FilmModel } from '../film/film-model.ts';
import { clearRisk, type ExpectedRemoval, removalQuantile } from '../film/removal-risk.ts';
import type { PanelSurvey, ZoneSurvey } from '../film/survey.ts';
import { type AllowedRemoval, allowedRemoval } from './allowed-removal.ts';
import { type CandidateSearch, candidateSearch } from './candidate-search.ts';
import type { CorrectionModel } from './catalogue.ts';
import { type Defect, medianDepth } from './defects.ts';
import { heatCautions } from './heat-cautions.ts';
import type { PanelPlan, Plan, PlannedStep, Verdict } from './plan.ts';
import { cautionsOf, choiceReasons, defectRemarks, nothingFits } from './plan-remarks.ts';
import { meanRemoval, type PaintKnowledge, untriedLogSd } from './removal-knowledge.ts';
import { setTime } from './removal-rate.ts';
import type { Step } from './step.ts';
import { chooseSteps, type RatedCandidate } from './step-search.ts';

export type PlanRequest = {
  /** Panels to plan: all of a survey, or those asked for. */
  readonly panels: readonly PanelSurvey[];
  /** General and local defects of a panel; assumed ones where none were recorded. */
  readonly defectsOf: (panelId: string) => readonly Defect[];
  /** Share of the general defects to clear, 0–1. */
  readonly aim: number;
  /** Worst haze grade that may be left. */
  readonly hazeAllowed: number;
  /** What is known of a panel's paint; the same object for panels of one paint. */
  readonly paintOf: (panel: PanelSurvey) => PaintKnowledge;
  /** What may come off a panel, or one of its zones, at a removal's ln-SD: never more at a larger one. */
  readonly allowanceAt: (part: PanelSurvey, logSd: number) => Allowance;
  readonly model: CorrectionModel;
  readonly thinnerClear: FilmModel['thinnerClear'];
  readonly edgeWidth: FilmModel['edgeWidth'];
};

export function planCorrection(request: PlanRequest): Plan {
  const search = candidateSearch(request);
  const panels = request.panels.map((survey) => planWhole(survey, request, search));
  return {
    panels,
    expectedPanelsBelowFloor: panels.reduce((sum, panel) => sum + riskOfAny(panel), 0),
  };
}

/** Zones are planned apart; the panel shows the plan of the one that allows least. */
function planWhole(survey: PanelSurvey, request: PlanRequest, search: CandidateSearch): PanelPlan {
  const zones = survey.zones.map((zone) => {
    const plan = planPanel(zone, request, search);
    return { ...plan, survey: { ...plan.survey, zone: zone.zone }, zone: zone.zone };
  });
  const [first, ...rest] = zones;
  if (first === undefined) return planPanel(survey, request, search);
  const least = rest.reduce(
    (one, other) => (other.survey.budget < one.survey.budget ? other : one),
    first,
  );
  const { zone: _, ...shown } = least;
  const { topcoat, limits, budget, boundBy } = least.survey;
  const surveyed: readonly ZoneSurvey[] = zones.map((zone) => zone.survey);
  return {
    ...shown,
    survey: { ...survey, topcoat, limits, budget, boundBy, zones: surveyed },
    zones,
  };
}

/** Zones of one panel share its paint, but how much nobody knows: the sum is never too little. */
const riskOfAny = ({ risk, zones }: PanelPlan): number =>
  zones.length === 0
    ? (risk ?? 0)
    : Math.min(
        1,
        zones.reduce((sum, zone) => sum + (zone.risk ?? 0), 0),
      );

function planPanel(survey: PanelSurvey, request: PlanRequest, search: CandidateSearch): PanelPlan {
  const defects = request.defectsOf(survey.panel.id);
  const remarks = defectRemarks(defects);
  const depth = generalDepth(defects);
  const failed = survey.facts.clearCoatFailure || defects.some(isFailure);
  if (failed) {
    const reason = remark('clear-coat-failure', 'clear coat failure: no polishing, refinish');
    return untouched(survey, request, 'refinish', [reason, ...remarks]);
  }
  if (depth === 0) {
    return untouched(survey, request, 'leave', [
      remark('nothing-to-correct', 'no general defect to correct'),
      ...remarks,
    ]);
  }
  const allowed = allowedRemoval(survey, request.allowanceAt);
  const machine = choose('machine', depth, survey, request, { search, allowed });
  const hand = isWorth(machine, request)
    ? undefined
    : choose('hand', depth, survey, request, { search, allowed });
  const choice = [machine, hand].find((one) => isWorth(one, request));
  if (choice === undefined) {
    const at = atUntried(survey, request);
    const ways = search.find('machine', survey, depth).candidates.length;
    const reason = nothingFits(at, machine ?? hand, ways, request.model.machines);
    return untouched(survey, request, 'leave', [reason, ...remarks]);
  }
  const at = { ...survey, ...request.allowanceAt(survey, choice.removal.logSd) };
  const verdict = choice === hand ? 'hand' : reaches(choice, request) ? 'polish' : 'lighter';
  return worked(at, request, choice, verdict, [...choiceReasons(verdict, at), ...remarks]);
}

/** A panel that is left alone shows what an untried combination might take. */
const atUntried = (survey: PanelSurvey, { allowanceAt, paintOf, model }: PlanRequest) => ({
  ...survey,
  ...allowanceAt(survey, untriedLogSd(paintOf(survey), model.removal.stepLogSd)),
});

const isFailure = ({ kind, grade }: Defect): boolean => kind.scope === 'refinish' && grade > 0;

/** The deepest of the general defects decides: what clears it clears the others. */
const generalDepth = (defects: readonly Defect[]): number =>
  Math.max(0, ...defects.filter(({ kind }) => kind.scope === 'general').map(medianDepth));

const isWorth = (
  choice: RatedCandidate | undefined,
  { model }: PlanRequest,
): choice is RatedCandidate =>
  choice !== undefined && choice.correction >= model.correction.leastCorrection;

const reaches = ({ correction }: RatedCandidate, { aim, model }: PlanRequest): boolean =>
  correction >= aim - model.correction.choice.equalShortfall;

function choose(
  by: 'machine' | 'hand',
  depth: number,
  survey: PanelSurvey,
  { aim, model }: PlanRequest,
  { search, allowed }: { readonly search: CandidateSearch; readonly allowed: AllowedRemoval },
): RatedCandidate | undefined {
  const { candidates, widest } = search.find(by, survey, depth);
  return chooseSteps(
    candidates,
    { aim, area: survey.panel.area, ...model.correction.choice },
    (removal) => removal.median <= allowed(removal.logSd, widest),
  );
}

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

function worked(
  survey: PanelSurvey,
  request: PlanRequest,
  { steps, removal, correction }: RatedCandidate,
  verdict: Verdict,
  reasons: readonly Remark[],
): PanelPlan {
  const { model, aim, thinnerClear, edgeWidth } = request;
  return {
    survey,
    verdict,
    steps: steps.map((step) => planned(step, survey, model)),
    removal: {
      median: removal.median,
      mean: meanRemoval(removal),
      low: removalQuantile(removal, 0.05),
      high: removalQuantile(removal, 0.95),
    },
    aimed: aim,
    expected: correction,
    ...risksOf(survey, removal, thinnerClear),
    provisional: request.paintOf(survey).provisional,
    reasons,
    cautions: [
      ...cautionsOf(survey, steps, { edgeWidth, heat: model.heat }),
      ...heatCautions(survey.panel.substrate, steps, model),
    ],
    zones: [],
  };
}

const planned = (step: Step, { panel }: PanelSurvey, model: CorrectionModel): PlannedStep => ({
  ...step,
  removal: micrometres(step.combination.perSet * step.sets),
  machineTime: minutes(step.sets * setTime(step.combination.machine, panel.area, model.removal)),
});

function untouched(
  survey: PanelSurvey,
  request: PlanRequest,
  verdict: Verdict,
  reasons: readonly Remark[],
): PanelPlan {
  const zero = micrometres(0);
  const paint = request.paintOf(survey);
  const none = { median: zero, logSd: untriedLogSd(paint, request.model.removal.stepLogSd) };
  return {
    survey: atUntried(survey, request),
    verdict,
    steps: [],
    removal: { median: zero, mean: zero, low: zero, high: zero },
    aimed: request.aim,
    expected: 0,
    ...risksOf(survey, none, request.thinnerClear),
    provisional: paint.provisional,
    reasons,
    cautions: [],
    zones: [],
  };
}
