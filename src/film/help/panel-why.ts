/** Everything that a panel's survey rests on, taken apart: what its page of reasons is told from. */
import type { FilmModel } from '../film-model.ts';
import { type AllowanceSteps, allowanceSteps } from '../limits/allowance-steps.ts';
import type { Limit } from '../limits/limit.ts';
import type { RemovalTerms } from '../limits/removal-limits.ts';
import { clearRisk } from '../limits/removal-risk.ts';
import { type ClearChain, clearChain } from '../limits/thin-clear.ts';
import type { TopcoatCase } from '../limits/topcoat-cases.ts';
import { type DoubtPart, doubtAboutWhatIsLeft } from '../limits/variance-of-left.ts';
import type { PanelSurvey } from '../survey.ts';
import { distributionFree, type ThinnestCredible, thinnestCredible } from '../thinnest-credible.ts';

/** Risks of a plan that takes the whole budget. */
export type BudgetRisk = {
  readonly risk: number;
  readonly riskIfThin: number;
  readonly already: number;
};

/** A limit, and how it comes to what it allows; null where it allows nothing whatever the film. */
export type LimitWhy = { readonly limit: Limit; readonly steps: AllowanceSteps | null };

export type PanelWhy = {
  /** Null where no bound is drawn: one point, or filler. */
  readonly thinnest: ThinnestCredible | null;
  readonly distributionFree: ReturnType<typeof distributionFree> | null;
  /** Null off factory film, where the total says nothing of the topcoat. */
  readonly clear: ClearChain | null;
  readonly risk: BudgetRisk | null;
  /** Sources of the doubt about what is left, by size. */
  readonly doubt: readonly DoubtPart[];
  readonly limits: readonly LimitWhy[];
};

/** Of a panel in one zone, or of a zone. */
export function panelWhy(survey: PanelSurvey, terms: RemovalTerms, model: FilmModel): PanelWhy {
  const { film, thinnest, topcoat, budget, limits } = survey;
  const removal = { median: budget, logSd: terms.logSd };
  return {
    thinnest: film === null || thinnest === null ? null : thinnestCredible(film, model.tolerance),
    distributionFree: film === null ? null : distributionFree(film.count, model.tolerance),
    clear:
      topcoat === null
        ? null
        : clearChain(topcoat.told.film, topcoat.told.knowledge, model.topcoat),
    risk: budgetRisk(survey, terms, model),
    doubt: topcoat === null ? [] : doubtAboutWhatIsLeft(topcoat, removal, model.topcoat),
    limits: limits.map((limit) => ({
      limit,
      steps: limit.room === undefined ? null : allowanceSteps(limit.room, limit.value, terms.logSd),
    })),
  };
}

/** Null off factory film. */
export function budgetRisk(
  { topcoat, budget }: Pick<PanelSurvey, 'topcoat' | 'budget'>,
  { logSd }: Pick<RemovalTerms, 'logSd'>,
  { thinnerClear }: Pick<FilmModel, 'thinnerClear'>,
): BudgetRisk | null {
  if (topcoat === null) return null;
  const { clear, clearFloor } = topcoat;
  const removal = { median: budget, logSd };
  const thinner = { ...clear, mean: clear.mean - thinnerClear } as TopcoatCase['clear'];
  return {
    risk: clearRisk(clear, clearFloor, removal),
    riskIfThin: clearRisk(thinner, clearFloor, removal),
    already: clearRisk(clear, clearFloor, { ...removal, median: 0 as PanelSurvey['budget'] }),
  };
}
