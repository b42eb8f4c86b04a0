/**
 * Low spots and repairs of the reference: which of them a trainee found.
 *
 * A low spot is found where the trainee has a reading on that panel nearer to it than to the panel’s middle,
 * or within what two readings of one place differ by (1.96·√2·s_r); where both marked the point, at that point.
 * A spot missed with points of one’s own is told and takes no marks: it may lie between them. On a panel that was not
 * read at all, it is missed as a repair is.
 * A repair is found where the trainee’s own readings say repaint, filler or two films.
 */

import { exactInterval } from '../base/stats/proportion-interval.ts';
import { repeatabilityLimit } from '../base/stats/repeatability-limit.ts';
import { restsOnOverRange } from '../film/condition/over-range.ts';
import type { PanelPoint } from '../film/panel-points.ts';
import {
  type GradedSurvey,
  isRepaired,
  markedPoints,
  type ReadPanel,
  readPanel,
  readPanels,
} from './graded-survey.ts';
import type { LowSpot, Reference, ReferencePanel } from './reference.ts';

/** Panels of the reference with something on them that is to be found. */
export type Found<Wanted extends ReferencePanel = ReferencePanel> = {
  readonly of: number;
  readonly found: number;
  /** Exact interval of the share, 95 % (Clopper and Pearson); null where there is nothing to find. */
  readonly interval: readonly [low: number, high: number] | null;
  readonly missed: readonly Wanted[];
  /** How many of the missed are to blame: a small spot between points of one’s own is missed honestly. */
  readonly blamed: number;
};

export type LowSpotPanel = ReferencePanel & { readonly lowSpot: LowSpot };

const hasLowSpot = (panel: ReferencePanel): panel is LowSpotPanel => panel.lowSpot !== null;

export const lowSpotsFound = (trainee: GradedSurvey, reference: Reference): Found<LowSpotPanel> =>
  counted(
    [...reference.panels.values()].filter(hasLowSpot),
    (panel) => isSpotFound(panel, trainee, reference),
    (panel) => readPanel(trainee, panel.panel.id) === undefined || hasMarks(panel, trainee),
  );

export const repairsFound = (trainee: GradedSurvey, reference: Reference): Found =>
  counted(
    [...reference.panels.values()].filter(({ repaired }) => repaired),
    ({ panel }) => {
      const read = readPanel(trainee, panel.id);
      return read !== undefined && isRepaired(read);
    },
  );

/**
 * Panels that read repaired and are not, by the reference; none by points beyond the range of the gauge alone, be they
 * the trainee's or the reference's.
 */
export const repairsInvented = (
  trainee: GradedSurvey,
  reference: Reference,
): readonly ReadPanel[] =>
  readPanels(trainee).filter((read) => {
    const panel = reference.panels.get(read.panel.id);
    if (panel === undefined || panel.repaired || panel.condition === 'filler') return false;
    return isRepaired(read) && !restsOnOverRange(read);
  });

function counted<Wanted extends ReferencePanel>(
  wanted: readonly Wanted[],
  isFound: (panel: Wanted) => boolean,
  isBlamed: (panel: Wanted) => boolean = () => true,
): Found<Wanted> {
  const missed = wanted.filter((panel) => !isFound(panel));
  const found = wanted.length - missed.length;
  return {
    of: wanted.length,
    found,
    interval: wanted.length === 0 ? null : exactInterval(found, wanted.length),
    missed,
    blamed: missed.filter(isBlamed).length,
  };
}

/** The reference marked the spot, and the trainee read marked points on that panel. */
export const hasMarks = (
  { panel, lowSpot, marked }: LowSpotPanel,
  trainee: GradedSurvey,
): boolean => marked.has(lowSpot.point) && markedPoints(trainee, panel.id).size > 0;

function isSpotFound(wanted: LowSpotPanel, trainee: GradedSurvey, reference: Reference): boolean {
  const { panel, lowSpot, marked } = wanted;
  const read = readPanel(trainee, panel.id);
  if (read === undefined) return false;
  const atMark = marked.has(lowSpot.point) && markedPoints(trainee, panel.id).has(lowSpot.point);
  const looked = atMark ? read.points.filter(({ point }) => point === lowSpot.point) : read.points;
  return pointAsLow(wanted, { points: looked }, reference) !== undefined;
}

/** The lowest of the points that read as low as the spot. */
export const pointAsLow = (
  { lowSpot, median }: LowSpotPanel,
  { points }: Pick<ReadPanel, 'points'>,
  { repeatability }: Pick<Reference, 'repeatability'>,
): PanelPoint | undefined =>
  points
    .filter(({ thickness }) => {
      const nearer = (lowSpot.thickness + median) / 2;
      const repeated = lowSpot.thickness + repeatabilityLimit(repeatability);
      return thickness <= Math.max(nearer, repeated);
    })
    .sort((one, other) => one.thickness - other.thickness)[0];
