/** What is to be done on a panel or a zone, looked at by itself. */

import { once } from '../../base/kept.ts';
import { type Remark, remark } from '../../base/remark.ts';
import type { Allowance } from '../../film/limits/allowance.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { type Defect, medianDepth } from '../defects.ts';
import { untriedLogSd } from '../removal/removal-knowledge.ts';
import { setsOf } from '../removal/step.ts';
import { allowedRemoval } from './allowed-removal.ts';
import { type By, waysToWork } from './candidate-search.ts';
import {
  type Choice,
  type ChoiceLimits,
  chooseSteps,
  type RatedCandidate,
  type Within,
  within,
} from './choose-steps.ts';
import { nothingFits } from './plan-remarks.ts';
import type { PlanAim, PlanGrounds, PlanRequest } from './plan-request.ts';
import { provenCares, provenWays } from './proven-ways.ts';

export type Decision =
  | ({
      readonly kind: 'work';
      readonly part: PanelSurvey;
      readonly by: By;
      /** The best, and what may stand for it without changing what can be said of the panel. */
      readonly choice: Choice;
    } & Pick<Within, 'isHeldByFilm'>)
  | {
      readonly kind: 'none';
      readonly part: PanelSurvey;
      readonly verdict: 'leave' | 'refinish';
      readonly reason: Remark;
    };

/** What parts of a car are decided on before anything is aimed at. */
export type DecisionGrounds = PlanGrounds & Pick<PlanAim, 'hazeAllowed'>;

/** What a decision looks at of the aim and the shop. */
type AimTerms = Pick<PlanRequest, 'aim' | 'model'>;

/** The decision under any aim; what does not depend on the aim is looked up once. */
export function decisionsOn(
  part: PanelSurvey,
  grounds: DecisionGrounds,
): (aim: PlanAim['aim']) => Decision {
  const defects = grounds.defectsOf(part.panel.id);
  if (hasFailed(part, defects)) {
    const text = 'clear coat failure: no polishing, refinish';
    return () => none(part, 'refinish', remark('clear-coat-failure', text));
  }
  const depth = generalDepth(defects);
  return depth === 0
    ? () => none(part, 'leave', remark('nothing-to-correct', 'no general defect to correct'))
    : decisionsAt(depth, part, grounds);
}

const none = (part: PanelSurvey, verdict: 'leave' | 'refinish', reason: Remark): Decision => ({
  kind: 'none',
  part,
  verdict,
  reason,
});

function decisionsAt(
  depth: number,
  part: PanelSurvey,
  grounds: DecisionGrounds,
): (aim: PlanAim['aim']) => Decision {
  const { model } = grounds;
  const ways = waysWithin(part, depth, grounds);
  const leftAlone = leavingAlone(part, ways, grounds);
  const workedBy = (by: By, choice: Choice, terms: AimTerms): Decision => ({
    kind: 'work',
    part,
    by,
    choice: interchangeable(choice, terms),
    isHeldByFilm: ways[by]().isHeldByFilm,
  });
  return (aim) => {
    const terms = { aim, model };
    const { machine, hand } = bestWays(part, ways, terms);
    if (machine !== undefined && isWorth(machine.best, terms)) {
      return workedBy('machine', machine, terms);
    }
    if (hand !== undefined && isWorth(hand.best, terms)) {
      return workedBy('hand', hand, terms);
    }
    return leftAlone((machine ?? hand)?.best);
  };
}

/** `best` is what there is, not worth its film: the same under most aims. */
function leavingAlone(
  part: PanelSurvey,
  ways: WaysWithin,
  grounds: DecisionGrounds,
): (best: RatedCandidate | undefined) => Decision {
  const left = new Map<RatedCandidate | undefined, Decision>();
  return (best) => {
    const before = left.get(best);
    if (before !== undefined) return before;
    const decision = none(part, 'leave', whyLeft(part, best, ways.machine(), grounds));
    left.set(best, decision);
    return decision;
  };
}

function whyLeft(
  part: PanelSurvey,
  best: RatedCandidate | undefined,
  { lookedAt, isHeldByFilm }: Within,
  grounds: DecisionGrounds,
): Remark {
  const untried = allowanceUntried(part, grounds);
  if (untried.budget > 0 && grounds.paintOf(part).triedHere !== undefined) {
    return untried.boundBy.code === 'spot-depth' ? TRIED_NO_DEEPER : TRIED_TOO_MILD;
  }
  const { machines } = grounds.model;
  const { flatWidth } = part.panel;
  return nothingFits(untried, best, lookedAt, { machines, flatWidth, isHeldByFilm });
}

