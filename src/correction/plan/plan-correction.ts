/**
 * Survey and defects → plan: on each panel the mildest steps that reach the aim within every limit, with
 * as few combinations over the whole car as that takes.
 */
import { type PanelSurvey, partsOf, type ZoneSurvey } from '../../film/survey.ts';
import { stepsId } from '../removal/step.ts';
import { candidateSearch } from './candidate-search.ts';
import { type Decision, decidePart } from './decide-part.ts';
import { fewestSetUps } from './fewest-set-ups.ts';
import { localWork } from './local-work.ts';
import { type Figures, figuresOf, untouchedPlan, workedPlan } from './panel-plan.ts';
import type { PanelPlan, Plan, ZonePlan } from './plan.ts';
import type { AllowanceAt, PlanRequest } from './plan-request.ts';
import type { RatedCandidate } from './step-search.ts';

export const planCorrection = (request: PlanRequest): Plan => plannerFor(request).at(request);

function planUnder(request: PlanRequest, figures: FiguresOf): Plan {
  const search = candidateSearch(request);
  const decisions = request.panels
    .flatMap(partsOf)
    .map((part) => [part, decidePart(part, request, search)] as const);
  const plans = new Map(partPlans(decisions, request, figures));
  const panels = request.panels.map((survey) => panelPlan(survey, plans, request));
  return {
    panels,
    expectedPanelsBelowFloor: panels.reduce((sum, panel) => sum + riskOfAny(panel), 0),
  };
}

/** Plans of one vehicle under several aims: what they share is worked out once. */
export function plannerFor(request: Omit<PlanRequest, 'aim' | 'hazeAllowed'>): {
  readonly at: (aim: Pick<PlanRequest, 'aim' | 'hazeAllowed'>) => Plan;
} {
  const { allowanceOnPlace, ...rest } = request;
  const shared = {
    ...rest,
    allowanceAt: keptByPart(request.allowanceAt),
    ...(allowanceOnPlace === undefined ? {} : { allowanceOnPlace: keptByPart(allowanceOnPlace) }),
  };
  const figures = keptFigures(shared);
  return { at: ({ aim, hazeAllowed }) => planUnder({ ...shared, aim, hazeAllowed }, figures) };
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

type FiguresOf = (part: PanelSurvey, way: RatedCandidate) => Figures;

/** Several aims often come to the same steps on a part. */
function keptFigures(request: Omit<PlanRequest, 'aim' | 'hazeAllowed'>): FiguresOf {
  const known = new Map<PanelSurvey, Map<string, Figures>>();
  return (part, way) => {
    const ofPart = known.get(part) ?? new Map<string, Figures>();
    known.set(part, ofPart);
    const key = stepsId(way.steps);
    const found = ofPart.get(key) ?? figuresOf(part, way, request);
    ofPart.set(key, found);
    return found;
  };
}

/** What is decided on each part, and of equal ways the one that the whole car is worked with. */
function partPlans(
  decisions: readonly (readonly [PanelSurvey, Decision])[],
  request: PlanRequest,
  figures: FiguresOf,
): readonly (readonly [PanelSurvey, PanelPlan])[] {
  const worked = decisions.flatMap(([part, decision]) =>
    decision.kind === 'work' ? [{ part, decision }] : [],
  );
  const taken = fewestSetUps(
    worked.map(({ part, decision }) => ({ ...decision.choice, area: part.panel.area })),
  );
  const waysOf = new Map(worked.map(({ part }, i) => [part, taken[i]]));
  return decisions.map(([part, decision]) => {
    if (decision.kind === 'none') return [part, untouchedPlan(decision, request)];
    const way = waysOf.get(part) ?? decision.choice.best;
    return [part, workedPlan(decision, way, figures(part, way), request)];
  });
}

/** Zones are planned apart; the panel shows the plan of the one that allows least. */
function panelPlan(
  survey: PanelSurvey,
  plans: ReadonlyMap<PanelSurvey, PanelPlan>,
  request: PlanRequest,
): PanelPlan {
  const planOf = (part: PanelSurvey): PanelPlan => {
    const plan = plans.get(part);
    if (plan === undefined) throw new Error('each part is planned');
    return plan;
  };
  const zones = survey.zones.map((zone): ZonePlan & { readonly survey: ZoneSurvey } => {
    const plan = planOf(zone);
    return { ...plan, survey: { ...plan.survey, zone: zone.zone }, zone: zone.zone };
  });
  const defects = request.defectsOf(survey.panel.id);
  const [first, ...rest] = zones;
  if (first === undefined) {
    const plan = planOf(survey);
    return { ...plan, local: localWork([plan], defects, request) };
  }
  const least = rest.reduce(
    (one, other) => (other.survey.budget < one.survey.budget ? other : one),
    first,
  );
  const { zone: _, ...shown } = least;
  const { topcoat, limits, budget, boundBy } = least.survey;
  return {
    ...shown,
    survey: {
      ...survey,
      topcoat,
      limits,
      budget,
      boundBy,
      zones: zones.map((zone) => zone.survey),
    },
    local: localWork([first, ...rest], defects, request),
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
