/**
 * Groups of numbers of which some are statistics of the others, in the same places of every group; and how likely
 * readings would be so by chance.
 *
 * A reading falls on a figure of the others with the probability of one unit of its display under a normal
 * distribution as wide as the others are spread. The chances of all groups multiply; then each figure that a number
 * may be and each set of places that is tried counts as a draw of its own.
 */
import { once } from '../../base/kept.ts';
import { mean } from '../../base/stats/summary.ts';
import { sum } from '../../base/sum.ts';
import { type Figure, figureOf } from './group-figures.ts';
import { type ColumnNumber, PEAK, spreadOf } from './predictable-column.ts';

export type GroupCell = ColumnNumber & {
  readonly isPointless: boolean;
  /** Whether a rule or a gap parts it from the number before. */
  readonly isApart: boolean;
};

export type FoundStatistics<Cell> = {
  readonly chance: number;
  /** What the numbers are, place by place. */
  readonly figures: readonly Figure[];
  readonly first: Cell;
  /** Groups that have them. */
  readonly count: number;
};

/** Where in a group statistics may stand; undefined in a group that has none. */
type Places = {
  readonly of: (group: readonly GroupCell[]) => readonly number[] | undefined;
  /** How often such places come by chance, and how many of their kind are tried. */
  readonly weight: number;
  readonly figures: readonly Figure[];
  /** In how small a group they say something. */
  readonly fewest: number;
  /** Whether they say nothing where one group has none of them. */
  readonly inAll?: true;
};

const anyFigure: readonly Figure[] = [
  ...(['mean', 'median', 'least', 'most', 'deviation', 'range', 'count', 'sum'] as const),
];

const mostPlaces = 5;
const fewestOthers = 2;

const range = (count: number): readonly number[] => Array.from({ length: count }, (_, k) => k);

/** So many at the start and so many at the end. */
const atEnds = (start: number, end: number): Places => ({
  of: ({ length }) =>
    length < start + end + fewestOthers
      ? undefined
      : [...range(start), ...range(end).map((k) => length - end + k)],
  weight: start + end === 1 ? 2 : 40,
  figures: anyFigure,
  fewest: fewestOthers + 1,
});

const within = (place: number): Places => ({
  of: ({ length }) => (place < length - 1 && length > fewestOthers ? [place] : undefined),
  weight: 40,
  figures: anyFigure,
  fewest: fewestOthers + 1,
});

/** A row that has no point beside others that have one, and is their mean, is seldom a reading. */
const pointless: Places = {
  of: (group) => {
    const own = [...group.keys()].filter((k) => group[k]?.isPointless === true);
    return own.length > 0 ? own.slice(0, 1) : undefined;
  },
  weight: 0.001,
  figures: ['mean'],
  fewest: 1,
};

/** What one gap parts from the others, on every panel: a sheet sets its figures so, and hardly anybody readings. */
const apart = (side: 'start' | 'end'): Places => ({
  of: (group) => {
    const [gap = 0, ...more] = [...group.keys()].filter((k) => k > 0 && group[k]?.isApart === true);
    const own = side === 'start' ? range(gap) : range(group.length - gap).map((k) => gap + k);
    const isOne = gap > 0 && more.length === 0 && own.length <= mostPlaces;
    return isOne && group.length - own.length >= fewestOthers ? own : undefined;
  },
  weight: 1e-4,
  figures: anyFigure,
  fewest: fewestOthers + 1,
  inAll: true,
});

const allPlaces = once((): readonly Places[] => [
  pointless,
  apart('start'),
  apart('end'),
  ...range(mostPlaces + 1).flatMap((start) =>
    range(mostPlaces + 1 - start).flatMap((end) => (start + end === 0 ? [] : [atEnds(start, end)])),
  ),
  ...range(8).slice(1).map(within),
]);

/** In the groups that are large enough; of several answers the likeliest is the first. */
export function statisticsAmong<Cell extends GroupCell>(
  groups: readonly (readonly Cell[])[],
): readonly FoundStatistics<Cell>[] {
  // Of numbers with as many digits all, loose figures are no others than exact ones.
  const mayBeLoose = new Set(groups.flat().map(({ step }) => step)).size > 1;
  return allPlaces().flatMap((places) => {
    const large = groups.filter(({ length }) => length >= places.fewest);
    const exact = inPlaces(large, places, false);
    return exact ?? (mayBeLoose ? inPlaces(large, places, true) : undefined) ?? [];
  });
}

