/** Marked points that the trainee and the reference both read, in the order in which the trainee’s file has them. */
import { valueAt } from '../base/at.ts';
import type { Panel } from '../film/template/template.ts';
import { type GradedSurvey, markedPoints, pointKey, readPanels } from './graded-survey.ts';
import type { Reference } from './reference.ts';

export type MarkCompared = {
  readonly panel: Panel;
  readonly point: string;
  /** The trainee’s value less the reference’s: film cancels in it. */
  readonly difference: number;
};

/** Points by `pointKey` that are keyed wrongly are left out. */
export function marksCompared(
  trainee: GradedSurvey,
  { panels }: Reference,
  keyed: ReadonlySet<string>,
): readonly MarkCompared[] {
  const order = new Map<string, number>();
  for (const { panel, point } of trainee.readings) {
    const key = pointKey(panel, point);
    if (!order.has(key)) order.set(key, order.size);
  }
  // Every point of a panel has a reading.
  const placeOf = ({ panel, point }: MarkCompared): number =>
    valueAt(order, pointKey(panel.id, point));
  return readPanels(trainee)
    .flatMap(({ panel, points }) => {
      const theirs = panels.get(panel.id);
      const own = markedPoints(trainee, panel.id);
      return points.flatMap(({ point, thickness }): readonly MarkCompared[] => {
        const other = theirs?.points.find((one) => one.point === point);
        const isShared = own.has(point) && theirs?.marked.has(point) === true;
        return other === undefined || !isShared || keyed.has(pointKey(panel.id, point))
          ? []
          : [{ panel, point, difference: thickness - other.thickness }];
      });
    })
    .sort((one, other) => placeOf(one) - placeOf(other));
}
