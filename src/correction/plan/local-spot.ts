/** A way to work one spot of a panel, and what comes of it wherever on the panel the spot lies. */
import type { Allowance } from '../../film/limits/allowance.ts';
import { topcoatRisk } from '../../film/limits/topcoat-risk.ts';
import { expectedCorrection } from '../defects.ts';
import { type ForetoldRemoval, foretell, meanRemoval } from '../removal/removal-knowledge.ts';
import { mostCare, type Step } from '../removal/step.ts';
import { paceOf, techniqueOn } from './candidate-search.ts';
import type { RatedCandidate } from './choose-steps.ts';
import { hazeCleared, lastStepNotRotary, refusal } from './constraints.ts';
import type { PanelPlan } from './plan.ts';
import type { PlanRequest } from './plan-request.ts';

/** The extra sets as a candidate, and the place on each part of the panel on which it may lie. */
export type Spot = RatedCandidate & { readonly places: readonly SpotPlace[] };

export type SpotPlace = {
  /** What goes there in all, the part's own steps included. */
  readonly removal: ForetoldRemoval;
  readonly allowance: Allowance;
  readonly correction: number;
  readonly keepsFilm: boolean;
  /** Its haze is gone with the part's own steps, and a rotary does not come last. */
  readonly keepsTechnique: boolean;
};

export function spotWith(
  extra: readonly Step[],
  depth: number,
  parts: readonly PanelPlan[],
  request: PlanRequest,
): Spot {
  const places = parts.map((part) => placeOn(part, extra, depth, request));
  const most = places.reduce((one, other) =>
    other.removal.median > one.removal.median ? other : one,
  );
  return {
    steps: extra,
    removal: most.removal,
    mean: meanRemoval(most.removal),
    heldTo: most.removal.logSd,
    strongest: mostCare(extra),
    pace: extra.reduce((sum, step) => sum + paceOf(step, request.model), 0),
    correction: Math.min(...places.map(({ correction }) => correction)),
    places,
  };
}

function placeOn(
  { survey, steps }: PanelPlan,
  extra: readonly Step[],
  depth: number,
  request: PlanRequest,
): SpotPlace {
  const { model, paintOf, hazeAllowed, allowanceAt, allowanceOnPlace = allowanceAt } = request;
  const paint = paintOf(survey);
  const all = [...extra, ...steps];
  const removal = foretell(all, paint, model.removal.stepLogSd);
  const allowance = allowanceOnPlace(survey, removal.logSd);
  const { depthScale } = paint.removal;
  const combinations = all.map(({ combination }) => combination);
  const { flatWidth } = survey.panel;
  const { budget } = allowance;
  const technique = { ...techniqueOn(flatWidth, hazeAllowed, combinations, model), budget };
  return {
    removal,
    allowance,
    correction: expectedCorrection(removal, depth, depthScale, model.correction.depthLogSd),
    keepsFilm: removal.median <= budget,
    keepsTechnique: refusal(all, technique, [lastStepNotRotary, hazeCleared]) === undefined,
  };
}

/** Chance of clear under its floor at the place where it is worst; null where nothing is known of one. */
export function spotRisk({ places }: Spot): number | null {
  const risks = places.flatMap(({ removal, allowance: { topcoat } }) =>
    topcoat === null ? [] : [topcoatRisk(topcoat, removal)],
  );
  return risks.length < places.length ? null : Math.max(...risks);
}

export const keepsFilm = ({ places }: Spot): boolean => places.every((place) => place.keepsFilm);
export const keepsTechnique = ({ places }: Spot): boolean =>
  places.every((place) => place.keepsTechnique);