/** A row without a point that is the mean of all others, whichever panel they are of. */
export const meanOfAll = <Cell extends GroupCell>(
  cells: readonly Cell[],
): FoundStatistics<Cell> | undefined => inPlaces([cells], pointless, false);

type Divided<Cell> = { readonly own: readonly Cell[]; readonly others: readonly Cell[] };

/** `loose`: the figures were computed of readings that had more digits than are written. */
function inPlaces<Cell extends GroupCell>(
  groups: readonly (readonly Cell[])[],
  { of, weight, figures: asked, inAll }: Places,
  loose: boolean,
): FoundStatistics<Cell> | undefined {
  const divided: Divided<Cell>[] = [];
  let alive: readonly (readonly Figure[])[] | undefined;
  for (const group of groups) {
    const at = of(group);
    if (at === undefined && inAll === true) return undefined;
    if (at === undefined) continue;
    const own = at.flatMap((k) => group[k] ?? []);
    const others = group.filter((_, k) => !at.includes(k));
    if (others.length === 0) return undefined;
    const values = others.map(({ value }) => value);
    const possible: (readonly Figure[])[] = [];
    for (const [k, cell] of own.entries()) {
      const tolerance = toleranceOf(cell, others, loose);
      const fitting = (alive?.[k] ?? asked).filter((figure) =>
        figureOf(figure, values).some((one) => Math.abs(one - cell.value) <= tolerance),
      );
      // Most places end at their first number.
      if (fitting.length === 0) return undefined;
      possible.push(fitting);
    }
    alive = possible;
    divided.push({ own, others });
  }
  const [first] = divided[0]?.own ?? [];
  if (first === undefined || alive === undefined) return undefined;
  const figures = alive.flatMap((one) => one[0] ?? []);
  const tries = figures.reduce((product, figure) => product * (figure === 'mean' ? 2 : 30), 1);
  const chance = chanceOf(divided, loose) * weight * tries;
  return { chance, figures, first, count: divided.length };
}

function toleranceOf(cell: ColumnNumber, others: readonly ColumnNumber[], loose: boolean): number {
  const written = Math.min(...others.map(({ step }) => step));
  return (cell.step + (loose && cell.step < written ? written : 0)) / 2 + 1e-9;
}

function chanceOf(divided: readonly Divided<ColumnNumber>[], loose: boolean): number {
  const all = divided.flatMap(({ others }) => others);
  const finest = Math.min(...all.map(({ step }) => step));
  const spread = Math.max(spreadWithin(divided), finest / 4);
  let chance = 1;
  for (const { own, others } of divided) {
    const values = others.map(({ value }) => value);
    const middle = mean(values);
    // On a panel that reads one figure all over, its figure once more is no wonder.
    const spreadHere = Math.max(Math.min(spread, spreadOf(values)), finest / 4);
    for (const cell of own) {
      const window = 2 * toleranceOf(cell, others, loose) + cell.step;
      const far = ((cell.value - middle) / Math.max(spread, spreadOf(values), finest)) ** 2;
      // A gauge shows all readings with as many digits; what is far from all others may be a slip of its own.
      const digits = cell.step < finest ? 0.1 : 1;
      const here = Math.min(1, (PEAK * window) / spreadHere);
      chance *= Math.max(1e-4, (here * digits) / (1 + far));
    }
  }
  return chance;
}

/** How readings of one group are spread, apart from what the places of all groups share. */
function spreadWithin(divided: readonly Divided<ColumnNumber>[]): number {
  const groups = divided.map(({ others }) => others.map(({ value }) => value));
  const count = Math.min(...groups.map(({ length }) => length));
  const residuals = groups.map((group) => {
    const middle = mean(group);
    return group.map((value) => value - middle);
  });
  const isEven = groups.every(({ length }) => length === count) && groups.length > 1;
  const places = range(count).map((k) =>
    isEven ? mean(residuals.map((group) => group[k] ?? 0)) : 0,
  );
  const squares = residuals.flatMap((group) =>
    group.map((residual, k) => (residual - (places[k] ?? 0)) ** 2),
  );
  const dof = squares.length - groups.length - (isEven ? count - 1 : 0);
  return Math.sqrt(sum(squares) / Math.max(1, dof));
}
