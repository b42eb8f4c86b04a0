/** Points of one name that two surveys read on one panel, with the value of each, in the order of the first file. */
import { valueAt } from '../base/at.ts';
import { groupBy } from '../base/group-by.ts';
import { keptWith } from '../base/kept.ts';
import { sum } from '../base/sum.ts';
import { type GradedSurvey, markedPoints, pointKey, readPanels } from './graded-survey.ts';

export type CommonPoint = {
  readonly panelId: string;
  readonly one: number;
  readonly other: number;
  /** Both marked it: it is one place. */
  readonly marked: boolean;
};

export function pointsInCommon(one: GradedSurvey, other: GradedSurvey): readonly CommonPoint[] {
  const theirPanels = new Map(readPanels(other).map((theirs) => [theirs.panel.id, theirs]));
  const found = readPanels(one).flatMap(({ panel: { id }, points }) => {
    const theirs = new Map(
      theirPanels.get(id)?.points.map(({ point, thickness }) => [point, thickness]),
    );
    const [ownMarks, theirMarks] = [markedPoints(one, id), markedPoints(other, id)];
    return points.flatMap(({ point, thickness }) => {
      const their = theirs.get(point);
      const marked = ownMarks.has(point) && theirMarks.has(point);
      return their === undefined
        ? []
        : [{ key: pointKey(id, point), panelId: id, one: thickness, other: their, marked }];
    });
  });
  const order = orderOf(one);
  return found.sort((a, b) => valueAt(order, a.key) - valueAt(order, b.key));
}

/**
 * Chance that two values of the pair are the same figure though they are of different points: of one panel, or anywhere
 * on the car where no panel has two points. On even film and a coarse display nearly all are, and nothing follows from it.
 */
export function chanceAlike(
  points: readonly CommonPoint[],
  isAlike: (one: number, other: number) => boolean = isSame,
): number {
  const panels = [...groupBy(points, ({ panelId }) => panelId).values()];
  const pairs = (some: readonly CommonPoint[]): number => some.length * (some.length - 1);
  const groups = panels.some((some) => pairs(some) > 0) ? panels : [points];
  const all = sum(groups.map(pairs));
  return all === 0 ? 0 : sum(groups.map((some) => alikeAcross(some, isAlike))) / all;
}

/** Values of one that are the same as those of the other at another point. */
const alikeAcross = (
  points: readonly CommonPoint[],
  isAlike: (one: number, other: number) => boolean,
): number =>
  sum(
    points.map(
      (own, i) => points.filter((theirs, k) => k !== i && isAlike(own.one, theirs.other)).length,
    ),
  );

const isSame = (one: number, other: number): boolean => one === other;

/** Places of the points in the file. */
const orderOf = keptWith(({ readings }: GradedSurvey): ReadonlyMap<string, number> => {
  const order = new Map<string, number>();
  for (const { panel, point } of readings) {
    const key = pointKey(panel, point);
    if (!order.has(key)) order.set(key, order.size);
  }
  return order;
});
