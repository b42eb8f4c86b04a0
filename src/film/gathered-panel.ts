/** A panel's readings gathered to points, before the car's panels are seen together. */
import { maximum, mean, median, minimum, sampleStandardDeviation } from '../base/stats/summary.ts';
import { type Micrometres, micrometres, scale } from '../base/units.ts';
import { needsUltrasound } from './condition/condition.ts';
import { notReadSince, type OverRangePoint } from './condition/over-range.ts';
import type { PanelFacts } from './film-model.ts';
import { heldToVisit } from './limits/left-after-visit.ts';
import { isClearLayer } from './limits/measured-clear.ts';
import { gatherPoints, type PanelPoint } from './panel-points.ts';
import type { Reading } from './reading.ts';
import type { PanelStatistics } from './survey.ts';
import type { Panel } from './template/template.ts';

export type GatheredPanel = {
  readonly panel: Panel;
  readonly facts: PanelFacts;
  readonly points: readonly PanelPoint[];
  readonly otherPoints: readonly PanelPoint[];
  /** Points of metal beyond the range of the gauge that were not read as well. */
  readonly overRange: readonly OverRangePoint[];
  /** Points where the clear was read by itself. */
  readonly clearPoints: readonly PanelPoint[];
  readonly readingCount: number;
  readonly statistics: PanelStatistics | null;
};

/** One that was read, or a part of it. */
export type GatheredFilm = GatheredPanel & {
  readonly statistics: PanelStatistics;
  /** Of a zone that is none of factory film as the rest of its panel is: by how much it is thicker. */
  readonly overRest?: Micrometres;
};

export function gatherPanel(
  panel: Panel,
  facts: PanelFacts,
  readings: readonly Reading[],
  overRange: readonly OverRangePoint[] = NONE,
): GatheredPanel {
  const total = thoseOf(readings, ({ layer }) => layer === '');
  const all = gatherPoints(total);
  const clear = total === readings ? [] : gatherPoints(readings.filter(isClearLayer));
  // Only steel is galvanised: an aluminium panel on a galvanised car carries no zinc.
  const galvanised = facts.galvanised && panel.substrate === 'steel';
  const points = thoseOf(all, ({ place }) => place === 'face');
  return {
    panel,
    facts: heldToVisit(facts.galvanised === galvanised ? facts : { ...facts, galvanised }, points),
    points,
    otherPoints: points === all ? [] : all.filter(({ place }) => place !== 'face'),
    overRange:
      overRange.length === 0 || needsUltrasound(panel) ? NONE : notReadSince(overRange, readings),
    clearPoints: clear.filter(({ place }) => place === 'face'),
    readingCount: readingsOf(points),
    statistics: points.length === 0 ? null : statisticsOf(points),
  };
}

const NONE: readonly OverRangePoint[] = [];

/** The list itself where it holds no others, as nearly every one does. */
const thoseOf = <Item>(all: readonly Item[], test: (item: Item) => boolean): readonly Item[] =>
  all.every(test) ? all : all.filter(test);

/** The part of a panel that these points speak for: its share of area and trim is their share of the points. */
export function partOfPanel(whole: GatheredPanel, points: readonly PanelPoint[]): GatheredFilm {
  const names = new Set(points.map(({ point }) => point));
  const share = points.length / whole.points.length;
  return {
    ...whole,
    panel: {
      ...whole.panel,
      area: scale(whole.panel.area, share),
      trimLength: scale(whole.panel.trimLength, share),
    },
    points,
    clearPoints: whole.clearPoints.filter(({ point }) => names.has(point)),
    readingCount: readingsOf(points),
    statistics: statisticsOf(points),
  };
}

const readingsOf = (points: readonly PanelPoint[]): number =>
  points.reduce((sum, { repeats }) => sum + repeats.length, 0);

function statisticsOf(points: readonly PanelPoint[]): PanelStatistics {
  const values = thicknesses(points);
  return {
    mean: micrometres(mean(values)),
    sd: values.length < 2 ? null : micrometres(sampleStandardDeviation(values)),
    min: micrometres(minimum(values)),
    max: micrometres(maximum(values)),
    median: micrometres(median(values)),
  };
}

export const thicknesses = (points: readonly PanelPoint[]): readonly Micrometres[] =>
  points.map(({ thickness }) => thickness);

/** Metal with a reading on its face: an electromagnetic gauge says nothing of the rest. */
export const isRead = (gathered: GatheredPanel): gathered is GatheredFilm =>
  gathered.statistics !== null && !needsUltrasound(gathered.panel);
