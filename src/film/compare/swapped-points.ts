/**
 * Marked points that fit one another far better another way round: two panels whose readings were swapped, or a
 * panel whose points were numbered from the other end.
 *
 * What comes off a panel is its own affair, so each way is judged by how its differences scatter about their mean;
 * about none where the mean says that film grew, which no work does: two panels that are even, and exchanged, are
 * known by one that lost what the other gained. With S the sum of squares as read and S′ the other way round, the
 * likelihoods of normal errors of variance σ² are in the ratio exp((S − S′)/2σ²). σ² is no less than the gauge makes
 * it, than the middle panel of the others has it, or than the other way round leaves (growth counted, so that paint
 * that was added is no exchange): a guess in favour of the readings as they stand.
 */
import { at } from '../../base/at.ts';
import { mean, median } from '../../base/stats/summary.ts';
import { differencesOf, type PointPair } from './compare-points.ts';

type PairedPoints = { readonly id: string; readonly pairs: readonly PointPair[] };

/** Ids of two panels, or of one whose points run the other way. */
export type Swap =
  | { readonly kind: 'panels'; readonly panels: readonly [string, string] }
  | { readonly kind: 'mirrored'; readonly panels: readonly [string] };

/** Fewer points have no pattern to know a panel by. */
const LEAST_POINTS = 3;

/**
 * The likeliest first; a panel stands in one of them only. From `farBetter` on, the log of the likelihoods' ratio, a
 * swap is asked about.
 */
export function swappedPoints(
  panels: readonly PairedPoints[],
  gaugeVariance: number,
  farBetter: number,
): readonly Swap[] {
  const told = panels.filter(({ pairs }) => pairs.length >= LEAST_POINTS);
  const ways = [
    ...told.flatMap((one, i) => told.slice(i + 1).flatMap((other) => exchanged(one, other))),
    ...told.map(mirrored),
  ];
  const judged = ways.map((way) => ({ ...way, gain: gainOf(way, told, gaugeVariance) }));
  const picked = likeliest(judged.filter(({ gain }) => gain > farBetter));
  // Whoever counted two panels from the other end counted others so: there a better fit is enough, and of two that are
  // turned one may fit the other by chance.
  return picked.filter(({ kind }) => kind === 'mirrored').length > 1
    ? likeliest(judged.filter(({ swap, gain }) => swap.kind === 'mirrored' && gain > 0))
    : picked;
}

type Judged = { readonly swap: Swap; readonly gain: number };

function likeliest(ways: readonly Judged[]): readonly Swap[] {
  const taken = new Set<string>();
  return ways
    .toSorted((a, b) => b.gain - a.gain)
    .flatMap(({ swap }) => {
      if (swap.panels.some((id) => taken.has(id))) return [];
      for (const id of swap.panels) taken.add(id);
      return [swap];
    });
}

/** A way to pair the points, beside how they are paired by their names. */
type Way = {
  readonly swap: Swap;
  readonly asRead: readonly Differences[];
  readonly otherwise: readonly Differences[];
};
type Differences = readonly number[];

/** Nothing where the two do not share enough points by name. */
function exchanged(one: PairedPoints, other: PairedPoints): readonly Way[] {
  const again = new Map(other.pairs.map((pair) => [pair.point, pair]));
  const both = one.pairs.flatMap((pair) => {
    const counterpart = again.get(pair.point);
    return counterpart === undefined ? [] : [{ pair, counterpart }];
  });
  if (both.length < LEAST_POINTS) return [];
  return [
    {
      swap: { kind: 'panels', panels: [one.id, other.id] },
      asRead: [
        differencesOf(both.map(({ pair }) => pair)),
        differencesOf(both.map(({ counterpart }) => counterpart)),
      ],
      otherwise: [
        both.map(({ pair, counterpart }) => pair.before - counterpart.after),
        both.map(({ pair, counterpart }) => counterpart.before - pair.after),
      ],
    },
  ];
}

const mirrored = ({ id, pairs }: PairedPoints): Way => ({
  swap: { kind: 'mirrored', panels: [id] },
  asRead: [differencesOf(pairs)],
  otherwise: [mirroredDifferences(pairs)],
});

/** Of a panel whose points after were numbered from the other end. */
export function mirroredDifferences(asNamed: readonly PointPair[]): Differences {
  const pairs = asNamed.toSorted((one, other) => byPointName(one.point, other.point));
  const afters = pairs.map(({ after }) => after).toReversed();
  return pairs.map(({ before }, i) => before - at(afters, i));
}

/** As they are counted, else as they are spelt. */
export const byPointName = (one: string, other: string): number =>
  Number(one) - Number(other) || (one < other ? -1 : 1);

function gainOf(
  { swap, asRead, otherwise }: Way,
  told: readonly PairedPoints[],
  gaugeVariance: number,
): number {
  // Whichever end points are counted from, their mean is the same.
  const middleOf = swap.kind === 'panels' ? leastLost : mean;
  const others = told
    .filter(({ id }) => !swap.panels.some((one) => one === id))
    .map(mirrored)
    // Where the points of the whole car run the other way, none of it says as read how differences scatter.
    .map((way) => Math.min(varianceOf(way.asRead), varianceOf(way.otherwise)));
  const variance = Math.max(
    gaugeVariance,
    others.length === 0 ? 0 : median(others),
    squaresOf(otherwise, middleOf) / freedomOf(otherwise),
  );
  return (squaresOf(asRead, middleOf) - squaresOf(otherwise, middleOf)) / (2 * variance);
}

/** The likeliest loss, as film does not grow. */
const leastLost = (differences: Differences): number => Math.max(0, mean(differences));

const squaresOf = (
  parts: readonly Differences[],
  middleOf: (differences: Differences) => number,
): number =>
  parts.reduce((sum, part) => {
    const middle = middleOf(part);
    return sum + part.reduce((squares, one) => squares + (one - middle) ** 2, 0);
  }, 0);

const freedomOf = (parts: readonly Differences[]): number =>
  parts.reduce((dof, part) => dof + part.length - 1, 0);

const varianceOf = (parts: readonly Differences[]): number =>
  squaresOf(parts, mean) / freedomOf(parts);
