/** Points of one name that two surveys read on one panel, with the value of each, in the order of the first file. */
import { valueAt } from '../base/at.ts';
import { keptWith } from '../base/kept.ts';
import { type GradedSurvey, markedPoints, pointKey, readPanels } from './graded-survey.ts';

export type CommonPoint = {
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
        : [{ key: pointKey(id, point), one: thickness, other: their, marked }];
    });
  });
  const order = orderOf(one);
  return found.sort((a, b) => valueAt(order, a.key) - valueAt(order, b.key));
}

/** Places of the points in the file. */
const orderOf = keptWith(({ readings }: GradedSurvey): ReadonlyMap<string, number> => {
  const order = new Map<string, number>();
  for (const { panel, point } of readings) {
    const key = pointKey(panel, point);
    if (!order.has(key)) order.set(key, order.size);
  }
  return order;
});
