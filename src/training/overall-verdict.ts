/**
 * What a survey comes to as a whole. No one fails on one panel alone: with points of one’s own and a plain z an
 * honest survey of 13 panels at three points exceeds 3 on some panel in 42 % of cases.
 *
 * Unsatisfactory: two panels unsatisfactory or more; or the car read off as a whole by a |z| of 3 or more; or a
 * mark under the pass mark with two panels at fault or more. Questionable: one panel unsatisfactory, two
 * questionable or unread, half of the car unread, the car off by a |z| over 2, a blunder, a repair missed, or a
 * mark under the pass mark.
 */
import type { CarBias } from './car-bias.ts';
import type { Judged, Mark } from './mark.ts';
import type { Reason } from './reasons.ts';
import type { ScoreVerdict } from './scores.ts';
import type { Marking } from './training-model.ts';

type Whole = {
  readonly judged: Judged;
  readonly bias: CarBias | null;
  readonly blunders: readonly Reason[];
  readonly mark: Mark;
};

/** On fewer panels than this nobody fails. */
const LEAST_AT_FAULT = 2;

export function overallVerdict(
  { judged, bias, blunders, mark }: Whole,
  { passMark }: Pick<Marking, 'passMark'>,
): ScoreVerdict {
  const { scores, coverage, lowSpots, repairs } = judged;
  const withVerdict = (wanted: ScoreVerdict): readonly string[] =>
    scores.filter(({ verdict }) => verdict === wanted).map(({ panel }) => panel.id);
  const [off, doubtful] = [withVerdict('unsatisfactory'), withVerdict('questionable')];
  const atFault = new Set([
    ...off,
    ...doubtful,
    ...[...coverage.unread, ...coverage.short].map(({ id }) => id),
    ...[...lowSpots.missed, ...repairs.missed].map(({ panel }) => panel.id),
  ]);
  // A share as the sum of weights may miss a whole mark by the last digit.
  const failed = mark.share < passMark - 1e-9;
  if (
    off.length >= LEAST_AT_FAULT ||
    bias?.verdict === 'unsatisfactory' ||
    (failed && atFault.size >= LEAST_AT_FAULT)
  ) {
    return 'unsatisfactory';
  }
  const wanting =
    off.length > 0 ||
    doubtful.length > 1 ||
    bias?.verdict === 'questionable' ||
    blunders.length > 0 ||
    repairs.missed.length > 0 ||
    coverage.unread.length >= LEAST_AT_FAULT ||
    2 * coverage.panelsRead <= coverage.panels ||
    failed;
  return wanting ? 'questionable' : 'satisfactory';
}
