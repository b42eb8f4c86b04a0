/** What a survey falls short in, in words that a trainee can act on. */
import { counted } from '../base/counted.ts';
import { figure, shown } from '../base/rounding.ts';
import { bare, says, um } from '../base/sentence.ts';
import type { PanelPoint } from '../film/panel-points.ts';
import type { Reading } from '../film/reading.ts';
import type { Panel } from '../film/template/template.ts';
import type { CarBias } from './car-bias.ts';
import { type Found, type LowSpotPanel, pointAsLow, repairsInvented } from './found.ts';
import type { GaugeDrift } from './gauge-drift.ts';
import { faceReadings, type GradedSurvey, type ReadPanel, readPanel } from './graded-survey.ts';
import type { Judged } from './mark.ts';
import type { MarksOff } from './marks-off.ts';
import type { MarksPattern, NotFollowedAt } from './marks-pattern.ts';
import type { PanelScore } from './panel-score.ts';
import { type Reason, reason, together } from './reasons.ts';
import type { Reference, ReferencePanel } from './reference.ts';

export type FaultsOf = {
  readonly trainee: GradedSurvey;
  readonly reference: Reference;
  readonly judged: Judged;
  /** Told in place of how well the readings repeat, which nobody knows then. */
  readonly repeatsAlike: Reason | null;
  readonly bias: CarBias | null;
  /** Panels that a blunder speaks of already. */
  readonly explained: ReadonlySet<string>;
  /** A blunder of the whole survey: no word of its panels one by one. */
  readonly wholeSurvey: boolean;
  readonly pattern: MarksPattern;
};

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
  if (drift !== null) return [driftReason(drift, putOff(drift, all), at)];
  return marksOff === null ? biasReason(bias, trainee) : [marksOffReason(marksOff, at)];
}

/** Panels that a drift puts off, as the table counts them: they cost marks, the drift itself none. */
const putOff = (drift: GaugeDrift, { judged }: FaultsOf): number =>
  judged.scores.filter((score) => score.verdict === 'unsatisfactory' && isDriftedOff(score, drift))
    .length;

