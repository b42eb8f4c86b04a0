/** Survey and defects → plan: on each panel the mildest steps that reach the aim within every limit. */
import { type Remark, remark } from '../base/remark.ts';
import { type Micrometres, micrometres, minutes } from '../base/units.ts';
import type { FilmModel } from '../film/film-model.ts';
import { clearRisk, type ExpectedRemoval, removalQuantile } from '../film/removal-risk.ts';
import type { PanelSurvey } from '../film/survey.ts';
import type { CorrectionModel } from './catalogue.ts';
import { type Combination, ladder } from './combination.ts';
import { type Defect, expectedCorrection, medianDepth } from './defects.ts';
import { heatCautions } from './heat-cautions.ts';
import type { PanelPlan, Plan, PlannedStep, Verdict } from './plan.ts';
import { cautionsOf, choiceReasons, defectRemarks, nothingFits } from './plan-remarks.ts';
import { setTime } from './removal-rate.ts';
import type { Step } from './step.ts';
import { type Candidate, type Choice, candidates, chooseSteps } from './step-search.ts';

export type Hardness = 'soft' | 'medium' | 'hard' | 'unknown';

export type PlanRequest = {
  /** Panels to plan: all of a survey, or those asked for. */
  readonly panels: readonly PanelSurvey[];
  /** General and local defects of a panel; assumed ones where none were recorded. */
  readonly defectsOf: (panelId: string) => readonly Defect[];
  /** Share of the general defects to clear, 0–1. */
  readonly aim: number;
  /** Worst haze grade that may be left. */
  readonly hazeAllowed: number;
  readonly hardness: Hardness;
  readonly model: CorrectionModel;
  readonly thinnerClear: FilmModel['thinnerClear'];
  readonly edgeWidth: FilmModel['edgeWidth'];
};

/**
 * ln-SD of a plan's removal before any test spot: hardness, the combination's own rate and the step.
 *
 * The own deviations of a plan's combinations are taken as shared: combinations on one machine or one
 * pad share part of theirs, nobody has measured how much, and this way the spread is never understated.
 */
export const removalLogSd = ({
  hardnessLogSd,
  combinationLogSd,
  stepLogSd,
}: CorrectionModel['removal']): number => Math.hypot(hardnessLogSd, combinationLogSd, stepLogSd);

/** Factor of removal for paint whose hardness is declared. */
const hardnessFactor = (hardness: Hardness, removal: CorrectionModel['removal']): number =>
  ({ soft: removal.softFactor, hard: removal.hardFactor, medium: 1, unknown: 1 })[hardness];

export function planCorrection(request: PlanRequest): Plan {
  const { model, hardness } = request;
  const rungs = ladder(model, hardnessFactor(hardness, model.removal));
  const search = candidateSearch(rungs, request);
  const panels = request.panels.map((survey) => planWhole(survey, request, search));
  return {
    panels,
    expectedPanelsBelowFloor: panels.reduce((sum, panel) => sum + riskOfAny(panel), 0),
  };
}

/** Zones are planned apart; the panel shows the plan of the one that allows least. */
function planWhole(survey: PanelSurvey, request: PlanRequest, search: Search): PanelPlan {
  const zones = survey.zones.map((zone) => ({
    ...planPanel(zone, request, search),
    zone: zone.zone,
  }));
  const [first, ...rest] = zones;
  if (first === undefined) return planPanel(survey, request, search);
  const least = rest.reduce(
    (one, other) => (other.survey.budget < one.survey.budget ? other : one),
    first,
  );
  const { zone: _, ...shown } = least;
  return { ...shown, survey, zones };
}

/** Zones of one panel share its paint, but how much nobody knows: the sum is never too little. */
const riskOfAny = ({ risk, zones }: PanelPlan): number =>
  zones.length === 0
    ? (risk ?? 0)
    : Math.min(
        1,
        zones.reduce((sum, zone) => sum + (zone.risk ?? 0), 0),
      );

type By = 'machine' | 'hand';
type Search = (by: By, flatWidth: PanelSurvey['panel']['flatWidth']) => readonly Candidate[];