const TRIED_TOO_MILD = remark(
  'stronger-than-tried',
  'steps no stronger than those tried on this panel clear too little to be worth their film: try the next rung on its spot first',
);

const TRIED_NO_DEEPER = remark(
  'stronger-than-tried',
  'no deeper than its test spot went without colour, too little clears to be worth its film: work that spot deeper first',
);

/** What a part's limits allow of the ways to work it; looked for when it is asked for. */
export type WaysWithin = Readonly<Record<By, () => Within>>;

export function waysWithin(
  survey: PanelSurvey,
  depth: number,
  grounds: DecisionGrounds,
): WaysWithin {
  const find = waysToWork(survey, grounds);
  const allowed = allowedRemoval(survey, grounds.allowanceAt);
  const nothingMayGo = once(() => isNothingAllowed(survey, grounds));
  const { hazeAllowed, model } = grounds;
  const cares = once(() => provenCares(grounds.paintOf(survey), hazeAllowed, model));
  const waysBy = (by: By) =>
    once(() => {
      if (nothingMayGo()) return NO_WAYS;
      const found = find(by, depth, hazeAllowed);
      const ways = within(found, allowed);
      return cares().size === 0 ? ways : { ...ways, proven: provenWays(found, allowed, cares()) };
    });
  return { machine: waysBy('machine'), hand: waysBy('hand') };
}

const NO_WAYS: Within = { lookedAt: 0, mostCleared: 0, isHeldByFilm: true, climb: [] };

/** However well steps are foretold: never better than to the doubt of a step by itself. */
const isNothingAllowed = (survey: PanelSurvey, { allowanceAt, model }: DecisionGrounds): boolean =>
  survey.budget === 0 && allowanceAt(survey, model.removal.stepLogSd).budget === 0;

/** The best by machine and, where that is not worth its film, by hand. */
export function bestWays(
  survey: PanelSurvey,
  ways: WaysWithin,
  terms: AimTerms,
): { readonly machine: Choice | undefined; readonly hand: Choice | undefined } {
  const limits = choiceLimits(survey, terms);
  const machine = chooseSteps(ways.machine(), limits);
  const isEnough = machine !== undefined && isWorth(machine.best, terms);
  return { machine, hand: isEnough ? undefined : chooseSteps(ways.hand(), limits) };
}

export function choiceLimits({ panel }: PanelSurvey, { aim, model }: AimTerms): ChoiceLimits {
  const { equalShortfall, removalBin } = model.correction.choice;
  return { aim, area: panel.area, equalShortfall, removalBin };
}

/** A panel that is left alone shows what an untried combination might take. */
export const allowanceUntried = (
  part: PanelSurvey,
  { allowanceAt, paintOf, model }: PlanGrounds,
): Allowance => allowanceAt(part, untriedLogSd(paintOf(part), model.removal.stepLogSd));

export const hasFailed = (survey: PanelSurvey, defects: readonly Defect[]): boolean =>
  survey.facts.clearCoatFailure ||
  defects.some(({ kind, grade }) => kind.scope === 'refinish' && grade > 0);

/** The deepest of the general defects decides: what clears it clears the others. */
export const generalDepth = (defects: readonly Defect[]): number =>
  Math.max(0, ...defects.filter(({ kind }) => kind.scope === 'general').map(medianDepth));

const isWorth = ({ correction }: RatedCandidate, { model }: AimTerms): boolean =>
  correction >= model.correction.leastCorrection;

export const reaches = ({ correction }: RatedCandidate, { aim, model }: AimTerms): boolean =>
  correction >= aim - model.correction.choice.equalShortfall;

/**
 * Of equal candidates those that may stand for the best: they reach the aim where it does, are worth their
 * film as it is, and ask for no more steps and no more sets.
 */
function interchangeable({ equals, ...choice }: Choice, terms: AimTerms): Choice {
  const { best } = choice;
  const bestReaches = reaches(best, terms);
  const sets = setsOf(best.steps);
  return {
    ...choice,
    equals: equals.filter(
      (one) =>
        isWorth(one, terms) &&
        (!bestReaches || reaches(one, terms)) &&
        one.steps.length <= best.steps.length &&
        setsOf(one.steps) <= sets,
    ),
  };
}
