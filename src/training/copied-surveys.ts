/**
 * Surveys of one class that hold the same values at the same points more often than two honest ones do.
 *
 * Two who read one place honestly show the same figure with a chance of about δ/(2·s_r·√π), δ the step of the
 * display and s_r the repeatability; of points of one’s own less. On film that is even for the display it is the chance
 * that values of different points agree (chanceAlike), which is then the larger. Where as many points agree as were
 * found has a chance (binomial) under the false alarm over all pairs of the class, both are told.
 */
import { binomialUpperTail } from '../base/stats/incomplete-beta.ts';
import { type GradedSurvey, stepOf } from './graded-survey.ts';
import { chanceAlike, pointsInCommon } from './points-in-common.ts';
import { leastPointSd } from './steady-hand.ts';
import type { TrainingModel } from './training-model.ts';

export type CopiedPair = {
  /** Places of the two surveys in the class. */
  readonly surveys: readonly [number, number];
  readonly same: number;
  readonly of: number;
};

export function copiedSurveys(
  surveys: readonly GradedSurvey[],
  model: TrainingModel,
): readonly CopiedPair[] {
  const { slips, copies } = model;
  const pairs = surveys.flatMap((one, i) =>
    surveys.slice(i + 1).map((other, k) => ({ one, other, surveys: [i, i + 1 + k] as const })),
  );
  return pairs.flatMap(({ one, other, surveys: at }) => {
    const points = pointsInCommon(one, other);
    const [same, of] = [points.filter((at) => at.one === at.other).length, points.length];
    const share = Math.max(honestShare(one, other, model), chanceAlike(points));
    const chance = binomialUpperTail(same, of, share);
    const proved = of >= copies.samePoints && chance < slips.falseAlarm / pairs.length;
    return proved ? [{ surveys: at, same, of }] : [];
  });
}

/** How often two honest readings of one place are the same figure, at the most. */
export function honestShare(
  one: GradedSurvey,
  other: GradedSurvey,
  { slips, copies }: TrainingModel,
): number {
  const step = Math.max(stepOf(one), stepOf(other), slips.finestStep);
  const repeatability = Math.min(leastPointSd(one, copies), leastPointSd(other, copies));
  return Math.min(copies.mostAlike, step / (2 * repeatability * Math.sqrt(Math.PI)));
}
