/**
 * What a panel near its line would be if the comparison that its word hangs on came out otherwise, and how much might
 * go then. Everything else is as it was read: the floor of the total is held against the smallest point as it reads.
 */
import type { FilmModel } from '../film-model.ts';
import { budgetOf, unsaidAllowance } from '../limits/allowance.ts';
import { type AllowanceCase, allowanceCase } from '../limits/allowance-case.ts';
import { bindingLimit, inWords } from '../limits/limit.ts';
import { acrossCutBack } from '../limits/over-sides.ts';
import type { RemovalTerms } from '../limits/removal-limits.ts';
import type { Besides } from '../limits/topcoat-cases.ts';
import type { PanelSurvey } from '../survey.ts';
import { type Condition, PRECEDENCE } from './condition.ts';
import type { ConditionSureness, OtherSide } from './condition-sureness.ts';
import { NO_SIDES } from './possible-sides.ts';

/** A panel with what may go over all that it may be. */
type Judged = Omit<PanelSurvey, 'otherSide' | 'advice'>;

/** Null where no figure decides the word, or none comes near. */
export function otherSideOf(
  panel: Judged,
  terms: RemovalTerms,
  model: FilmModel,
): OtherSide | null {
  const { sureness, zones } = panel;
  const asRead = allowanceCase(panel);
  if (sureness?.sure !== 'near' || asRead === null) return null;
  const { deciding } = sureness;
  const conditions = otherConditions(panel, deciding);
  const [condition] = conditions;
  if (zones.length > 0 || condition === 'mixed') {
    return { condition, budget: null, boundBy: null, ifWordHolds: panel.budget };
  }
  const there = unsaidAllowance(onTheOtherSide(panel, asRead, deciding), terms, model);
  return {
    condition,
    budget: there.budget,
    boundBy: inWords(bindingLimit(there.limits)),
    ifWordHolds: budgetOf({ ...asRead, sides: NO_SIDES }, terms, model),
  };
}

/** µm; less than a page shows is held back from nobody. */
export const HELD_BACK = 0.01;

/** The word that takes from what may go: across the line it is near, or where as much may go there, what it may be besides. */
export function wordThatTakes({
  otherSide,
  topcoat,
}: Pick<PanelSurvey, 'otherSide' | 'topcoat'>): Condition | null {
  if (otherSide === null || !isAlike(otherSide)) return otherSide?.condition ?? null;
  return likeliestBesides(topcoat)?.condition ?? otherSide.condition;
}

/** Whether as much may go on either side. */
export const isAlike = ({ budget, ifWordHolds }: OtherSide): boolean =>
  budget !== null && Math.abs(budget - ifWordHolds) < HELD_BACK;

export const likeliestBesides = (topcoat: PanelSurvey['topcoat']): Besides | undefined =>
  [...(topcoat?.besides ?? [])].sort((one, other) => other.chance - one.chance)[0];

/** The panel as it would be there. */
function onTheOtherSide(
  panel: Pick<Judged, 'condition' | 'also' | 'zones'>,
  asRead: AllowanceCase,
  deciding: ConditionSureness['deciding'],
): AllowanceCase {
  if (deciding.condition === 'cut-back') {
    return { ...acrossCutBack(asRead, deciding), sides: NO_SIDES };
  }
  return { ...asRead, conditions: otherConditions(panel, deciding), sides: NO_SIDES };
}

/** Strongest first. */
function otherConditions(
  { condition, also, zones }: Pick<Judged, 'condition' | 'also' | 'zones'>,
  { condition: beyond, isBeyond }: ConditionSureness['deciding'],
): readonly [Condition, ...Condition[]] {
  // A zone that is repaint only because there are two is none where there are not.
  const repainted = zones.filter((zone) => zone.condition === 'refinished');
  const byZones = repainted.length > 0 && repainted.every(({ sureness }) => sureness === null);
  const now = [condition, ...also].filter(
    (one) => one !== beyond && one !== 'original' && !(byZones && one === 'refinished'),
  );
  const [first, ...rest] = (isBeyond ? now : [...now, beyond]).sort(
    (a, b) => PRECEDENCE.indexOf(a) - PRECEDENCE.indexOf(b),
  );
  return first === undefined ? ['original'] : [first, ...rest];
}