function driftReason({ total, marks }: GaugeDrift, off: number, at: Reading | undefined): Reason {
  const side = total > 0 ? 'more' : 'less';
  const film = total > 0 ? 'shows film at the end that is not there' : 'misses film at the end';
  const panels =
    off === 0 ? 'no panel is put off by it yet' : `it puts ${counted(off, 'panel')} off`;
  return reason(
    'gauge-drift',
    says`reads ${side} and ${side} beside the reference, ${um(Math.abs(total))} ${side} at the last of ${marks} marks than at the first, in the order of the file: the gauge drifts, and ${film} (${panels}); check its zero and a shim before, in between and after, let it come to the temperature of the car`,
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
  if (!isKnown(bias)) return [];
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

function panelReasons({ judged, trainee, explained, bias, pattern }: FaultsOf): readonly Reason[] {
  return judged.scores
    .filter(({ verdict, panel }) => verdict !== 'satisfactory' && !explained.has(panel.id))
    .filter((score) => !isDriftedOff(score, pattern.drift))
    .filter(({ difference }) => !(isKnown(bias) && isLikeBias(difference, bias)))
    .sort((a, b) => Math.abs(b.z) - Math.abs(a.z))
    .map((score) => panelReason(score, trainee));
}

/** A panel that is off by what the gauge had drifted by then needs no word of its own: by half of its difference or more. */
function isDriftedOff({ panel, difference }: PanelScore, drift: GaugeDrift | null): boolean {
  const drifted = drift?.onPanel.get(panel.id) ?? 0;
  return Math.abs(difference - drifted) < Math.abs(difference) / 2;
}

const isKnown = (bias: CarBias | null): bias is CarBias =>
  bias !== null && bias.verdict !== 'satisfactory';

/** A panel that is off as the whole car is needs no word of its own. */
const isLikeBias = (difference: number, { mean }: CarBias): boolean =>
  Math.sign(difference) === Math.sign(mean) && Math.abs(difference) < 2 * Math.abs(mean);

function panelReason(score: PanelScore, trainee: GradedSurvey): Reason {
  const { panel, mean, reference, kind, z, verdict } = score;
  const doubtful = verdict === 'questionable';
  const name = `${kind === 'z' ? 'z' : 'z′'} ${shown(z, 1).replace('-', '−')}`;
  const what = doubtful
    ? 'read it again'
    : 'read it again on clean, dry paint, the probe square and flat, away from edges';
  return reason(
    doubtful ? 'panel-doubtful' : 'panel-off',
    says`${panel.name}: ${um(mean)}, the reference ${um(reference.mean)} (${name}): ${what}`,
    { panels: [panel.id], at: farthestReading(panel, reference.mean, trainee) },
  );
}

/** The reading of a panel that is farthest from the reference. */
function farthestReading(panel: Panel, mean: number, trainee: GradedSurvey) {
  const away = (value: number): number => Math.abs(value - mean);
  return faceReadings(trainee, panel.id).reduce((a, b) =>
    away(b.thickness) > away(a.thickness) ? b : a,
  );
}

function repairReasons(all: FaultsOf): readonly Reason[] {
  const { trainee, reference, judged, explained, bias } = all;
  // Who reads so much more all over the car reads no panel as refinished besides.
  const isAsTheCar = (id: string): boolean =>
    isKnown(bias) &&
    judged.scores.some(({ panel, difference }) => panel.id === id && isLikeBias(difference, bias));
  const missed = readMissed(judged.repairs, trainee).filter(
    ({ panel }) => !explained.has(panel.id),
  );
  const invented = repairsInvented(trainee, reference).filter(
    ({ panel }) => !explained.has(panel.id) && !isAsTheCar(panel.id),
  );
  return [
    ...missed.map(({ panel, condition, mean }) =>
      reason(
        'repair-missed',
        says`${panel.name}: repaired, which the reference shows (${condition}, ${um(mean)}) and your readings do not: read more points, nearer to each other`,
        { panels: [panel.id], at: faceReadings(trainee, panel.id)[0] },
      ),
    ),
    ...invented.map(({ panel, condition, statistics }) =>
      reason(
        'repair-invented',
        says`${panel.name}: your readings say ${condition} (${um(statistics.mean)}), the reference does not: read it again`,
        { panels: [panel.id], at: faceReadings(trainee, panel.id)[0] },
      ),
    ),
  ];
}

const lowSpotReasons = ({ trainee, reference, judged, explained }: FaultsOf): readonly Reason[] =>
  readMissed(judged.lowSpots, trainee)
    .filter(({ panel }) => !explained.has(panel.id))
    .map(({ read, ...panel }) => {
      const elsewhere = pointAsLow(panel, read, reference);
      return reason(
        'low-spot-missed',
        elsewhere === undefined ? spotMissed(panel, read) : spotElsewhere(panel, elsewhere),
        { panels: [panel.panel.id], at: faceReadings(trainee, panel.panel.id)[0] },
      );
    });

const spotMissed = ({ panel, lowSpot: { thickness, point } }: LowSpotPanel, read: ReadPanel) =>
  says`${panel.name}: the low spot (${um(thickness)} at point ${point}) was not found, your lowest reading is ${um(read.statistics.min)}: feel and look for sanded places, read closer points there`;

const spotElsewhere = ({ panel, lowSpot }: LowSpotPanel, own: PanelPoint) =>
  says`${panel.name}: the low spot (${um(lowSpot.thickness)} at point ${lowSpot.point}) was read under another number, your point ${own.point} (${um(own.thickness)}): whoever works by the sheet looks for it in the wrong place; number points as the marks on the panel are`;

/** Of what was missed, the panels that were read at all; the others are told as unread. */
const readMissed = <Wanted extends ReferencePanel>(
  { missed }: Found<Wanted>,
  trainee: GradedSurvey,
): readonly (Wanted & { readonly read: ReadPanel })[] =>
  missed.flatMap((panel) => {
    const read = readPanel(trainee, panel.panel.id);
    return read === undefined ? [] : [{ ...panel, read }];
  });

function coverageReasons({ judged: { coverage }, trainee }: FaultsOf): readonly Reason[] {
  const { unread, short, extra, pointsRead, points, panels } = coverage;
  const [first] = short;
  const names = (some: readonly Panel[]): string => together(some.map(({ name }) => name));
  return [
    ...(unread.length === 0
      ? []
      : [
          reason(
            'panels-unread',
            `not read: ${names(unread)} (${unread.length} of ${panels} panels): walk round the car in one order, and read every panel`,
            {
              panels: unread.map(({ id }) => id),
              at: faceReadings(trainee)[0],
            },
          ),
        ]),
    ...(first === undefined
      ? []
      : [
          reason(
            'few-points',
            `${pointsRead} of the reference’s ${points} points: fewer than the reference on ${short.length === 1 ? first.name : `${short.length} panels`}`,
            {
              panels: short.map(({ id }) => id),
              at: faceReadings(trainee, first.id)[0],
            },
          ),
        ]),
    ...(extra.length === 0
      ? []
      : [
          reason('panel-extra', `no reference for ${names(extra)}: not scored`, {
            panels: extra.map(({ id }) => id),
            at: faceReadings(trainee, extra[0]?.id)[0],
          }),
        ]),
  ];
}

function repeatabilityReasons({
  judged: { repeatability },
  repeatsAlike,
  trainee,
}: FaultsOf): readonly Reason[] {
  if (repeatsAlike !== null) return [repeatsAlike];
  if (repeatability === null) {
    return [
      reason(
        'not-repeated',
        'no point was read twice, so nobody can say how well your readings repeat: read each point three times',
        { at: faceReadings(trainee)[0] },
      ),
    ];
  }
  const { sd, allowed, dof } = repeatability;
  if (sd <= allowed) return [];
  return [
    reason(
      'repeats-apart',
      says`readings of one point differ by ${um(sd, 2)} (SD of ${figure(dof)} repeats), up to ${um(allowed, 2)} is usual: lift and set the probe down at the very same place, square and without sliding`,
      { at: widestRepeat(trainee) },
    ),
  ];
}

/** The first reading of the point whose repeats are farthest apart. */
function widestRepeat(trainee: GradedSurvey) {
  const points = trainee.survey.panels.flatMap(({ panel, points: own }) =>
    own.map(({ point, repeats }) => ({
      panel,
      point,
      apart: Math.max(...repeats) - Math.min(...repeats),
    })),
  );
  const widest = Math.max(...points.map(({ apart }) => apart));
  const [first] = points
    .filter(({ apart }) => apart === widest)
    .flatMap(({ panel, point: name }) =>
      faceReadings(trainee, panel.id).filter(({ point }) => point === name),
    );
  return first;
}
