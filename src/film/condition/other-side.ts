/**
 * What a panel near its line would be if the comparison that its word hangs on came out otherwise, and how much might
 * go then, and over both sides together. Everything else is as it was read; film that would be thin is held to have a point at the floor of the
 * total, film that would be cut back a mean on the line of that word, as it would be that or less.
 */
import { micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import { type AllowanceCase, allowance } from '../limits/allowance.ts';
import type { PanelFilm, RemovalTerms } from '../limits/removal-limits.ts';
import type { PanelSurvey } from '../survey.ts';
import { type Condition, PRECEDENCE } from './condition.ts';
import type { ConditionSureness, OtherSide } from './condition-sureness.ts';
import { overBothSides } from './over-both-sides.ts';

type Judged = Omit<PanelSurvey, 'otherSide'>;

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
  if (zones.length > 0 || condition === 'mixed') return { condition, budget: null, overBoth: null };
  const there = allowance(onTheOtherSide(panel, sureness.deciding, film), terms, model);
  const overBoth =
    there.budget < panel.budget
      ? overBothSides(panel, there, sureness.deciding.otherSide, terms)
      : null;
  return { condition, budget: there.budget, overBoth };
}

/** The panel's film as it would be there. */
export function onTheOtherSide(
  panel: Judged,
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
  { condition, also }: Judged,
  { condition: beyond, isBeyond }: ConditionSureness['deciding'],
): readonly [Condition, ...Condition[]] {
  const now = [condition, ...also].filter((one) => one !== beyond && one !== 'original');
  const [first, ...rest] = (isBeyond ? now : [...now, beyond]).sort(
    (a, b) => PRECEDENCE.indexOf(a) - PRECEDENCE.indexOf(b),
  );
  return first === undefined ? ['original'] : [first, ...rest];
}
