/**
 * What a survey comes to as a whole. No one fails on one panel alone: with points of one’s own and a plain z an
 * honest survey of 13 panels at three points exceeds 3 on some panel in 42 % of cases.
 *
 * Unsatisfactory: two panels unsatisfactory or more; or the car read off as a whole by a |z| of 3 or more; or a
 * mark under the pass mark with two panels at fault or more. Questionable: one panel unsatisfactory, two
 * questionable or unread, half of the car unread or read at one point a panel, the car off by a |z| over 2, a gauge that drifts by as much, marks
 * that read off, values that do not follow the panels, a blunder, values too like another’s, a repair missed, or a mark under the pass mark.
 */
import type { CarBias } from './car-bias.ts';
import type { Judged, Mark } from './mark.ts';
import type { MarksPattern } from './marks-pattern.ts';
import { isCopied, type Reason } from './reasons.ts';
import { type ScoreVerdict, scoreVerdict, zScore } from './scores.ts';
import type { Marking, TrainingModel } from './training-model.ts';
import type { VoidPanel } from './void-panels.ts';

type Whole = {
  readonly judged: Judged;
  readonly bias: CarBias | null;
  readonly blunders: readonly Reason[];
  readonly voided: readonly VoidPanel[];
  readonly pattern: MarksPattern;
  readonly sigmaPt: number;
  readonly mark: Mark;
};

/** Why a survey is not satisfactory. */
export type VerdictGround =
  | 'panels-off'
  | 'car-off'
  | 'under-pass-mark'
  | 'one-panel-off'
  | 'panels-doubtful'
  | 'car-doubtful'
  | 'gauge-drift'
  | 'marks-off'
  | 'not-following'
  | 'slip'
  | 'copied'
  | 'repair-missed'
  | 'panels-unread'
  | 'half-unread';

export type OverallVerdict = {
  readonly verdict: ScoreVerdict;
  /** What makes it so; none of a satisfactory one. */
  readonly grounds: readonly VerdictGround[];
};

export function overallVerdict(
  { judged, bias, blunders, voided, pattern, sigmaPt, mark }: Whole,
  { passMark }: Pick<Marking, 'passMark'>,
  {
    scores: limits,
    verdict: { panelsAtFault, readShare },
  }: Pick<TrainingModel, 'scores' | 'verdict'>,
): OverallVerdict {
  const { scores, coverage, lowSpots, repairs } = judged;
  const withVerdict = (wanted: ScoreVerdict): readonly string[] =>
    scores.filter(({ verdict }) => verdict === wanted).map(({ panel }) => panel.id);
  const [off, doubtful] = [withVerdict('unsatisfactory'), withVerdict('questionable')];
  const atFault = new Set([
    ...off,
    ...doubtful,
    ...[...coverage.unread, ...coverage.short].map(({ id }) => id),
    ...[...lowSpots.missed, ...repairs.missed, ...voided].map(({ panel }) => panel.id),
  ]);
  // A share as the sum of weights may miss a whole mark by the last digit.
  const failed = mark.share < passMark - 1e-9;
  const failing = thoseThatHold({
    'panels-off': off.length >= panelsAtFault,
    'car-off': bias?.verdict === 'unsatisfactory',
    'under-pass-mark': failed && atFault.size >= panelsAtFault,
  });
  if (failing.length > 0) return { verdict: 'unsatisfactory', grounds: failing };
  const wanting = thoseThatHold({
    'one-panel-off': off.length > 0,
    'panels-doubtful': doubtful.length > 1,
    'car-doubtful': bias?.verdict === 'questionable',
    'gauge-drift': isDriftDoubtful(pattern, sigmaPt, limits),
    'marks-off': pattern.marksOff !== null,
    'not-following': pattern.notFollowed !== null,
    slip: blunders.some((one) => !isCopied(one)),
    copied: blunders.some(isCopied),
    'repair-missed': repairs.missed.length > 0,
    'half-unread': coverage.panelsWithSpread <= readShare * coverage.panels,
    'panels-unread': coverage.unread.length >= panelsAtFault,
    'under-pass-mark': failed,
  });
  return { verdict: wanting.length > 0 ? 'questionable' : 'satisfactory', grounds: wanting };
}

/** By what it comes to over the car, as the mean over the car is judged; panels that it puts off fail by themselves. */
const isDriftDoubtful = (
  { drift }: MarksPattern,
  sigmaPt: number,
  limits: TrainingModel['scores'],
): boolean =>
  drift !== null && scoreVerdict(zScore(drift.total, sigmaPt), limits) !== 'satisfactory';

const thoseThatHold = (
  all: Partial<Readonly<Record<VerdictGround, boolean>>>,
): readonly VerdictGround[] =>
  (Object.keys(all) as VerdictGround[]).filter((ground) => all[ground] === true);
