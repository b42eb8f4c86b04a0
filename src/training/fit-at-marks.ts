/**
 * How well film at marks fits that of the reference, as −2·ln of its likelihood: z = d/√(σ_pt² + s_r²/k + s_r²/k_ref) a
 * mark. What a hand reads a panel off by is in all its marks: a share w of the variance (half, by default) is held to be
 * that, the rest to be of each mark. n marks come to n·z̄²/(1 − w + n·w) + Σ(z − z̄)²/(1 − w), one mean alone to z².
 */
import { at } from '../base/at.ts';
import { logGamma } from '../base/stats/gamma.ts';
import { mean } from '../base/stats/summary.ts';
import { sum } from '../base/sum.ts';
import type { PanelPoint } from '../film/panel-points.ts';
import { markedPoints, type ReadPanel } from './graded-survey.ts';
import type { Scoring } from './panel-score.ts';
import type { ReferencePanel } from './reference.ts';
import { zScore } from './scores.ts';

export type Fit = {
  readonly misfit: number;
  /** A mark: about 1 where the name is the right one. */
  readonly scatter: number;
  readonly largest: number;
};

export function fitOf(scores: readonly number[], ofPanel: number): Fit {
  const centre = mean(scores);
  const count = scores.length;
  const about = sum(scores.map((score) => (score - centre) ** 2));
  const misfit = (count * centre ** 2) / (1 - ofPanel + count * ofPanel) + about / (1 - ofPanel);
  return { misfit, scatter: misfit / count, largest: Math.max(...scores.map(Math.abs)) };
}

/** What both read at one mark. */
export type MarkPair = { readonly own: PanelPoint; readonly theirs: PanelPoint };

export function sharedMarks(
  read: ReadPanel,
  { points, marked }: ReferencePanel,
  { trainee }: Pick<Scoring, 'trainee'>,
): readonly MarkPair[] {
  const own = markedPoints(trainee, read.panel.id);
  return read.points.flatMap((point) =>
    points
      .filter((theirs) => theirs.point === point.point)
      .filter(() => own.has(point.point) && marked.has(point.point))
      .map((theirs) => ({ own: point, theirs })),
  );
}

export const scoresAtMarks = (pairs: readonly MarkPair[], scoring: Scoring): readonly number[] =>
  pairs.map(({ own, theirs }) =>
    zScore(
      own.thickness - theirs.thickness,
      scoring.sigmaPt.value,
      uncertaintyAt({ own, theirs }, scoring),
    ),
  );

const uncertaintyAt = ({ own, theirs }: MarkPair, { trainee, reference }: Scoring): number =>
  Math.hypot(
    trainee.repeatability / Math.sqrt(own.repeats.length),
    reference.repeatability / Math.sqrt(theirs.repeats.length),
  );

/** z² of a mark, on average, of hands that differ by their repeats alone. */
export const repeatsAtMarks = (pairs: readonly MarkPair[], scoring: Scoring): number =>
  mean(
    pairs.map((pair) => {
      const uncertainty = uncertaintyAt(pair, scoring);
      return zScore(uncertainty, scoring.sigmaPt.value, uncertainty) ** 2;
    }),
  );

/**
 * As if the marks were numbered in the order that fits best, thin with thin and thick with thick: one of n! orders, which
 * cost 2·ln n!.
 */
export function misfitInAnyOrder(
  pairs: readonly MarkPair[],
  scoring: Scoring,
  ofPanel: number,
): number {
  const theirs = rising(pairs.map((pair) => pair.theirs));
  const ordered = rising(pairs.map(({ own }) => own)).map((own, i) => ({
    own,
    theirs: at(theirs, i),
  }));
  return fitOf(scoresAtMarks(ordered, scoring), ofPanel).misfit + 2 * logGamma(pairs.length + 1);
}

const rising = (points: readonly PanelPoint[]): readonly PanelPoint[] =>
  points.toSorted((one, other) => one.thickness - other.thickness);
