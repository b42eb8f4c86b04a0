/** The topcoats that a panel may carry, each with what the panel may be besides. */
import { at } from '../../base/at.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { Condition } from '../condition/condition.ts';
import type { LineComparison } from '../condition/line-comparison.ts';
import { chancesOfLost } from '../condition/possible-sides.ts';
import type { FilmModel, LimitPolicy } from '../film-model.ts';
import { goneAllOver, putBack } from '../put-back.ts';
import type { AllowanceCase, LookedAt } from './allowance-case.ts';
import { clearTaken } from './earlier-work.ts';
import {
  type Besides,
  type PlainTopcoat,
  type TopcoatCase,
  topcoatCases,
} from './topcoat-cases.ts';

/** Film that a panel cut back lacks to the others, beyond what is on record. */
export const missingFilm = ({ film, facts, conditions, baseline }: AllowanceCase): Micrometres =>
  micrometres(
    conditions.includes('cut-back') && baseline !== null ? baseline - putBack(film.mean, facts) : 0,
  );

/**
 * The same over both sides of the line of film cut back, by the chance of either: what it lacks was polished off no
 * more surely than it is cut back.
 */
export function missingOverSides(panel: AllowanceCase): Micrometres {
  const { cutBack } = panel.sides;
  if (cutBack === null) return missingFilm(panel);
  const [here, there] = [missingFilm(panel), missingFilm(acrossCutBack(panel, cutBack))];
  return micrometres(here + cutBack.otherSide * (there - here));
}

/** One for each finish that it may have. */
export function topcoatsOverSides(
  panel: AllowanceCase,
  policy: LimitPolicy,
  model: FilmModel,
  lookedAt: LookedAt,
): readonly TopcoatCase[] {
  const { sides } = panel;
  const here = plainTopcoats(panel, policy, model, lookedAt);
  if (sides.lost.length === 0 && sides.cutBack === null) {
    return here.map((topcoat) => ({ ...topcoat, besides: NOTHING_ELSE }));
  }
  const { each, none } = chancesOfLost(sides);
  const lost = each.map((one) => ({ ...one, topcoat: null }));
  const there =
    sides.cutBack === null
      ? []
      : plainTopcoats(acrossCutBack(panel, sides.cutBack), policy, model, lookedAt);
  const chance = none * (sides.cutBack?.otherSide ?? 0);
  return here.map((topcoat, place) => {
    const other = otherOf(topcoat, place, { here, there });
    const isOther = other !== undefined && !isSameClear(other, topcoat);
    const cut = isOther ? [{ condition: otherWord(panel), chance, topcoat: other }] : [];
    return { ...topcoat, besides: [...lost, ...cut] };
  });
}

const NOTHING_ELSE: readonly Besides[] = [];

/**
 * The same case on the other side; where what is stated is apart on either, the thinnest of its finish: one that is
 * thicker than this frees nothing then.
 */
function otherOf(
  topcoat: PlainTopcoat,
  place: number,
  cases: { readonly here: readonly PlainTopcoat[]; readonly there: readonly PlainTopcoat[] },
): PlainTopcoat | undefined {
  const { here, there } = cases;
  if (there.length === here.length && topcoat.apart === undefined) return there[place];
  return there
    .filter(({ finish, clear }) => finish === topcoat.finish && clear.mean <= topcoat.clear.mean)
    .sort((one, other) => one.clear.mean - other.clear.mean)[0];
}

function plainTopcoats(
  panel: AllowanceCase,
  policy: LimitPolicy,
  model: FilmModel,
  lookedAt: LookedAt,
): readonly PlainTopcoat[] {
  const { film, facts } = panel;
  const taken = clearTaken(facts, missingFilm(panel), model.earlier);
  return topcoatCases(film, facts, taken, policy, model).map(lookedAt);
}

/** Where the clear is known by itself it is the same whatever the panel is, to less than a page shows. */
const isSameClear = (one: PlainTopcoat, other: PlainTopcoat): boolean =>
  Math.abs(one.clear.mean - other.clear.mean) + Math.abs(one.clear.sd - other.clear.sd) < 0.1;

const isCutBack = ({ conditions }: Pick<AllowanceCase, 'conditions'>): boolean =>
  conditions.includes('cut-back');

const otherWord = (panel: AllowanceCase): Condition => (isCutBack(panel) ? 'original' : 'cut-back');

/** What a panel is by its word, as it stands beside what it may be besides. */
export const sideOfWord = (conditions: readonly Condition[]): Condition =>
  conditions.includes('cut-back') ? 'cut-back' : at(conditions, 0);

/**
 * The panel on the other side of the line of film cut back. That it would be cut back is held of a mean on that line,
 * as it would be that or less.
 */
export function acrossCutBack(
  panel: AllowanceCase,
  { line, baseline }: Pick<LineComparison, 'line' | 'baseline'>,
): AllowanceCase {
  const { film, facts, conditions } = panel;
  if (isCutBack(panel)) {
    return { ...panel, conditions: conditions.filter((one) => one !== 'cut-back') };
  }
  return {
    ...panel,
    baseline,
    film: { ...film, mean: micrometres(Math.min(film.mean, line - goneAllOver(facts).mean)) },
    conditions: [...conditions, 'cut-back'],
  };
}
