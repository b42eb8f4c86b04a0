/** What a survey falls short in, in words that a trainee can act on. */
import { counted } from '../base/counted.ts';
import { bare, type Sentence, says, um } from '../base/sentence.ts';
import type { Reading } from '../film/reading.ts';
import type { Panel } from '../film/template/template.ts';
import { type CarBias, isBiasTold, isLikeBias } from './car-bias.ts';
import type { FaultsOf } from './faults-of.ts';
import type { GaugeDrift } from './gauge-drift.ts';
import { faceReadings, type GradedSurvey } from './graded-survey.ts';
import type { MarksOff } from './marks-off.ts';
import type { NotFollowedAt } from './marks-pattern.ts';
import { coverageReasons, lowSpotReasons, repairReasons } from './missed-reasons.ts';
import { isByMarksAlone, type PanelScore } from './panel-score.ts';
import { type Reason, reason, together } from './reasons.ts';
import { repeatabilityReasons } from './repeats-reasons.ts';
import { type ScoreLimits, scoreText } from './scores.ts';

export function faultReasons(all: FaultsOf): readonly Reason[] {
  return [
    ...(all.wholeSurvey ? [] : ofTheCar(all)),
    ...(all.wholeSurvey ? [] : panelReasons(all)),
    ...(all.wholeSurvey ? [] : repairReasons(all)),
    ...lowSpotReasons(all),
    ...coverageReasons(all),
    ...repeatabilityReasons(all),
  ];
}

/** A gauge that creeps, or a hand that reads off at some marks, is not off all over the car. */
function ofTheCar(all: FaultsOf): readonly Reason[] {
  const { drift, marksOff, notFollowed } = all.pattern;
  const { bias, trainee } = all;
  const at = faceReadings(trainee)[0];
  // What lies by chance has no pattern besides.
  if (notFollowed !== null)
    return [notFollowedReason(notFollowed, trainee), ...biasReason(bias, trainee)];
  if (drift !== null) return [driftReason(drift, all, at)];
  return marksOff === null ? biasReason(bias, trainee) : [marksOffReason(marksOff, at)];
}

/** Panels that a drift puts off, as the table counts them, else makes questionable: they cost marks, the drift itself none. */
function putOffText(drift: GaugeDrift, { judged }: FaultsOf): string {
  const drifted = judged.scores.filter((score) => isDriftedOff(score, drift));
  const those = (verdict: PanelScore['verdict']): number =>
    drifted.filter((score) => score.verdict === verdict).length;
  const [off, doubtful] = [those('unsatisfactory'), those('questionable')];
  if (off > 0) return `it puts ${counted(off, 'panel')} off`;
  return doubtful > 0
    ? `it makes ${counted(doubtful, 'panel')} questionable`
    : 'no panel is put off by it yet';
}

/** By checks that moved to the same side; of any other nothing is said here. */
const confirmed = (total: number, moved: number | undefined): Sentence =>
  moved === undefined || moved * total <= 0
    ? says``
    : says` (the checks in its gauge file confirm it: ${um(Math.abs(moved))} ${moved > 0 ? 'more' : 'less'} at the second than at the first)`;

function driftReason(drift: GaugeDrift, all: FaultsOf, at: Reading | undefined): Reason {
  const { total, marks } = drift;
  const side = total > 0 ? 'more' : 'less';
  const film = total > 0 ? 'shows film at the end that is not there' : 'misses film at the end';
  return reason(
    'gauge-drift',
    says`reads ${side} and ${side} beside the reference, ${um(Math.abs(total))} ${side} at the last of ${marks} marks than at the first, in the order of the file: the gauge drifts${confirmed(total, all.gaugeMoved)}, and ${film} (${putOffText(drift, all)}); check its zero and a shim before, in between and after, let it come to the temperature of the car`,
    { at },
  );
}

function marksOffReason(
  { off, agreeing, mean, atEdges }: MarksOff,
  at: Reading | undefined,
): Reason {
  const side = mean > 0 ? 'more' : 'less';
  const where = atEdges ? ', which lie nearest to the edges' : '';
  return reason(
    'marks-off',
    says`reads ${um(Math.abs(mean))} ${side} than the reference at ${marksNamed(off)} of the panels${where}, and like it at ${marksNamed(agreeing)}: the whole foot of the probe on the paint, square, and away from edges and bends`,
    { at },
  );
}

