/** A survey that somebody handed in, with the readings behind it. */
import { groupBy } from '../base/group-by.ts';
import { keptWith } from '../base/kept.ts';
import { mean, sampleStandardDeviation } from '../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { type Condition, isFactoryFilm } from '../film/condition/condition.ts';
import { displayStep, type PanelPoint, pooledRepeatability } from '../film/panel-points.ts';
import type { Reading } from '../film/reading.ts';
import type { Spread } from '../film/spread.ts';
import type { PanelSurvey, Survey, ZoneName } from '../film/survey.ts';

export type GradedSurvey = {
  readonly survey: Survey;
  /** As they were surveyed, their panels named by the ids of the template. */
  readonly readings: readonly Reading[];
  /** SD of a reading set down again on a car: as the model says, or its gauge file where that says more. */
  readonly repeatability: Micrometres;
};

/** A panel with a film thickness on its face. */
export type ReadPanel = PanelSurvey & {
  readonly film: NonNullable<PanelSurvey['film']>;
  readonly statistics: NonNullable<PanelSurvey['statistics']>;
};

const isRead = (panel: PanelSurvey): panel is ReadPanel =>
  panel.film !== null && panel.statistics !== null;

export const readPanels = ({ survey }: Pick<GradedSurvey, 'survey'>): readonly ReadPanel[] =>
  survey.panels.filter(isRead);

export const readPanel = (
  { survey }: Pick<GradedSurvey, 'survey'>,
  id: string,
): ReadPanel | undefined => survey.panels.filter(isRead).find(({ panel }) => panel.id === id);

/** Readings of the whole film on the face: those that a panel's statistics come from. */
export const faceReadings = (
  { readings }: Pick<GradedSurvey, 'readings'>,
  panelId?: string,
): readonly Reading[] =>
  readings.filter(
    ({ layer, place, panel }) =>
      layer === '' && place === 'face' && (panelId === undefined || panel === panelId),
  );

/** Ids of the panels, in the order in which the file has them; a survey has them in that of the template. */
export const panelsInFile = (survey: Pick<GradedSurvey, 'readings'>): readonly string[] => [
  ...new Set(faceReadings(survey).map(({ panel }) => panel)),
];

/** Names of the marked points on a panel's face. */
export const markedPoints = (
  survey: Pick<GradedSurvey, 'readings'>,
  panelId: string,
): ReadonlySet<string> => marksByPanel(survey).get(panelId) ?? noMarks;

const noMarks: ReadonlySet<string> = new Set();

const marksByPanel = keptWith(
  (survey: Pick<GradedSurvey, 'readings'>): ReadonlyMap<string, ReadonlySet<string>> => {
    const marked = groupBy(
      faceReadings(survey).filter((reading) => reading.marked),
      ({ panel }) => panel,
    );
    return new Map(
      [...marked].map(([panel, readings]) => [panel, new Set(readings.map(({ point }) => point))]),
    );
  },
);

/** Repaint, filler, or a part of the panel in either. */
export const isRepaired = (panel: PanelSurvey): boolean =>
  [panel.condition, ...panel.also].some(
    (one) =>
      one === 'refinished' ||
      one === 'filler' ||
      (one === 'mixed' && lowZonePoints(panel).length === 0),
  );

/**
 * Points of the thinner zone of a panel in two, where that is the one that is not the film of the car: several low spots,
 * and no repair. None where the thicker zone is farther from that film, or nobody knows it.
 */
export function lowZonePoints({
  zones,
  baseline,
}: Pick<PanelSurvey, 'zones' | 'baseline'>): readonly string[] {
  const pointsOf = (name: ZoneName): readonly PanelPoint[] =>
    zones.filter(({ zone }) => zone === name).flatMap(({ points }) => points);
  const [thinner, thicker] = [pointsOf('thinner'), pointsOf('thicker')];
  if (thinner.length === 0 || baseline === null) return [];
  const [low, high] = [thinner, thicker].map((points) =>
    mean(points.map(({ thickness }) => thickness)),
  ) as [number, number];
  return baseline - low > Math.abs(high - baseline) ? thinner.map(({ point }) => point) : [];
}

/** Factory film that nothing stands out of: what such panels vary by is the film of the car. */
export const isEven = (panel: PanelSurvey): boolean =>
  [panel.condition, ...panel.also].every(isFactoryFilm) &&
  panel.lowPoints.length + panel.highPoints.length + panel.keyingSlips.length === 0;

/** How much a panel varies between points: both films together where it carries two. */
export function betweenPoints({ film, zones, points }: ReadPanel): Spread {
  if (zones.length === 0) return film.spread;
  const values = points.map(({ thickness }) => thickness);
  return { sd: micrometres(sampleStandardDeviation(values)), dof: points.length - 1 };
}

/**
 * What a panel reads as. That film may be thin somewhere follows from how many points were read as well: only a
 * point under the floor makes a panel thin here.
 */
export function conditionWord({ condition, also, statistics, totalFloor }: ReadPanel): Condition {
  const words = [condition, ...also];
  const proved = statistics.min < totalFloor;
  return words.find((word) => word !== 'thin' || proved) ?? 'original';
}

/** A name of a point on its panel. */
export const pointKey = (panelId: string, point: string): string => `${panelId} ${point}`;

/**
 * SD of readings repeated at their points, all panels together; null where none was. Points with a reading
 * that is keyed wrongly say nothing of the hand: they are left out.
 */
export const ownRepeatability = (
  graded: Pick<GradedSurvey, 'survey'>,
  leftOut: ReadonlySet<string> = new Set(),
): { readonly sd: Micrometres; readonly dof: number } | null =>
  pooledRepeatability(
    readPanels(graded).flatMap(({ panel, points }) =>
      points.filter(({ point }) => !leftOut.has(pointKey(panel.id, point))),
    ),
  ) ?? null;

/** The step of the display, off the readings themselves. */
export const stepOf = keptWith(
  (graded: Pick<GradedSurvey, 'readings'>): Micrometres =>
    displayStep(faceReadings(graded).map(({ thickness }) => thickness)),
);
