/**
 * Survey and defects → plan: on each panel the mildest steps that reach the aim within every limit, with
 * as few combinations over the whole car as that takes.
 */
import { valueAt } from '../../base/at.ts';
import { once } from '../../base/kept.ts';
import { sum } from '../../base/sum.ts';
import type { PanelSurvey, ZoneSurvey } from '../../film/survey.ts';
import { stepsId } from '../removal/step.ts';
import type { RatedCandidate } from './choose-steps.ts';
import { decisionsOnCar, type PartDecision } from './decide-car.ts';
import { localCautions } from './local-cautions.ts';
import { localWork } from './local-work.ts';
import {
  type Figures,
  figuresOf,
  figuresUntouched,
  untouchedPlan,
  workedPlan,
} from './panel-plan.ts';
import type { PanelPlan, Plan, ZonePlan } from './plan.ts';
import type { AllowanceAt, PlanAim, PlanGrounds, PlanRequest } from './plan-request.ts';

export const planCorrection = (request: PlanRequest): Plan => plannerFor(request)(request).plan();

/** A car under one aim. */
export type PlannedCar = {
  readonly decisions: readonly PartDecision[];
  /** With all that is to be said of it; made when it is asked for. */
  readonly plan: () => Plan;
};

/** Plans of one vehicle under several aims: what they share is worked out once. */
export function plannerFor(grounds: PlanGrounds): (aim: PlanAim) => PlannedCar {
  const { allowanceOnPlace, ...rest } = grounds;
  const shared = {
    ...rest,
    allowanceAt: keptByPart(grounds.allowanceAt),
    ...(allowanceOnPlace === undefined ? {} : { allowanceOnPlace: keptByPart(allowanceOnPlace) }),
  };
  const figures = keptFigures(shared);
  const decide = decisionsOnCar(shared);
  return ({ aim, hazeAllowed }) => {
    const decisions = decide({ aim, hazeAllowed });
    return {
      decisions,
      plan: once(() => planOf(decisions, { ...shared, aim, hazeAllowed }, figures)),
    };
  };
}

function planOf(
  decisions: readonly PartDecision[],
  request: PlanRequest,
  figures: FiguresOf,
): Plan {
  const plans = new Map(decisions.map((one) => partPlan(one, request, figures)));
  const panels = request.panels.map((survey) => panelPlan(survey, plans, request));
  return {
    panels,
    expectedPanelsBelowFloor: expectedPanels(panels, ({ risk }) => risk),
    panelsBelowFloorAlready: expectedPanels(panels, ({ already }) => already),
  };
}

/** ln-SDs that differ by the rounding of their sums only are one. */
const SAME_LOG_SD = 1e-9;

function keptByPart(allowanceAt: AllowanceAt): AllowanceAt {
  const known = new Map<PanelSurvey, Map<number, ReturnType<AllowanceAt>>>();
  return (part, logSd) => {
    const ofPart = known.get(part) ?? new Map<number, ReturnType<AllowanceAt>>();
    known.set(part, ofPart);
    const key = Math.round(logSd / SAME_LOG_SD);
    const found = ofPart.get(key) ?? allowanceAt(part, logSd);
    ofPart.set(key, found);
    return found;
  };
}

/** Of a part worked so, or left alone. */
type FiguresOf = (part: PanelSurvey, way?: RatedCandidate) => Figures;

/** Several aims often come to the same steps on a part, or to none. */
function keptFigures(request: PlanGrounds): FiguresOf {
  const known = new Map<PanelSurvey, Map<string, Figures>>();
  return (part, way) => {
    const ofPart = known.get(part) ?? new Map<string, Figures>();
    known.set(part, ofPart);
    const key = way === undefined ? '' : stepsId(way.steps);
    const found =
      ofPart.get(key) ??
      (way === undefined ? figuresUntouched(part, request) : figuresOf(part, way, request));
    ofPart.set(key, found);
    return found;
  };
}

/** By the part as it was surveyed. */
const partPlan = (
  decision: PartDecision,
  request: PlanRequest,
  figures: FiguresOf,
): readonly [PanelSurvey, PanelPlan] => [
  decision.part,
  decision.kind === 'none'
    ? untouchedPlan(decision, figures(decision.part), request)
    : workedPlan(decision, figures(decision.part, decision.taken), request),
];

/** Zones are planned apart; the panel shows the plan of the one that allows least. */
function panelPlan(
  survey: PanelSurvey,
  plans: ReadonlyMap<PanelSurvey, PanelPlan>,
  request: PlanRequest,
): PanelPlan {
  const planOf = (part: PanelSurvey): PanelPlan => valueAt(plans, part);
  const zones = survey.zones.map((zone): ZonePlan & { readonly survey: ZoneSurvey } => {
    const plan = planOf(zone);
    return { ...plan, survey: { ...plan.survey, zone: zone.zone }, zone: zone.zone };
  });
  const defects = request.defectsOf(survey.panel.id);
  const [first, ...rest] = zones;
  if (first === undefined) {
    const plan = planOf(survey);
    const local = localWork([plan], defects, request);
    return local.length === 0 ? plan : withLocal(plan, local, request);
  }
  const least = rest.reduce(
    (one, other) => (other.survey.budget < one.survey.budget ? other : one),
    first,
  );
  const { zone: _, ...shown } = least;
  const { topcoat, limits, budget, boundBy } = least.survey;
  const plan = {
    ...shown,
    survey: {
      ...survey,
      topcoat,
      limits,
      budget,
      boundBy,
      zones: zones.map((zone) => zone.survey),
    },
    zones,
  };
  return withLocal(plan, localWork([first, ...rest], defects, request), request);
}

const withLocal = (
  plan: PanelPlan,
  local: PanelPlan['local'],
  { model }: PlanRequest,
): PanelPlan => ({
  ...plan,
  local,
  cautions: [...plan.cautions, ...localCautions(plan, local, model)],
});

/** Zones of one panel share its paint, but how much nobody knows: the sum is never too little. */
const expectedPanels = (
  panels: readonly PanelPlan[],
  chanceOf: (part: PanelPlan) => number | null,
): number =>
  sum(
    panels.map((panel) =>
      panel.zones.length === 0
        ? (chanceOf(panel) ?? 0)
        : Math.min(1, sum(panel.zones.map((zone) => chanceOf(zone) ?? 0))),
    ),
  );
