/** Everything that a panel's survey rests on, taken apart: what its page of reasons is told from. */
import type { Micrometres } from '../../base/units.ts';
import { NO_SIDES } from '../condition/possible-sides.ts';
import type { FilmModel } from '../film-model.ts';
import { budgetOf } from '../limits/allowance.ts';
import { allowanceCase } from '../limits/allowance-case.ts';
import { type AllowanceSteps, allowanceSteps } from '../limits/allowance-steps.ts';
import { type Limit, removalIn } from '../limits/limit.ts';
import { sideOfWord } from '../limits/over-sides.ts';
import type { RemovalTerms } from '../limits/removal-limits.ts';
import { type ClearChain, clearChain } from '../limits/thin-clear.ts';
import { type RemovalRisks, risksOf, riskTerms, topcoatRisk } from '../limits/topcoat-risk.ts';
import { type DoubtPart, doubtAboutWhatIsLeft } from '../limits/variance-of-left.ts';
import type { PanelSurvey } from '../survey.ts';
import { distributionFree, type ThinnestCredible, thinnestCredible } from '../thinnest-credible.ts';

/** A limit, and how it comes to what it allows if the panel's word holds; nulls where it allows nothing whatever the film. */
export type LimitWhy = {
  readonly limit: Limit;
  readonly byWord: Micrometres | null;
  readonly steps: AllowanceSteps | null;
};

/** What may go if the panel's word holds for certain, and what the budget risks by all that the panel may be. */
export type SidesWhy = {
  readonly byWord: Micrometres;
  readonly riskByWord: number;
  readonly terms: ReturnType<typeof riskTerms>;
};

export type PanelWhy = {
  /** Null where no bound is drawn: one point, or filler. */
  readonly thinnest: ThinnestCredible | null;
  readonly distributionFree: ReturnType<typeof distributionFree> | null;
  /** Null off factory film, where the total says nothing of the topcoat. */
  readonly clear: ClearChain | null;
  /** Of a plan that takes the whole budget. */
  readonly risk: RemovalRisks | null;
  /** Null where it can be nothing but its word. */
  readonly sides: SidesWhy | null;
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
    sides: sidesWhy(survey, terms, model),
    doubt: topcoat === null ? [] : doubtAboutWhatIsLeft(topcoat, removal, model.topcoat),
    limits: limits.map((limit) => ({ limit, ...limitSteps(limit, terms.logSd) })),
  };
}

/** Null where it can be nothing but its word. */
export function sidesWhy(
  survey: PanelSurvey,
  terms: RemovalTerms,
  model: FilmModel,
): SidesWhy | null {
  const { topcoat, budget } = survey;
  const asRead = allowanceCase(survey);
  if (topcoat === null || topcoat.besides.length === 0 || asRead === null) return null;
  const byWord = budgetOf({ ...asRead, sides: NO_SIDES }, terms, model);
  const { logSd } = terms;
  return {
    byWord,
    riskByWord: topcoatRisk(topcoat, { median: byWord, logSd }),
    terms: riskTerms(topcoat, sideOfWord(asRead.conditions), { median: budget, logSd }),
  };
}

function limitSteps({ room }: Limit, logSd: number): Omit<LimitWhy, 'limit'> {
  if (room === undefined) return { byWord: null, steps: null };
  const byWord = removalIn(room, logSd);
  return { byWord, steps: allowanceSteps(room, byWord, logSd) };
}

/** Over all that the panel may be; null off factory film. */
export function budgetRisk(
  { topcoat, budget }: Pick<PanelSurvey, 'topcoat' | 'budget'>,
  { logSd }: Pick<RemovalTerms, 'logSd'>,
  { thinnerClear }: Pick<FilmModel, 'thinnerClear'>,
): RemovalRisks | null {
  return topcoat === null ? null : risksOf(topcoat, { median: budget, logSd }, thinnerClear);
}
