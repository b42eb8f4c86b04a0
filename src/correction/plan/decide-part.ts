/** What is to be done on a panel or a zone, looked at by itself. */

import { kept } from '../../base/kept.ts';
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

export type Decision =
  | {
      readonly kind: 'work';
      readonly part: PanelSurvey;
      readonly by: By;
      /** The best, and what may stand for it without changing what can be said of the panel. */
      readonly choice: Choice;
    }
  | {
      readonly kind: 'none';
      readonly part: PanelSurvey;
      readonly verdict: 'leave' | 'refinish';
      readonly reason: Remark;
    };

/** The decision under any aim; what does not depend on the aim is looked up once. */
export function decisionsOn(part: PanelSurvey, grounds: PlanGrounds): (aim: PlanAim) => Decision {
  const defects = grounds.defectsOf(part.panel.id);
  const none = (verdict: 'leave' | 'refinish', reason: Remark): Decision => ({
    kind: 'none',
    part,
    verdict,
    reason,
  });
  if (hasFailed(part, defects)) {
    const text = 'clear coat failure: no polishing, refinish';
    return () => none('refinish', remark('clear-coat-failure', text));
  }
  const depth = generalDepth(defects);
  if (depth === 0) {
    return () => none('leave', remark('nothing-to-correct', 'no general defect to correct'));
  }
  const ways = waysWithin(part, depth, grounds);
  return (aim) => {
    const request = { ...grounds, ...aim };
    const { machine, hand } = bestWays(part, ways, request);
    for (const [by, choice] of [['machine', machine] as const, ['hand', hand] as const]) {
      if (choice !== undefined && isWorth(choice.best, request)) {
        return { kind: 'work', part, by, choice: interchangeable(choice, request) };
      }
    }
    const { lookedAt } = ways('machine', aim.hazeAllowed);
    const best = (machine ?? hand)?.best;
    const untried = allowanceUntried(part, grounds);
    return none('leave', nothingFits(untried, best, lookedAt, grounds.model.machines));
  };
}

/** What a part's limits allow of the ways to work it. */
export type WaysWithin = (by: By, hazeAllowed: number) => Within;

export function waysWithin(survey: PanelSurvey, depth: number, grounds: PlanGrounds): WaysWithin {
  const find = waysToWork(survey, grounds);
  const allowed = allowedRemoval(survey, grounds.allowanceAt);
  return kept((by, hazeAllowed) => within(find(by, depth, hazeAllowed), allowed));
}

/** The best by machine and, where that is not worth its film, by hand. */
export function bestWays(
  survey: PanelSurvey,
  ways: WaysWithin,
  request: PlanRequest,
): { readonly machine: Choice | undefined; readonly hand: Choice | undefined } {
  const limits = choiceLimits(survey, request);
  const choose = (by: By) => chooseSteps(ways(by, request.hazeAllowed), limits);
  const machine = choose('machine');
  const isEnough = machine !== undefined && isWorth(machine.best, request);
  return { machine, hand: isEnough ? undefined : choose('hand') };
}

export const choiceLimits = (
  { panel }: PanelSurvey,
  { aim, model }: Pick<PlanRequest, 'aim' | 'model'>,
): ChoiceLimits => ({ aim, area: panel.area, ...model.correction.choice });

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

const isWorth = ({ correction }: RatedCandidate, { model }: PlanRequest): boolean =>
  correction >= model.correction.leastCorrection;

export const reaches = (
  { correction }: RatedCandidate,
  { aim, model }: Pick<PlanRequest, 'aim' | 'model'>,
): boolean => correction >= aim - model.correction.choice.equalShortfall;

/**
 * Of equal candidates those that may stand for the best: they reach the aim where it does, are worth their
 * film as it is, and ask for no more steps and no more sets.
 */
const interchangeable = ({ best, equals }: Choice, request: PlanRequest): Choice => ({
  best,
  equals: equals.filter(
    (one) =>
      isWorth(one, request) &&
      (reaches(one, request) || !reaches(best, request)) &&
      one.steps.length <= best.steps.length &&
      setsOf(one.steps) <= setsOf(best.steps),
  ),
});
