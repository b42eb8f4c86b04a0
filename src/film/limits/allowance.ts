/** What may come off a panel: the limits of the topcoat that allows least. */
import { type Micrometres, micrometres } from '../../base/units.ts';
import { type Condition, isFactoryFilm } from '../condition/condition.ts';
import type { FilmModel, PanelFacts } from '../film-model.ts';
import type { PanelFilm } from '../panel-film.ts';
import type { PanelSurvey } from '../survey.ts';
import { clearTaken } from './earlier-work.ts';
import { bindingLimit, inWords, type Limit, type UnsaidLimit } from './limit.ts';
import { outrightLimits } from './outright-limits.ts';
import { type RemovalTerms, removalLimits } from './removal-limits.ts';
import { type TopcoatCase, topcoatCases } from './topcoat-cases.ts';

export type Allowance = Pick<PanelSurvey, 'topcoat' | 'limits' | 'budget' | 'boundBy'>;

/** The same before its limits are put into words. */
export type UnsaidAllowance = {
  readonly topcoat: TopcoatCase | null;
  readonly limits: readonly UnsaidLimit[];
  readonly budget: Micrometres;
};

/** What is known of the panel that bears on what may go. */
export type AllowanceCase = {
  readonly film: PanelFilm;
  readonly facts: PanelFacts;
  readonly points: number;
  readonly conditions: readonly Condition[];
  readonly baseline: Micrometres | null;
};

/** Where on the panel the clear is looked at. */
export type LookedAt = (topcoat: TopcoatCase) => TopcoatCase;

export const allowance = (
  panel: AllowanceCase,
  terms: RemovalTerms,
  model: FilmModel,
  lookedAt?: LookedAt,
): Allowance => toldInWords(unsaidAllowance(panel, terms, model, lookedAt));

/** The limits of the topcoat that allows least; nothing at all where the total proves nothing. */
export function unsaidAllowance(
  panel: AllowanceCase,
  terms: RemovalTerms,
  model: FilmModel,
  /** The thinnest share of its face, unless told otherwise. */
  lookedAt: LookedAt = (topcoat) => topcoat,
): UnsaidAllowance {
  const { film, facts, points, conditions } = panel;
  const isFactory = conditions.every(isFactoryFilm);
  const outright = outrightLimits(facts, { points, isFactoryFilm: isFactory, unread: null }, model);
  // Off factory film the total says nothing of the clear: there is no estimate to keep a limit on.
  if (!isFactory) return { topcoat: null, limits: outright, budget: leastOf(outright) };
  const missing = missingFilm(panel);
  const taken = clearTaken(facts, missing, model.earlier);
  const cases = topcoatCases(film, facts, taken, terms.policy, model).map((one) => {
    const topcoat = lookedAt(one);
    const limits = [...outright, ...removalLimits({ film, facts, missing }, topcoat, terms, model)];
    return { topcoat, limits, budget: leastOf(limits) };
  });
  return worst(cases);
}

const leastOf = (limits: readonly UnsaidLimit[]): Micrometres => bindingLimit(limits).value;

/** Film that a panel cut back lacks to the others. */
const missingFilm = ({ film, conditions, baseline }: AllowanceCase): Micrometres =>
  micrometres(conditions.includes('cut-back') && baseline !== null ? baseline - film.mean : 0);

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
