/**
 * Points of a panel read twice: which of them are the same place.
 *
 * A name alone is no place: a point is found again only where it was marked, both times. Everything that
 * was read and has no counterpart is named, so that nobody takes it for compared.
 */
import { roundTo } from '../../base/rounding.ts';
import { median } from '../../base/stats/summary.ts';
import { resolution } from '../../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { PanelPoint } from '../panel-points.ts';
import type { PanelSurvey } from '../survey.ts';

export type PointPair = {
  readonly point: string;
  readonly before: Micrometres;
  readonly after: Micrometres;
  /** How many readings stand behind the two. */
  readonly repeats: { readonly before: number; readonly after: number };
};

/** Whether a point of a panel was marked, so that it can be found again. */
export type MarkedAt = (panel: string, point: string) => boolean;

export type MarkedTimes = { readonly before: MarkedAt; readonly after: MarkedAt };

/** Names of points on the face that were not paired, and why. */
export type UnpairedPoints = {
  /** Marked before, and not read again. */
  readonly notReadAgain: readonly string[];
  /** Read later, and never before. */
  readonly notReadBefore: readonly string[];
  /** Read both times under one name, and marked neither time or one time only. */
  readonly notMarked: readonly string[];
  /** Near an edge, on a body line or in a shut: they enter no statistic. */
  readonly offTheFace: readonly string[];
};

export type PairedPanel = {
  readonly pairs: readonly PointPair[];
  readonly unpaired: UnpairedPoints;
};

type Points = Pick<PanelSurvey, 'panel' | 'points' | 'otherPoints'>;

export function pairPoints(before: Points, after: Points, marked: MarkedTimes): PairedPanel {
  const { id } = before.panel;
  const later = new Map(after.points.map((point) => [point.point, point]));
  const names = new Set(before.points.map(({ point }) => point));
  const isMarked = (point: string): boolean => marked.before(id, point) && marked.after(id, point);
  const again = before.points.flatMap((first) => {
    const second = later.get(first.point);
    return second === undefined ? [] : [pairOf(first, second)];
  });
  const other = new Set([...before.otherPoints, ...after.otherPoints].map(({ point }) => point));
  return {
    pairs: again.filter(({ point }) => isMarked(point)),
    unpaired: {
      notReadAgain: before.points.map(({ point }) => point).filter((point) => !later.has(point)),
      notReadBefore: [...later.keys()].filter((point) => !names.has(point)),
      notMarked: again.map(({ point }) => point).filter((point) => !isMarked(point)),
      offTheFace: [...other],
    },
  };
}

const pairOf = (first: PanelPoint, second: PanelPoint): PointPair => ({
  point: first.point,
  before: first.thickness,
  after: second.thickness,
  repeats: { before: first.repeats.length, after: second.repeats.length },
});

/** What came off at each pair, µm. */
export const differencesOf = (pairs: readonly PointPair[]): readonly number[] =>
  pairs.map(({ before, after }) => before - after);

/** Variance of one difference that the gauge alone makes: each reading scatters, and is rounded. */
export function gaugeVariance(
  pairs: readonly PointPair[],
  repeatability: Micrometres,
  step: Micrometres,
): number {
  const perReading = repeatability ** 2 + resolution(step) ** 2;
  const shares = pairs.map(({ repeats }) => 1 / repeats.before + 1 / repeats.after);
  return pairs.length === 0
    ? 2 * perReading
    : (perReading * shares.reduce((sum, share) => sum + share, 0)) / pairs.length;
}

/** A point whose change stands out from its panel's: what its panel lost beside it, and which reading is the odd one. */
export type PointApart = PointPair & {
  /** What came off at the panel's other points, in the middle. */
  readonly others: Micrometres;
  /** More came off than at the others, or less. */
  readonly lost: 'more' | 'less';
  /** The reading that lies farther from those of its own time. */
  readonly odd: 'before' | 'after';
  /** The odd reading with two neighbouring digits exchanged, where that agrees with the others; else null. */
  readonly swapped: Micrometres | null;
};

/** `reach` is how far changes of a panel may honestly lie from their middle. */
export function pointApart(
  pair: PointPair,
  others: readonly PointPair[],
  reach: number,
): PointApart {
  const middle = median(differencesOf(others));
  const off = (of: (one: PointPair) => number): number =>
    Math.abs(of(pair) - median(others.map(of)));
  const odd = off(({ before }) => before) > off(({ after }) => after) ? 'before' : 'after';
  const meant = odd === 'before' ? pair.after + middle : pair.before - middle;
  const near = pair.repeats[odd] > 1 ? [] : digitSwaps(pair[odd]);
  const swapped = near.find((one) => Math.abs(one - meant) <= reach);
  return {
    ...pair,
    others: micrometres(middle),
    lost: pair.before - pair.after > middle ? 'more' : 'less',
    odd,
    swapped: swapped === undefined ? null : micrometres(swapped),
  };
}

const SHOWN_DIGITS = 2;

/** 171.9 → 711.9, 117.9, 179.1 */
function digitSwaps(value: number): readonly number[] {
  const text = `${roundTo(value, SHOWN_DIGITS)}`;
  const digits = text.replace('.', '');
  const point = text.includes('.') ? text.length - text.indexOf('.') - 1 : 0;
  return [...digits].slice(1).flatMap((_, i) => {
    const [one = '', other = ''] = digits.slice(i, i + 2);
    const exchanged = Number(`${digits.slice(0, i)}${other}${one}${digits.slice(i + 2)}`);
    return one === other ? [] : [exchanged / 10 ** point];
  });
}
