/** What is to be done on a panel or a zone, looked at by itself. */
import { type Remark, remark } from '../../base/remark.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { type Defect, medianDepth } from '../defects.ts';
import { untriedLogSd } from '../removal/removal-knowledge.ts';
import { setsOf } from '../removal/step.ts';
import { type AllowedRemoval, allowedRemoval } from './allowed-removal.ts';
import type { By, CandidateSearch } from './candidate-search.ts';
import { nothingFits } from './plan-remarks.ts';
import type { PlanRequest } from './plan-request.ts';
import { type Choice, type ChoiceLimits, chooseSteps, type RatedCandidate } from './step-search.ts';

export type Decision =
  | {
      readonly kind: 'work';
      readonly survey: PanelSurvey;
      readonly by: By;
      /** The best, and what may stand for it without changing what can be said of the panel. */
      readonly choice: Choice;
    }
  | {
      readonly kind: 'none';
      readonly survey: PanelSurvey;
      readonly verdict: 'leave' | 'refinish';
      readonly reason: Remark;
    };

export function decidePart(
  survey: PanelSurvey,
  request: PlanRequest,
  search: CandidateSearch,
): Decision {
  const defects = request.defectsOf(survey.panel.id);
  const none = (verdict: 'leave' | 'refinish', reason: Remark): Decision => ({
    kind: 'none',
    survey: atUntried(survey, request),
    verdict,
    reason,
  });
  if (hasFailed(survey, defects)) {
    return none(
      'refinish',
      remark('clear-coat-failure', 'clear coat failure: no polishing, refinish'),
    );
  }
  const depth = generalDepth(defects);
  if (depth === 0) {
    return none('leave', remark('nothing-to-correct', 'no general defect to correct'));
  }
  const { machine, hand } = bestWays(survey, depth, request, search);
  for (const [by, choice] of [['machine', machine] as const, ['hand', hand] as const]) {
    if (choice !== undefined && isWorth(choice.best, request)) {
      return { kind: 'work', survey, by, choice: interchangeable(choice, request) };
    }
  }
  const ways = search.find('machine', survey, depth).mildestFirst.length;
  const at = atUntried(survey, request);
  const { machines } = request.model;
  return none('leave', nothingFits(at, (machine ?? hand)?.best, ways, machines));
}

/** The best by machine and, where that is not worth its film, by hand. */
export function bestWays(
  survey: PanelSurvey,
  depth: number,
  request: PlanRequest,
  search: CandidateSearch,
): { readonly machine: Choice | undefined; readonly hand: Choice | undefined } {
  const limits = choiceLimits(survey, request);
  const allowed: AllowedRemoval = allowedRemoval(survey, request.allowanceAt);
  const choose = (by: By) => chooseSteps(search.find(by, survey, depth), limits, allowed);
  const machine = choose('machine');
  const isEnough = machine !== undefined && isWorth(machine.best, request);
  return { machine, hand: isEnough ? undefined : choose('hand') };
}

export const choiceLimits = (
  { panel }: PanelSurvey,
  { aim, model }: Pick<PlanRequest, 'aim' | 'model'>,
): ChoiceLimits => ({ aim, area: panel.area, ...model.correction.choice });

/** A panel that is left alone shows what an untried combination might take. */
const atUntried = (
  survey: PanelSurvey,
  { allowanceAt, paintOf, model }: PlanRequest,
): PanelSurvey => ({
  ...survey,
  ...allowanceAt(survey, untriedLogSd(paintOf(survey), model.removal.stepLogSd)),
});

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
