/**
 * Whether a later part of a file reads the panels of an earlier one again, and whether it agrees with it.
 *
 * Points are compared where the file names them, else the means of panels. Of n shared ones that differ by d on the
 * mean, z = |d| / √(Σ v) · n with v = 2·s² for a point, s the repeatability, and v = s²·(1/m + 1/k) for the means of m
 * and k readings, s their own spread over panels and at least the repeatability. A second round of the same paint
 * has z over 2 once in twenty times.
 */
import { groupBy, type OneOrMore } from '../../base/group-by.ts';
import { mean } from '../../base/stats/summary.ts';
import type { Reading } from '../../film/reading.ts';
import { furthestApart, type Scatter } from './points-read-apart.ts';

export type ReadAgain = {
  /** Points, or panels where points have no names. */
  readonly shared: number;
  /** Later less earlier, on the mean. */
  readonly difference: number;
  readonly agree: boolean;
  /** Whether the part begins with the panel that the one above ended with, and no point has a name. */
  readonly goesOn: boolean;
};

export type How = {
  readonly pointsAreNamed: boolean;
  /** Then what is read again is said, and nothing is asked. */
  readonly repeatsAreNumbered: boolean;
  readonly scatter: Scatter;
};

const LEAST_SHARE = 0.5;
const MOST_DEVIATIONS = 2;

/** Takes part after part, and says of each what of it was read before; nothing where that is less than half. */
export function readingParts(how: How): (part: readonly Reading[]) => ReadAgain | undefined {
  if (how.repeatsAreNumbered) return () => undefined;
  const keyOf = how.pointsAreNamed ? pointKey : panelKey;
  const before = new Map<string, OneOrMore<Reading>>();
  let last: Reading | undefined;
  return (part) => {
    const own = groupBy(part, keyOf);
    // A list that goes on amid a panel reads it on.
    const key = part[0] === undefined || how.pointsAreNamed ? undefined : panelKey(part[0]);
    const begun = last !== undefined && key === panelKey(last) ? key : undefined;
    const pairs = [...own].flatMap(([of, readings]): readonly Pair[] => {
      const other = before.get(of);
      const goesOn = of === begun && own.size > 1;
      return other === undefined || goesOn ? [] : [{ other: [...other], own: readings }];
    });
    for (const [key, readings] of own) {
      const other = before.get(key);
      if (other === undefined) before.set(key, [...readings]);
      else other.push(...readings);
    }
    last = part.at(-1) ?? last;
    const again = told(pairs, own.size, how);
    return again === undefined ? undefined : { ...again, goesOn: begun !== undefined };
  };
}

function told(pairs: readonly Pair[], all: number, how: How) {
  const [pair] = pairs;
  if (pair === undefined || pairs.length < LEAST_SHARE * all) return undefined;
  const differences = pairs.map(({ other, own }) => meanOf(own) - meanOf(other));
  return {
    shared: pairs.length,
    difference: mean(differences),
    agree: doAgree(pairs, differences, how),
  };
}

export type Pair = { readonly other: OneOrMore<Reading>; readonly own: OneOrMore<Reading> };

function doAgree(
  pairs: readonly Pair[],
  differences: readonly number[],
  { pointsAreNamed, scatter }: How,
): boolean {
  const apart = pairs.filter(({ other, own }, i) => {
    const film = (meanOf(other) + meanOf(own)) / 2;
    return pointsAreNamed && Math.abs(differences[i] ?? 0) > furthestApart(film, scatter);
  });
  if (apart.length > LEAST_SHARE * pairs.length) return false;
  const least = scatter.repeatability ** 2;
  const variance = pointsAreNamed ? least : Math.max(least, spreadOverPanels(pairs));
  const sum = pairs.reduce(
    (all, { other, own }) => all + variance * (1 / other.length + 1 / own.length),
    0,
  );
  const off = Math.abs(mean(differences)) * pairs.length;
  return off <= MOST_DEVIATIONS * Math.sqrt(sum);
}

/** Pooled over all panels of both parts; 0 where no panel has two readings. */
function spreadOverPanels(pairs: readonly Pair[]): number {
  const sets = pairs.flatMap(({ other, own }) => [other, own]);
  const dof = sets.reduce((sum, { length }) => sum + length - 1, 0);
  const squares = sets.flatMap((set) => {
    const middle = meanOf(set);
    return set.map(({ thickness }) => (thickness - middle) ** 2);
  });
  return dof === 0 ? 0 : squares.reduce((sum, one) => sum + one, 0) / dof;
}

export const meanOf = (readings: OneOrMore<Reading>): number =>
  mean(readings.map(({ thickness }) => thickness));

/** Those of two operators are two surveys. */
export const panelKey = ({ vehicle, panel, layer, place, operator = '' }: Reading): string =>
  [vehicle ?? '', panel, layer, place, operator].join('\0');

export const pointKey = (reading: Reading): string => `${panelKey(reading)}\0${reading.point}`;
