/**
 * Panels whose points a trainee numbered in another order, the same on all of them: row by row, say, or from another mark on.
 *
 * Of the n! orders of n marks it is the one in which most pairs of marks lie as the reference has them: Kendall’s S over all
 * panels with these marks. Values that follow no film come as near in some order with a chance of at most n! times that in
 * one (Bonferroni): an order is told where that is under the false alarm, so that values made up are not taken for it.
 */
import { at } from '../base/at.ts';
import { groupBy } from '../base/group-by.ts';
import { kendallVariance } from '../base/stats/kendall.ts';
import { normalCdf } from '../base/stats/normal.ts';
import { sum } from '../base/sum.ts';
import { byPointName } from '../film/compare/swapped-points.ts';
import { type MarkPair, sharedMarks } from './fit-at-marks.ts';
import { type GradedSurvey, type ReadPanel, readPanels } from './graded-survey.ts';
import type { Reference } from './reference.ts';

export type CommonOrder = {
  readonly panels: readonly ReadPanel[];
  /** By the trainee’s number of a point, that of its mark. */
  readonly markOf: ReadonlyMap<string, string>;
};

type Compared = { readonly trainee: GradedSurvey; readonly reference: Reference };

/** Two marks have no order but that from the other end; over five the orders are too many to try them all. */
const MARKS = { least: 3, most: 5 };

/** On the panels of these ids, for each set of marks that they have. */
export function commonOrders(
  { trainee, reference }: Compared,
  ids: ReadonlySet<string>,
  falseAlarm: number,
): readonly CommonOrder[] {
  const read = readPanels(trainee).flatMap((one): readonly Marked[] => {
    const theirs = reference.panels.get(one.panel.id);
    if (theirs === undefined || !ids.has(one.panel.id)) return [];
    const pairs = sharedMarks(one, theirs, { trainee }).toSorted((a, b) =>
      byPointName(a.own.point, b.own.point),
    );
    return pairs.length < MARKS.least || pairs.length > MARKS.most ? [] : [{ read: one, pairs }];
  });
  const alike = groupBy(read, ({ pairs }) => JSON.stringify(namesOf(pairs)));
  return [...alike.values()].flatMap((some) => orderOf(some, falseAlarm));
}

type Marked = { readonly read: ReadPanel; readonly pairs: readonly MarkPair[] };

const namesOf = (pairs: readonly MarkPair[]): readonly string[] =>
  pairs.map(({ own }) => own.point);

function orderOf(panels: readonly Marked[], falseAlarm: number): readonly CommonOrder[] {
  const names = namesOf(at(panels, 0).pairs);
  const orders = ordersOf(names.map((_, i) => i));
  const judged = orders.map((order) => ({
    order,
    s: sum(panels.map(({ pairs }) => alikeIn(pairs, order))),
  }));
  const best = judged.reduce((one, other) => (other.s > one.s ? other : one));
  const spread = Math.sqrt(panels.length * kendallVariance(names.length));
  if (orders.length * normalCdf(-best.s / spread) >= falseAlarm) return [];
  if (best.order.every((mark, i) => mark === i)) return [];
  return [
    {
      panels: panels.map(({ read }) => read),
      markOf: new Map(names.map((name, i) => [name, at(names, at(best.order, i))])),
    },
  ];
}

/** Pairs of marks that lie as the reference has them, less those the other way round; `order` holds the mark of each point. */
function alikeIn(pairs: readonly MarkPair[], order: readonly number[]): number {
  const places = pairs.map(({ own }, i) => ({
    own: own.thickness,
    theirs: at(pairs, at(order, i)).theirs.thickness,
  }));
  return sum(
    places.flatMap((one, i) =>
      places
        .slice(i + 1)
        .map((other) => Math.sign(one.own - other.own) * Math.sign(one.theirs - other.theirs)),
    ),
  );
}

const ordersOf = (marks: readonly number[]): readonly (readonly number[])[] =>
  marks.length === 0
    ? [[]]
    : marks.flatMap((first) =>
        ordersOf(marks.filter((mark) => mark !== first)).map((rest) => [first, ...rest]),
      );
