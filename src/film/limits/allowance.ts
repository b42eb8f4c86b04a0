/** What may come off a panel: the limits of the topcoat that allows least. */
import type { Micrometres } from '../../base/units.ts';
import { isFactoryFilm } from '../condition/condition.ts';
import type { FilmModel } from '../film-model.ts';
import type { PanelSurvey } from '../survey.ts';
import type { AllowanceCase, LookedAt } from './allowance-case.ts';
import { bindingLimit, inWords, type Limit, type UnsaidLimit } from './limit.ts';
import { outrightLimits } from './outright-limits.ts';
import { missingOverSides, topcoatsOverSides } from './over-sides.ts';
import { type RemovalTerms, removalLimits } from './removal-limits.ts';
import type { TopcoatCase } from './topcoat-cases.ts';

export type Allowance = Pick<PanelSurvey, 'topcoat' | 'limits' | 'budget' | 'boundBy'>;

/** The same before its limits are put into words. */
export type UnsaidAllowance = {
  readonly topcoat: TopcoatCase | null;
  readonly limits: readonly UnsaidLimit[];
  readonly budget: Micrometres;
};

export const allowance = (
  panel: AllowanceCase,
  terms: RemovalTerms,
  model: FilmModel,
  lookedAt?: LookedAt,
): Allowance => toldInWords(unsaidAllowance(panel, terms, model, lookedAt));

/**
 * The limits of the topcoat that allows least, over all that the panel may be; nothing at all where the total proves
 * nothing.
 */
export function unsaidAllowance(
  panel: AllowanceCase,
  terms: RemovalTerms,
  model: FilmModel,
  /** The thinnest share of its face, unless told otherwise. */
  lookedAt: LookedAt = (topcoat) => topcoat,
): UnsaidAllowance {
  const { film, facts, conditions } = panel;
  const isFactory = conditions.every(isFactoryFilm);
  const read = { points: film.count, isFactoryFilm: isFactory, unread: null };
  const outright = outrightLimits(facts, read, model);
  // Off factory film the total says nothing of the clear: there is no estimate to keep a limit on.
  if (!isFactory) return { topcoat: null, limits: outright, budget: leastOf(outright) };
  const limited = { film, facts, conditions, missing: missingOverSides(panel) };
  const cases = topcoatsOverSides(panel, terms.policy, model, lookedAt).map((topcoat) => {
    const limits = [...outright, ...removalLimits(limited, topcoat, terms, model)];
    return { topcoat, limits, budget: leastOf(limits) };
  });
  return worst(cases);
}

const leastOf = (limits: readonly UnsaidLimit[]): Micrometres => bindingLimit(limits).value;

function worst(cases: readonly UnsaidAllowance[]): UnsaidAllowance {
  const [first, ...rest] = cases;
  if (first === undefined) throw new Error('a panel carries at least one topcoat');
  return rest.reduce((least, one) => (one.budget < least.budget ? one : least), first);
}

export const toldInWords = ({ topcoat, limits }: UnsaidAllowance): Allowance => ({
  topcoat,
  ...bounded(limits.map(inWords)),
});

export function bounded(
  limits: readonly Limit[],
): Pick<PanelSurvey, 'limits' | 'budget' | 'boundBy'> {
  const boundBy = bindingLimit(limits);
  return { limits, budget: boundBy.value, boundBy };
}
