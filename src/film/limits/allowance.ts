/** What may come off a panel: the limits of the topcoat that allows least. */
import { type Micrometres, micrometres } from '../../base/units.ts';
import { isFactoryFilm } from '../condition/condition.ts';
import type { FilmModel } from '../film-model.ts';
import type { PanelSurvey } from '../survey.ts';
import type { AllowanceCase, LookedAt } from './allowance-case.ts';
import { placeLimits } from './gone-at-place.ts';
import { leftLimits } from './left-after-visit.ts';
import { bindingLimit, inWords, type Limit, type UnsaidLimit } from './limit.ts';
import { outrightLimits } from './outright-limits.ts';
import { missingOverSides, topcoatsOverSides } from './over-sides.ts';
import {
  type LimitedPanel,
  mostBesideClear,
  type RemovalTerms,
  removalLimits,
} from './removal-limits.ts';
import type { TopcoatCase } from './topcoat-cases.ts';
import { topcoatAllowanceUpTo } from './topcoat-risk.ts';

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
  lookedAt: LookedAt = onThinnest,
): UnsaidAllowance {
  const outright = outrightOf(panel, model);
  // Off factory film the total says nothing of the clear: there is no estimate to keep a limit on.
  const left = leftLimits(panel.facts);
  if (!isOfFactory(panel)) {
    const limits = [...outright, ...left];
    return { topcoat: null, limits, budget: leastOf(limits) };
  }
  const limited = limitedPanel(panel);
  const besides = [
    ...left,
    ...placeLimits(
      panel.facts,
      (facts) => unsaidAllowance({ ...panel, facts }, terms, model, lookedAt).budget,
    ),
  ];
  const cases = topcoatsOverSides(panel, terms.policy, model, lookedAt).map((topcoat) => {
    const limits = [...outright, ...removalLimits(limited, topcoat, terms, model), ...besides];
    return { topcoat, limits, budget: leastOf(limits) };
  });
  return worst(cases);
}

/**
 * The budget of `unsaidAllowance` by itself: the clear is looked into only as far as life and total allow anyway.
 * Nearly all that is asked of a panel besides its survey is this.
 */
export function budgetOf(panel: AllowanceCase, terms: RemovalTerms, model: FilmModel): Micrometres {
  const outright = outrightOf(panel, model);
  if (outright.length > 0) return leastOf(outright);
  const besides = [
    ...leftLimits(panel.facts),
    ...placeLimits(panel.facts, (facts) => budgetOf({ ...panel, facts }, terms, model)),
  ];
  return topcoatsOverSides(panel, terms.policy, model, onThinnest).reduce(
    (least, topcoat) => topcoatAllowanceUpTo(least, topcoat, terms),
    besides.reduce(
      (least, { value }) => micrometres(Math.min(least, value)),
      mostBesideClear(limitedPanel(panel), terms, model),
    ),
  );
}

/** Where the clear is looked at unless told otherwise: on the thinnest share of the face. */
const onThinnest: LookedAt = (topcoat) => topcoat;

const isOfFactory = ({ conditions }: AllowanceCase): boolean => conditions.every(isFactoryFilm);

const outrightOf = (panel: AllowanceCase, model: FilmModel): readonly UnsaidLimit[] =>
  outrightLimits(
    panel.facts,
    { points: panel.film.count, isFactoryFilm: isOfFactory(panel), unread: null },
    model,
  );

const limitedPanel = (panel: AllowanceCase): LimitedPanel => ({
  film: panel.film,
  facts: panel.facts,
  conditions: panel.conditions,
  missing: missingOverSides(panel),
});

const leastOf = (limits: readonly UnsaidLimit[]): Micrometres => bindingLimit(limits).value;

/** Of one topcoat at least. */
const worst = (cases: readonly UnsaidAllowance[]): UnsaidAllowance =>
  cases.reduce((least, one) => (one.budget < least.budget ? one : least));

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