/** It accuses nobody: marks read in another order look like this as well. */
function notFollowedReason(found: NotFollowedAt, trainee: GradedSurvey): Reason {
  const { places, groups, pairs } = found;
  const [alike, expected] = [Math.round(found.alike), Math.round(found.expected)];
  const [first] = found.from;
  const [what, where, mend] =
    found.at === 'marks'
      ? [
          `the values do not follow the panels${first === undefined ? '' : `, from ${first.name} on`}`,
          `at ${places} marks on ${counted(groups, 'panel')}, ${alike} of ${pairs} pairs of marks on one panel`,
          'read each mark where it is, and write it under its own name',
        ]
      : [
          'the panels do not follow the car',
          `of ${places} panels, ${alike} of ${pairs} pairs`,
          'read each panel, and write it while you stand before it',
        ];
  return reason(
    'not-following',
    `${what}: ${where} lie as the reference has them, thick and thin, chance gives ${Math.round(pairs / 2)} and an unsteady hand ${expected}: ${mend}; if that is how you read the car, say so to your trainer`,
    {
      panels: found.from.map(({ id }) => id),
      at: faceReadings(trainee, first?.id)[0],
    },
  );
}

const marksNamed = (names: readonly string[]): string =>
  `${names.length === 1 ? 'mark' : 'marks'} ${together(names)}`;

function biasReason(bias: CarBias | null, trainee: GradedSurvey): readonly Reason[] {
  if (!isBiasTold(bias)) return [];
  const side = bias.mean > 0 ? 'more' : 'less';
  const ends = [Math.abs(bias.low), Math.abs(bias.high)];
  return [
    reason(
      'car-off',
      says`reads ${um(Math.abs(bias.mean))} ${side} than the reference all over the car (${bare(Math.min(...ends))} to ${um(Math.max(...ends))}): set the gauge to zero, check it on a shim, hold it square without pressing, wipe the paint first`,
      { at: faceReadings(trainee)[0] },
    ),
  ];
}

function panelReasons({
  judged,
  trainee,
  explained,
  bias,
  pattern,
  limits,
}: FaultsOf): readonly Reason[] {
  return judged.scores
    .filter(({ verdict, panel }) => verdict !== 'satisfactory' && !explained.has(panel.id))
    .filter((score) => !isDriftedOff(score, pattern.drift))
    .filter(({ difference }) => !(isBiasTold(bias) && isLikeBias(difference, bias)))
    .sort((a, b) => Math.abs(b.z) - Math.abs(a.z))
    .map((score) => panelReason(score, trainee, limits));
}

/** A panel that is off by what the gauge had drifted by then needs no word of its own: by half of its difference or more. */
function isDriftedOff({ panel, difference }: PanelScore, drift: GaugeDrift | null): boolean {
  const drifted = drift?.onPanel.get(panel.id) ?? 0;
  return Math.abs(difference - drifted) < Math.abs(difference) / 2;
}

function panelReason(score: PanelScore, trainee: GradedSurvey, limits: ScoreLimits): Reason {
  const { panel, reference, kind, z, verdict } = score;
  const doubtful = verdict === 'questionable';
  const name = `${kind === 'z' ? 'z' : 'z′'} ${scoreText(z, limits)}`;
  const again = doubtful
    ? 'read it again'
    : 'read it again on clean, dry paint, the probe square and flat, away from edges';
  const what = mayBeGauge(score) ? `${again}, and check the gauge on a shim about as thick` : again;
  return reason(
    doubtful ? 'panel-doubtful' : 'panel-off',
    says`${panel.name}: ${besideReference(score)} (${name}): ${what}`,
    { panels: [panel.id], at: farthestReading(panel, reference.mean, trainee) },
  );
}

/** By half of the difference or more. */
const mayBeGauge = ({ difference, calibration }: PanelScore): boolean =>
  4 * calibration >= Math.abs(difference);

/** By the means where these are what is scored. */
function besideReference(score: PanelScore): Sentence {
  const { mean, reference, difference, shared } = score;
  if (!isByMarksAlone(score)) return says`${um(mean)}, the reference ${um(reference.mean)}`;
  const side = difference > 0 ? 'more' : 'less';
  return says`${um(Math.abs(difference))} ${side} than the reference at the ${counted(shared, 'mark')} that both read`;
}

/** The reading of a panel that is farthest from the reference. */
function farthestReading(panel: Panel, mean: number, trainee: GradedSurvey) {
  const away = (value: number): number => Math.abs(value - mean);
  return faceReadings(trainee, panel.id).reduce((a, b) =>
    away(b.thickness) > away(a.thickness) ? b : a,
  );
}
