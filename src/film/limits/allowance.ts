/** What may come off a panel: the limits of the topcoat that allows least. */
import { type Micrometres, micrometres } from '../../base/units.ts';
import { type Condition, isFactoryFilm } from '../condition/condition.ts';
import type { FilmModel, PanelFacts, RecordedRemoval } from '../film-model.ts';
import type { PanelSurvey } from '../survey.ts';
import {
  bindingLimit,
  clearTaken,
  type Limit,
  leastRemoval,
  outrightLimits,
  type PanelFilm,
  type RemovalTerms,
  removalLimits,
  type TopcoatCase,
  topcoatCases,
} from './removal-limits.ts';

export type Allowance = Pick<PanelSurvey, 'topcoat' | 'limits' | 'budget' | 'boundBy'>;

/** What is known of the panel that bears on what may go. */
export type AllowanceCase = {
  readonly film: PanelFilm;
  readonly facts: PanelFacts;
  readonly points: number;
  readonly conditions: readonly Condition[];
  readonly baseline: Micrometres | null;
};

/** The limits of the topcoat that allows least; nothing at all where the total proves nothing. */
export function allowance(
  { film, facts, points, conditions, baseline }: AllowanceCase,
  terms: RemovalTerms,
  model: FilmModel,
  /** Where on the panel the clear is looked at: the thinnest share of its face, unless told otherwise. */
  lookedAt: (topcoat: TopcoatCase) => TopcoatCase = (topcoat) => topcoat,
): Allowance {
  const outright = outrightLimits(
    facts,
    { points, isFactoryFilm: conditions.every(isFactoryFilm), unread: null },
    model,
  );
  // Off factory film the total says nothing of the clear: there is no estimate to keep a limit on.
  if (!conditions.every(isFactoryFilm)) return { topcoat: null, ...bounded(outright) };
  const taken = takenOf({ film, facts, conditions, baseline }, model);
  const cases = topcoatCases(film, facts, taken, terms.policy, model).map((one) => {
    const topcoat = lookedAt(one);
    const limits = removalLimits(film, facts, topcoat, terms, model);
    return { topcoat, ...bounded([...outright, ...limits]) };
  });
  return worst(cases);
}

/** The budget of the same and nothing else: no limit is put into words. */
export function allowedBudget(
  { film, facts, points, conditions, baseline }: AllowanceCase,
  terms: RemovalTerms,
  model: FilmModel,
): Micrometres {
  const isFactory = conditions.every(isFactoryFilm);
  const outright = outrightLimits(facts, { points, isFactoryFilm: isFactory, unread: null }, model);
  if (!isFactory || outright.length > 0) return micrometres(0);
  const taken = takenOf({ film, facts, conditions, baseline }, model);
  const budgets = topcoatCases(film, facts, taken, terms.policy, model).map((topcoat) =>
    leastRemoval(film, facts, topcoat, terms, model),
  );
  return micrometres(Math.min(...budgets));
}

/** Clear that earlier work took: on a panel cut back also what is missing to the others. */
function takenOf(
  { film, facts, conditions, baseline }: Omit<AllowanceCase, 'points'>,
  { earlier }: FilmModel,
): RecordedRemoval {
  const missing = conditions.includes('cut-back') && baseline !== null ? baseline - film.mean : 0;
  return clearTaken(facts, micrometres(missing), earlier);
}

function worst(cases: readonly Allowance[]): Allowance {
  const [first, ...rest] = cases;
  if (first === undefined) throw new Error('a panel carries at least one topcoat');
  return rest.reduce((least, one) => (one.budget < least.budget ? one : least), first);
}

export function bounded(
  limits: readonly Limit[],
): Pick<PanelSurvey, 'limits' | 'budget' | 'boundBy'> {
  const boundBy = bindingLimit(limits);
  return { limits, budget: boundBy.value, boundBy };
}
