/**
 * Two zones on one panel: part of it repainted, or cut through to another level.
 *
 * The points are cut where the sum of squares within the two groups is least (optimal one-dimensional
 * k-means, Wang & Song 2011), and the cut is believed only if it is wide against what film varies over
 * the *other* panels of the car: a panel may not be its own witness, since any sample falls into two
 * halves that look well apart. Ashman's D, computed after such a cut, passes nine homogeneous panels in
 * ten, so it is shown and decides nothing.
 */
import { keptWith } from '../../base/kept.ts';
import { mean, sampleStandardDeviation } from '../../base/stats/summary.ts';
import { ashmanD, splitInTwo } from '../../base/stats/two-groups.ts';
import type { FilmModel } from '../film-model.ts';
import type { PanelPoint } from '../panel-points.ts';

export type Zones = {
  readonly thinner: readonly PanelPoint[];
  readonly thicker: readonly PanelPoint[];
  readonly cut: ZoneCut;
  /** Null where a zone's points are all one. */
  readonly ashmanD: number | null;
};

/** The best cut through a panel's points, with what it is judged by. */
export type ZoneCut = {
  readonly lower: readonly number[];
  readonly upper: readonly number[];
  /** How far the means of both sides are apart, and the nearest points across the cut. */
  readonly apart: number;
  readonly gap: number;
};

/** Two zones differ by more than this, given how much film varies over the other panels. */
export const zoneLines = (spreadOfOthers: number, rule: FilmModel['zones']) => ({
  apart: Math.max(rule.meansApart, rule.meansApartSds * spreadOfOthers),
  gap: Math.max(rule.gap, rule.gapSds * spreadOfOthers),
});

/** Kept: whether a panel is in two zones is asked first, and then how nearly it is. */
const halvesOf = keptWith((points: readonly PanelPoint[]) =>
  splitInTwo(points.map(({ thickness }) => thickness)),
);

/** Undefined where either side would be left with too few points to be a zone. */
export function bestCut(
  points: readonly PanelPoint[],
  { leastPoints }: Pick<FilmModel['zones'], 'leastPoints'>,
): ZoneCut | undefined {
  if (points.length < 2 * leastPoints) return undefined;
  const groups = halvesOf(points);
  if (groups === undefined) return undefined;
  const { lower, upper } = groups;
  if (Math.min(lower.length, upper.length) < leastPoints) return undefined;
  const [top = Number.NaN, bottom = Number.NaN] = [lower.at(-1), upper[0]];
  return { lower, upper, apart: mean(upper) - mean(lower), gap: bottom - top };
}

/** The two zones of a panel, or undefined where one population explains its points. */
export function splitZones(
  points: readonly PanelPoint[],
  spreadOfOthers: number,
  rule: FilmModel['zones'],
): Zones | undefined {
  const lines = zoneLines(spreadOfOthers, rule);
  // The means of two sides are no farther apart than the points of both.
  if (rangeOf(points) <= lines.apart) return undefined;
  const cut = bestCut(points, rule);
  if (cut === undefined || !(cut.apart > lines.apart && cut.gap > lines.gap)) return undefined;
  const [top = Number.NaN] = cut.lower.slice(-1);
  return {
    thinner: points.filter(({ thickness }) => thickness <= top),
    thicker: points.filter(({ thickness }) => thickness > top),
    cut,
    ashmanD: separation(cut.lower, cut.upper),
  };
}

function rangeOf(points: readonly PanelPoint[]): number {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { thickness } of points) {
    if (thickness < least) least = thickness;
    if (thickness > most) most = thickness;
  }
  return most - least;
}

function separation(lower: readonly number[], upper: readonly number[]): number | null {
  const [one, other] = [lower, upper].map((values) => ({
    mean: mean(values),
    sd: sampleStandardDeviation(values),
  }));
  if (one === undefined || other === undefined || one.sd + other.sd === 0) return null;
  return ashmanD(one, other);
}