/** Candidates depend on the panel only through its flat width, so they are found once for each. */
function candidateSearch(rungs: readonly Combination[], request: PlanRequest): Search {
  const { model, hazeAllowed } = request;
  const found = new Map<string, readonly Candidate[]>();
  const squareMetre = 1 as Parameters<typeof setTime>[1];
  const paceOf = ({ combination, sets }: Step): number =>
    sets * setTime(combination.machine, squareMetre, model.removal);
  return (by, flatWidth) => {
    const key = `${by} ${flatWidth}`;
    const known = found.get(key);
    if (known !== undefined) return known;
    const usable = rungs.filter(
      ({ machine }) => (machine.motion.kind === 'hand') === (by === 'hand'),
    );
    const diameters = usable.map(({ machine }) => machine.padDiameter);
    const context = {
      flatWidth,
      fullSizePad: Math.max(0, ...diameters.filter((diameter) => diameter <= flatWidth)),
      hazeAllowed,
      hazeCleared: model.correction.haze.cleared,
    };
    const all = candidates(usable, context, paceOf, model.correction.mostSets);
    found.set(key, all);
    return all;
  };
}

function planPanel(survey: PanelSurvey, request: PlanRequest, search: Search): PanelPlan {
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
  const machine = choose('machine', depth, survey, request, search);
  const hand = isWorth(machine, request)
    ? undefined
    : choose('hand', depth, survey, request, search);
  const choice = [machine, hand].find((one) => isWorth(one, request));
  if (choice === undefined) {
    const ways = search('machine', survey.panel.flatWidth).length;
    const reason = nothingFits(survey, machine ?? hand, ways, request.model.machines);
    return untouched(survey, request, 'leave', [reason, ...remarks]);
  }
  const verdict = choice === hand ? 'hand' : reaches(choice, request) ? 'polish' : 'lighter';
  return worked(survey, request, choice, verdict, [...choiceReasons(verdict, survey), ...remarks]);
}

const isFailure = ({ kind, grade }: Defect): boolean => kind.scope === 'refinish' && grade > 0;

/** The deepest of the general defects decides: what clears it clears the others. */
const generalDepth = (defects: readonly Defect[]): number =>
  Math.max(0, ...defects.filter(({ kind }) => kind.scope === 'general').map(medianDepth));

const isWorth = (choice: Choice | undefined, { model }: PlanRequest): choice is Choice =>
  choice !== undefined && choice.correction >= model.correction.leastCorrection;

const reaches = ({ correction }: Choice, { aim, model }: PlanRequest): boolean =>
  correction >= aim - model.correction.choice.equalShortfall;

function choose(
  by: By,
  depth: number,
  { panel, budget }: PanelSurvey,
  { aim, model }: PlanRequest,
  search: Search,
): Choice | undefined {
  const logSd = removalLogSd(model.removal);
  return chooseSteps(
    search(by, panel.flatWidth),
    { budget, aim, area: panel.area, ...model.correction.choice },
    (median) => expectedCorrection(removal(median, logSd), depth, model.correction),
    (median) => meanOf(removal(median, logSd)),
  );
}

const removal = (median: number, logSd: number): ExpectedRemoval => ({
  median: micrometres(median),
  logSd,
});

/** Mean of a lognormal: median·exp(σ²/2). */
const meanOf = ({ median, logSd }: ExpectedRemoval): Micrometres =>
  micrometres(median * Math.exp(logSd ** 2 / 2));

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
  { candidate, correction }: Choice,
  verdict: Verdict,
  reasons: readonly Remark[],
): PanelPlan {
  const { model, aim, thinnerClear, edgeWidth } = request;
  const expected = removal(candidate.median, removalLogSd(model.removal));
  return {
    survey,
    verdict,
    steps: candidate.steps.map((step) => planned(step, survey, model)),
    removal: {
      median: expected.median,
      mean: meanOf(expected),
      low: removalQuantile(expected, 0.05),
      high: removalQuantile(expected, 0.95),
    },
    aimed: aim,
    expected: correction,
    ...risksOf(survey, expected, thinnerClear),
    provisional: true,
    reasons,
    cautions: [
      ...cautionsOf(survey, candidate.steps, { edgeWidth, heat: model.heat }),
      ...heatCautions(survey.panel.substrate, candidate.steps, model),
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
  const none = removal(0, removalLogSd(request.model.removal));
  return {
    survey,
    verdict,
    steps: [],
    removal: { median: zero, mean: zero, low: zero, high: zero },
    aimed: request.aim,
    expected: 0,
    ...risksOf(survey, none, request.thinnerClear),
    provisional: true,
    reasons,
    cautions: [],
    zones: [],
  };
}
