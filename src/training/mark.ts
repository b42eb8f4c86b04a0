/**
 * The mark: what share of each criterion was met, weighted. A criterion with nothing to judge by (no low spot
 * on the car, no point read twice) gives its weight to the others.
 *
 * - accuracy: a panel of the reference counts 1 where satisfactory, a share where questionable, 0 where unsatisfactory or
 *   not read, and no more than a blunder leaves of it (src/training/void-panels.ts);
 * - coverage: share of the reference’s points that were read;
 * - low points, repairs: share that was found, of those that nobody can miss honestly (src/training/found.ts);
 * - repeatability: 1 while the SD of repeats s is no larger than chance allows of the usual one,
 *   s ≤ s_r·√(χ²(.95; ν)/ν), beyond that the ratio of the two; 0 where the repeats are one figure throughout
 *   (src/training/alike-repeats.ts).
 */
import { chiSquareQuantile } from '../base/stats/chi-square.ts';
import { sum } from '../base/sum.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { Coverage } from './coverage.ts';
import type { Found, LowSpotPanel } from './found.ts';
import type { PanelScore } from './panel-score.ts';
import type { ScoreVerdict } from './scores.ts';
import { type Criterion, criteria, type Marking, type TrainingModel } from './training-model.ts';

export type Repeatability = {
  readonly sd: Micrometres;
  readonly dof: number;
  /** As large as it may come out by chance where the true one is as usual. */
  readonly allowed: Micrometres;
};

export type CriterionMark = {
  readonly criterion: Criterion;
  readonly weight: number;
  /** 0 to 1; null where there was nothing to judge by. */
  readonly share: number | null;
};

export type Mark = { readonly share: number; readonly criteria: readonly CriterionMark[] };

export const allowedRepeatability = (
  { sd, dof }: { readonly sd: Micrometres; readonly dof: number },
  usual: Micrometres,
): Repeatability => ({
  sd,
  dof,
  allowed: micrometres(usual * Math.sqrt(chiSquareQuantile(0.95, dof) / dof)),
});

export type Judged = {
  readonly scores: readonly PanelScore[];
  readonly coverage: Coverage;
  readonly lowSpots: Found<LowSpotPanel>;
  readonly repairs: Found;
  readonly repeatability: Repeatability | null;
};

type Marked = {
  readonly weights: Marking['weights'];
  readonly questionableShare: TrainingModel['scores']['questionableShare'];
  readonly repeatsAlike?: boolean;
  /** The most that the score of a panel counts, 0 to 1. */
  readonly most?: (score: PanelScore) => number;
};

export function markOf(
  judged: Judged,
  { weights, questionableShare, repeatsAlike = false, most = () => 1 }: Marked,
): Mark {
  const { scores, coverage, lowSpots, repairs } = judged;
  const marks: Readonly<Record<ScoreVerdict, number>> = {
    satisfactory: 1,
    questionable: questionableShare,
    unsatisfactory: 0,
  };
  const shares: Readonly<Record<Criterion, number | null>> = {
    accuracy:
      sum(scores.map((score) => Math.min(marks[score.verdict], most(score)))) / coverage.panels,
    coverage: coverage.share,
    lowPoints: shareOf(lowSpots),
    repairs: shareOf(repairs),
    repeatability: repeatsAlike ? 0 : shareOfRepeats(judged),
  };
  const judgedBy = criteria.map((criterion) => ({
    criterion,
    weight: weights[criterion],
    share: shares[criterion],
  }));
  const known = judgedBy.flatMap(({ weight, share }) =>
    share === null ? [] : [{ weight, share }],
  );
  const whole = known.reduce((sum, { weight }) => sum + weight, 0);
  const met = known.reduce((sum, { weight, share }) => sum + weight * share, 0);
  return { share: whole === 0 ? 0 : met / whole, criteria: judgedBy };
}

function shareOfRepeats({ repeatability }: Judged): number | null {
  if (repeatability === null) return null;
  const { sd, allowed } = repeatability;
  return sd <= allowed ? 1 : allowed / sd;
}

const shareOf = ({ found, blamed }: Found): number | null =>
  found + blamed === 0 ? null : found / (found + blamed);
