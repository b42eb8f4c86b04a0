/**
 * Whether a later part of a file reads the panels of an earlier one again, and whether it agrees with it.
 *
 * Points are compared where the file names them, else the readings of a panel one by one, as they were walked. They
 * agree unless they differ on the mean (`same-round.ts`), or more than half the points are further apart than the
 * gauge can be off.
 */
import { groupBy, type OneOrMore } from '../../base/group-by.ts';
import { mean } from '../../base/stats/summary.ts';
import type { Reading } from '../../film/reading.ts';
import { roundDifference, roundsDiffer } from '../../film/same-round.ts';
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
const MOST_APART = 0.5;

/**
 * Takes part after part, and says of each what of it was read before; nothing where that is less than half. `among` is
 * how many may be told of.
 */
export function readingParts(
  how: How,
  among = 1,
): (part: readonly Reading[]) => ReadAgain | undefined {
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
    const again = told(pairs, own.size, how, among);
    return again === undefined ? undefined : { ...again, goesOn: begun !== undefined };
  };
}

function told(pairs: readonly Pair[], all: number, how: How, among: number) {
  if (pairs.length === 0 || pairs.length < LEAST_SHARE * all) return undefined;
  return { shared: pairs.length, ...agreement(pairs, how, among) };
}

export type Pair = { readonly other: OneOrMore<Reading>; readonly own: OneOrMore<Reading> };

/** Of at least one pair. */
export function agreement(
  pairs: readonly Pair[],
  how: How,
  among: number,
): Pick<ReadAgain, 'difference' | 'agree'> {
  const of = roundDifference(differencesOf(pairs, how), ruleOf(how));
  const agree = !roundsDiffer(of, how.scatter, among) && !areApart(pairs, how);
  return { difference: of.difference, agree };
}

export const ruleOf = ({ scatter, pointsAreNamed }: How) => ({ ...scatter, pointsAreNamed });

/** Two rounds of a panel whose points have no names are walked alike, as far as both go. */
export const differencesOf = (
  pairs: readonly Pair[],
  { pointsAreNamed }: Pick<How, 'pointsAreNamed'>,
): readonly number[] =>
  pairs.flatMap(({ other, own }) =>
    pointsAreNamed
      ? [meanOf(own) - meanOf(other)]
      : own.flatMap(({ thickness }, k) => {
          const first = other[k];
          return first === undefined ? [] : [thickness - first.thickness];
        }),
  );

function areApart(pairs: readonly Pair[], { pointsAreNamed, scatter }: How): boolean {
  const apart = pairs.filter(({ other, own }) => {
    const [first, later] = [meanOf(other), meanOf(own)];
    return Math.abs(later - first) > furthestApart((first + later) / 2, scatter);
  });
  return pointsAreNamed && apart.length > MOST_APART * pairs.length;
}

export const meanOf = (readings: OneOrMore<Reading>): number =>
  mean(readings.map(({ thickness }) => thickness));

/** Those of two operators are two surveys. */
export const panelKey = ({ vehicle, panel, layer, place, operator = '' }: Reading): string =>
  [vehicle ?? '', panel, layer, place, operator].join('\0');

export const pointKey = (reading: Reading): string => `${panelKey(reading)}\0${reading.point}`;
