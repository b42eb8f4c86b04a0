/** What of the reference a survey missed: repairs, low spots, panels, points. */
import { says, um } from '../base/sentence.ts';
import type { PanelPoint } from '../film/panel-points.ts';
import type { Panel } from '../film/template/template.ts';
import { isBiasTold, isLikeBias } from './car-bias.ts';
import type { FaultsOf } from './faults-of.ts';
import { type Found, hasMarks, type LowSpotPanel, pointAsLow, repairsInvented } from './found.ts';
import { faceReadings, type GradedSurvey, type ReadPanel, readPanel } from './graded-survey.ts';
import { type Reason, reason, together } from './reasons.ts';
import type { ReferencePanel } from './reference.ts';

export function repairReasons(all: FaultsOf): readonly Reason[] {
  const { trainee, reference, judged, explained, bias } = all;
  // Who reads so much more all over the car reads no panel as refinished besides.
  const isAsTheCar = (id: string): boolean =>
    isBiasTold(bias) &&
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

export const lowSpotReasons = ({
  trainee,
  reference,
  judged,
  explained,
}: FaultsOf): readonly Reason[] =>
  readMissed(judged.lowSpots, trainee)
    .filter(({ panel }) => !explained.has(panel.id))
    .map(({ read, ...panel }) => {
      const elsewhere = pointAsLow(panel, read, reference);
      return reason(
        'low-spot-missed',
        elsewhere === undefined
          ? spotMissed(panel, read, hasMarks(panel, trainee))
          : spotElsewhere(panel, elsewhere),
        { panels: [panel.panel.id], at: faceReadings(trainee, panel.panel.id)[0] },
      );
    });

/** At points of one’s own it may be missed honestly. */
const spotMissed = (
  { panel, lowSpot: { thickness, point } }: LowSpotPanel,
  read: ReadPanel,
  isBlamed: boolean,
) =>
  says`${panel.name}: the low spot (${um(thickness)} at point ${point}) was not found, your lowest reading is ${um(read.statistics.min)}: feel and look for sanded places, read closer points there${isBlamed ? '' : '; it may lie between points of your own, and takes no marks'}`;

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

export function coverageReasons({ judged: { coverage }, trainee }: FaultsOf): readonly Reason[] {
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
