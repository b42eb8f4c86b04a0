/**
 * What a panel near its line would be if the comparison that its word hangs on came out otherwise, how much might
 * go then, and how much over both sides together. Everything else is as it was read; film that would be thin is held
 * to have a point at the floor of the total, film that would be cut back a mean on the line of that word, as it
 * would be that or less.
 */
import { micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import { type AllowanceCase, unsaidAllowance } from '../limits/allowance.ts';
import { bindingLimit, inWords } from '../limits/limit.ts';
import type { RemovalTerms } from '../limits/removal-limits.ts';
import type { PanelFilm } from '../panel-film.ts';
import type { PanelSurvey } from '../survey.ts';
import { type Condition, PRECEDENCE } from './condition.ts';
import type { ConditionSureness, OtherSide } from './condition-sureness.ts';
import { overBothSides } from './over-both-sides.ts';

/** A panel with what may go if its word holds. */
export type Judged = Omit<PanelSurvey, 'otherSide'>;

/** Null where no figure decides the word, or none comes near. */
export function otherSideOf(
  panel: Judged,
  terms: RemovalTerms,
  model: FilmModel,
): OtherSide | null {
  const { sureness, film, zones } = panel;
  if (sureness?.sure !== 'near' || film === null) return null;
  const conditions = otherConditions(panel, sureness.deciding);
  const [condition] = conditions;
  const ifWordHolds = panel.budget;
  if (zones.length > 0 || condition === 'mixed') {
    return { condition, budget: null, boundBy: null, ifWordHolds, overBoth: null };
  }
  const there = unsaidAllowance(onTheOtherSide(panel, sureness.deciding, film), terms, model);
  const overBoth =
    there.budget < ifWordHolds
      ? overBothSides(panel, there, sureness.deciding.otherSide, terms)
      : null;
  const boundBy = inWords(bindingLimit(there.limits));
  return { condition, budget: there.budget, boundBy, ifWordHolds, overBoth };
}

/** The panel's film as it would be there. */
export function onTheOtherSide(
  panel: Pick<Judged, 'facts' | 'baseline' | 'totalFloor' | 'condition' | 'also'>,
  deciding: ConditionSureness['deciding'],
  film: PanelFilm,
): AllowanceCase {
  const { facts, baseline, totalFloor } = panel;
  const conditions = otherConditions(panel, deciding);
  const [condition] = conditions;
  const smallest = condition === 'thin' ? Math.min(film.smallest, totalFloor) : film.smallest;
  const mean = condition === 'cut-back' ? Math.min(film.mean, deciding.line) : film.mean;
  return {
    film: { ...film, smallest: micrometres(smallest), mean: micrometres(mean) },
    facts,
    points: film.count,
    conditions,
    baseline,
  };
}

/** Strongest first. */
function otherConditions(
  { condition, also }: Pick<Judged, 'condition' | 'also'>,
  { condition: beyond, isBeyond }: ConditionSureness['deciding'],
): readonly [Condition, ...Condition[]] {
  const now = [condition, ...also].filter((one) => one !== beyond && one !== 'original');
  const [first, ...rest] = (isBeyond ? now : [...now, beyond]).sort(
    (a, b) => PRECEDENCE.indexOf(a) - PRECEDENCE.indexOf(b),
  );
  return first === undefined ? ['original'] : [first, ...rest];
}
