/**
 * Panels whose points a trainee numbered in another order, the same on all of them: row by row, say, or from another mark on.
 *
 * Of the n! orders of n marks it is the one in which most pairs of marks lie as the reference has them: Kendall’s S over all
 * panels with these marks. It is sought from the order that the readings suggest, the one of the best matching of ranks
 * (src/base/best-matching.ts), by changing two of its marks as long as S grows. Values that follow no film come as near in
 * some order with a chance of at most n! times that in one (Bonferroni): an order is told where that is under the false
 * alarm, so that values made up are not taken for it.
 */
import { at } from '../base/at.ts';
import { bestMatching } from '../base/best-matching.ts';
import { groupBy } from '../base/group-by.ts';
import { logGamma } from '../base/stats/gamma.ts';
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
    // Two have no other order but that from the other end.
    return pairs.length < 3 ? [] : [{ read: one, pairs }];
  });
  const alike = groupBy(read, ({ pairs }) => JSON.stringify(namesOf(pairs)));
  return [...alike.values()].flatMap((some) => orderOf(some, falseAlarm));
}

type Marked = { readonly read: ReadPanel; readonly pairs: readonly MarkPair[] };

const namesOf = (pairs: readonly MarkPair[]): readonly string[] =>
  pairs.map(({ own }) => own.point);

function orderOf(panels: readonly Marked[], falseAlarm: number): readonly CommonOrder[] {
  const names = namesOf(at(panels, 0).pairs);
  const { order, s } = likeliestOrder(panels);
  const spread = Math.sqrt(panels.length * kendallVariance(names.length));
  const ofAnOrder = Math.log(normalCdf(-s / spread));
  if (ofAnOrder + logGamma(names.length + 1) >= Math.log(falseAlarm)) return [];
  if (order.every((mark, i) => mark === i)) return [];
  return [
    {
      panels: panels.map(({ read }) => read),
      markOf: new Map(names.map((name, i) => [name, at(names, at(order, i))])),
    },
  ];
}

type Order = { readonly order: readonly number[]; readonly s: number };

function likeliestOrder(panels: readonly Marked[]): Order {
  const judged = (order: readonly number[]): Order => ({
    order,
    s: sum(panels.map(({ pairs }) => alikeIn(pairs, order))),
  });
  let best = judged(bestMatching(worthOfPlaces(panels)));
  for (;;) {
    const next = withTwoChanged(best.order)
      .map(judged)
      .reduce((one, other) => (other.s > one.s ? other : one), best);
    if (next === best) return best;
    best = next;
  }
}

/** By point and mark: how well ranks of the point, from panel to panel, go with those of the mark. */
function worthOfPlaces(panels: readonly Marked[]): readonly (readonly number[])[] {
  const ranked = panels.map(({ pairs }) => ({
    own: ranksOf(pairs.map(({ own }) => own.thickness)),
    theirs: ranksOf(pairs.map(({ theirs }) => theirs.thickness)),
  }));
  const places = at(panels, 0).pairs.map((_, i) => i);
  return places.map((point) =>
    places.map((mark) => sum(ranked.map(({ own, theirs }) => at(own, point) * at(theirs, mark)))),
  );
}

/** About the middle one: values over it less those under it. */
const ranksOf = (values: readonly number[]): readonly number[] =>
  values.map((value) => sum(values.map((other) => Math.sign(value - other))));

const withTwoChanged = (order: readonly number[]): readonly (readonly number[])[] =>
  order.flatMap((one, i) =>
    order
      .slice(i + 1)
      .map((other) => order.map((mark) => (mark === one ? other : mark === other ? one : mark))),
  );

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
