/**
 * Panels on which most of a class agree with each other and not with the expert: as many hands do not go wrong alike, so
 * it is the reference that is to be looked at first.
 *
 * A panel is one where more than half of the surveys are unsatisfactory, on one side, and within what is satisfactory of
 * their median. Told from as many panels on as make a survey fail. Surveys that are too like another’s are no witnesses,
 * nor is a gauge that drifts, or values that do not follow the panels.
 */
import { median } from '../base/stats/summary.ts';
import type { Panel } from '../film/template/template.ts';
import type { Grade } from './grade-trainee.ts';
import type { PanelScore } from './panel-score.ts';
import { isCopied, isMadeUp, isTurned } from './reasons.ts';
import type { Reference } from './reference.ts';
import type { TrainingModel } from './training-model.ts';

export function unlikeReference(
  reference: Reference,
  grades: readonly Grade[],
  sigmaPt: number,
  model: TrainingModel,
): readonly Panel[] {
  if (reference.kind !== 'expert') return [];
  const witnesses = grades.filter(
    ({ reasons }) =>
      !reasons.some(
        (one) =>
          isCopied(one) || isMadeUp(one) || isNotFollowing(one) || one.code === 'gauge-drift',
      ),
  );
  const near = model.scores.questionable * sigmaPt;
  const unlike = [...reference.panels.values()]
    .map(({ panel }) => panel)
    .filter(({ id }) => {
      const scores = witnesses.flatMap((one) => one.scores.filter(({ panel }) => panel.id === id));
      return (
        scores.length >= model.class.leastSurveys && 2 * agreeingOff(scores, near) > scores.length
      );
    });
  return unlike.length < model.verdict.panelsAtFault ? [] : unlike;
}

/**
 * Whether the values of most of the class do not follow the marks of the expert, or only in another order: then its marks may have other names, or
 * other places, than the class was told.
 */
export function marksUnlike(
  reference: Reference,
  grades: readonly Grade[],
  { leastSurveys }: TrainingModel['class'],
): boolean {
  if (reference.kind !== 'expert') return false;
  const witnesses = grades.filter(
    ({ reasons }) => !reasons.some((one) => isCopied(one) || isMadeUp(one)),
  );
  const isAstray = (one: Grade['reasons'][number]): boolean =>
    isNotFollowing(one) || (isTurned(one) && 2 * one.panels.length > reference.panels.size);
  const astray = witnesses.filter(({ reasons }) => reasons.some(isAstray));
  return witnesses.length >= leastSurveys && 2 * astray.length > witnesses.length;
}

const isNotFollowing = ({ code }: { readonly code: string }): boolean => code === 'not-following';

/** How many are off on the side of the median, and near to it. */
function agreeingOff(scores: readonly PanelScore[], near: number): number {
  const middle = median(scores.map(({ difference }) => difference));
  return scores.filter(
    ({ verdict, difference }) =>
      verdict === 'unsatisfactory' &&
      Math.sign(difference) === Math.sign(middle) &&
      Math.abs(difference - middle) <= near,
  ).length;
}
