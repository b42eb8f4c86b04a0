/**
 * What panels read as, by a trainee and by the reference: how many alike, and Cohen’s kappa of it.
 *
 * There is no kappa where one of the two has one word for all panels: chance then gives what was observed, κ is 0
 * whatever the other says, and would pass for worthless.
 */
import { classTable, cohenKappa } from '../base/stats/kappa.ts';
import type { Micrometres } from '../base/units.ts';
import type { Condition } from '../film/condition/condition.ts';
import type { Panel } from '../film/template/template.ts';
import { conditionWord, type GradedSurvey, readPanel } from './graded-survey.ts';
import type { Reference } from './reference.ts';

export type ConditionPair = {
  readonly panel: Panel;
  readonly own: Condition;
  readonly theirs: Condition;
  /** What may go by each; null of a consensus, which is no survey. */
  readonly ownBudget: Micrometres;
  readonly theirBudget: Micrometres | null;
};

export type ConditionAgreement = {
  readonly of: number;
  readonly alike: number;
  readonly kappa: number | null;
  /** Panels that the two have other words for. */
  readonly otherwise: readonly ConditionPair[];
};

/** Of the panels that both read. */
export const conditionPairs = (
  trainee: GradedSurvey,
  reference: Reference,
): readonly ConditionPair[] =>
  [...reference.panels.values()].flatMap(({ panel, condition }) => {
    const read = readPanel(trainee, panel.id);
    if (read === undefined) return [];
    const theirs = reference.expert === null ? undefined : readPanel(reference.expert, panel.id);
    return [
      {
        panel,
        own: conditionWord(read),
        theirs: condition,
        ownBudget: read.budget,
        theirBudget: theirs?.budget ?? null,
      },
    ];
  });

/** Null where there is no panel to agree on. */
export function conditionAgreement(pairs: readonly ConditionPair[]): ConditionAgreement | null {
  if (pairs.length === 0) return null;
  const otherwise = pairs.filter(({ own, theirs }) => own !== theirs);
  const kinds = [pairs.map(({ own }) => own), pairs.map(({ theirs }) => theirs)];
  const oneWord = kinds.some((words) => new Set(words).size === 1);
  return {
    of: pairs.length,
    alike: pairs.length - otherwise.length,
    kappa: oneWord
      ? null
      : cohenKappa(classTable(pairs.map(({ own, theirs }) => [own, theirs]))).kappa,
    otherwise,
  };
}
