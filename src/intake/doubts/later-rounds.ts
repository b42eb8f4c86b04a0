/**
 * Points of a vehicle that are read again further down, by the readings alone: whatever sets the later part apart, or
 * nothing at all. A second round of the same paint differs from the first by chance only; what differs beyond it is
 * another visit, vehicle or person, and averaged in it would be wrong and quiet.
 *
 * Readings straight after each other at a point, or in one row, are repeats there and of one round. Of n ≥ 8
 * differences of a later round to the first, over two panels or more, the t interval of their mean d leaves out 0
 * once in 10,000 files by chance (both tails, shared among the later rounds): a shift, where |d| ≥ 1 µm as well. The
 * same is asked of each panel whose points have names, with the deviation s from the means of the panels, pooled over
 * them with n − k degrees of freedom, and the chance shared among the k panels. Where more than half the points are
 * further apart than the gauge can be off, they are no round of the same paint either.
 */
import { groupBy, type OneOrMore } from '../../base/group-by.ts';
import {
  differenceInterval,
  type MeanDifference,
  pairedDifference,
} from '../../base/stats/mean-difference.ts';
import { mean } from '../../base/stats/summary.ts';
import type { Reading } from '../../film/reading.ts';
import { furthestApart } from './points-read-apart.ts';
import { type How, meanOf, type Pair, panelKey, pointKey } from './read-again.ts';

export type LaterRound = {
  /** The readings of the first round that are read again, and those that do so, in the order of the file. */
  readonly before: readonly Reading[];
  readonly own: readonly Reading[];
  /** Points read again, or readings where points have no names. */
  readonly count: number;
  /** Later less earlier, on the mean. */
  readonly difference: number;
  readonly agrees: boolean;
  /** The panel that alone tells of a shift. */
  readonly panel?: string;
};

const FEWEST = 8;
const FEWEST_PANELS = 2;
const FALSE_ALARM = 1e-4;
const LEAST_SHIFT = 1;
const MOST_APART = 0.5;

/** The first round that differs from the one it repeats, else the first that repeats one. */
export function laterRound(readings: readonly Reading[], how: How): LaterRound | undefined {
  const isAnew = how.pointsAreNamed ? hasRepeats(readings) : hasPanelsAnew(readings);
  if (!isAnew) return undefined;
  const vehicles = groupBy(readings, ({ vehicle }) => vehicle).values();
  const rounds = [...vehicles].flatMap((own) => roundsOf(own, how));
  return rounds.find(({ agrees }) => !agrees) ?? rounds[0];
}

const hasRepeats = (readings: readonly Reading[]): boolean =>
  readings.some(({ repeat }) => repeat > 1);

/** Whether a panel is come to again after another. */
function hasPanelsAnew(readings: readonly Reading[]): boolean {
  const seen = new Set<string>();
  let above: Reading | undefined;
  for (const reading of readings) {
    const goesOn = reading.panel === above?.panel && reading.vehicle === above.vehicle;
    above = reading;
    if (goesOn) continue;
    const key = `${reading.vehicle ?? ''}\0${reading.panel}`;
    if (seen.has(key)) return true;
    seen.add(key);
  }
  return false;
}

type Visits = OneOrMore<OneOrMore<Reading>>;

function roundsOf(readings: readonly Reading[], how: How): readonly LaterRound[] {
  const keyOf = how.pointsAreNamed ? pointKey : panelKey;
  const visits = [...visitsOf(inTurn(readings), keyOf).values()];
  const later = visits.reduce((most, { length }) => Math.max(most, length), 1) - 1;
  return Array.from({ length: later }, (_, k) => k + 1).flatMap((k) => {
    const pairs = visits.flatMap((visit): readonly Pair[] => {
      const own = visit[k];
      return own === undefined ? [] : [{ other: visit[0], own }];
    });
    return roundOf(pairs, FALSE_ALARM / later, how) ?? [];
  });
}

/** Each point, or panel, with the readings of each time that it was come to. */
function visitsOf(
  readings: readonly Reading[],
  keyOf: (reading: Reading) => string,
): ReadonlyMap<string, Visits> {
  const visits = new Map<string, Visits>();
  let above: string | undefined;
  for (const reading of readings) {
    const key = keyOf(reading);
    const own = visits.get(key);
    const last = own?.at(-1);
    const goesOn = key === above || last?.at(-1)?.origin.line === reading.origin.line;
    above = key;
    if (own === undefined) visits.set(key, [[reading]]);
    else if (last !== undefined && goesOn) last.push(reading);
    else own.push([reading]);
  }
  return visits;
}

/**
 * By the clock, where all readings have one and it is all that their times differ by: two rounds may be sorted by
 * point. Else as they stand.
 */
function inTurn(readings: readonly Reading[]): readonly Reading[] {
  const rest = (readings[0]?.time ?? '').replace(CLOCK, '');
  const timed = readings.map((reading) => {
    const minute = minuteOf(reading.time ?? '');
    return minute === undefined || reading.time?.replace(CLOCK, '') !== rest
      ? undefined
      : { reading, minute };
  });
  return timed.includes(undefined)
    ? readings
    : timed
        .flatMap((one) => one ?? [])
        .sort((a, b) => a.minute - b.minute)
        .map(({ reading }) => reading);
}

const CLOCK = /(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)?(?:\s?([ap])\.?m\.?)?/iu;

function minuteOf(time: string): number | undefined {
  const [, hour, minute, second = '0', half] = CLOCK.exec(time) ?? [];
  if (hour === undefined) return undefined;
  const hours =
    half === undefined ? Number(hour) : (Number(hour) % 12) + (/p/iu.test(half) ? 12 : 0);
  return hours * 60 + Number(minute) + Number(second) / 60;
}

function roundOf(pairs: readonly Pair[], level: number, how: How): LaterRound | undefined {
  const paired = how.pointsAreNamed ? pairs.map(meansOf) : pairs.flatMap(oneByOne);
  const panels = new Set(pairs.map(({ own }) => own[0].panel));
  if (paired.length < FEWEST || panels.size < FEWEST_PANELS) return undefined;
  const of = pairedDifference(
    paired.map(([, later]) => later),
    paired.map(([first]) => first),
  );
  const apart = pairs.map(meansOf).filter(([first, later]) => {
    return Math.abs(later - first) > furthestApart((first + later) / 2, how.scatter);
  });
  const round = roundWith(pairs, of.difference, paired.length);
  if (isShift(of, level) || apart.length > MOST_APART * pairs.length) return round;
  const shifted = how.pointsAreNamed ? shiftedPanel(pairs, level) : undefined;
  return shifted ?? { ...round, agrees: true };
}

const roundWith = (pairs: readonly Pair[], difference: number, count: number): LaterRound => ({
  before: inFile(pairs.flatMap(({ other }) => other)),
  own: inFile(pairs.flatMap(({ own }) => own)),
  ...{ count, difference, agrees: false },
});

function isShift(of: MeanDifference, level: number): boolean {
  const [low, high] = differenceInterval(of, 1 - level);
  return Math.abs(of.difference) >= LEAST_SHIFT && (low > 0 || high < 0);
}

/** A panel that was worked between two rounds, or is another's, amid others that read as before. */
function shiftedPanel(pairs: readonly Pair[], level: number): LaterRound | undefined {
  const panels = [...groupBy(pairs, ({ own }) => own[0].panel)].map(([panel, of]) => {
    const differences = of.map(meansOf).map(([first, later]) => later - first);
    const difference = mean(differences);
    const squares = differences.reduce((sum, one) => sum + (one - difference) ** 2, 0);
    return { panel, of, difference, squares };
  });
  const dof = pairs.length - panels.length;
  if (dof < 1) return undefined;
  const variance = panels.reduce((sum, { squares }) => sum + squares, 0) / dof;
  const found = panels.find(({ of, difference }) => {
    const standardError = Math.sqrt(variance / of.length);
    return of.length > 1 && isShift({ difference, standardError, dof }, level / panels.length);
  });
  if (found === undefined) return undefined;
  const { panel, of, difference } = found;
  return { ...roundWith(of, difference, of.length), panel };
}

const meansOf = ({ other, own }: Pair): readonly [number, number] => [meanOf(other), meanOf(own)];

/** Two rounds of a panel whose points have no names are walked alike, as far as both go. */
const oneByOne = ({ other, own }: Pair): readonly (readonly [number, number])[] =>
  own.flatMap((later, k) => {
    const first = other[k];
    return first === undefined ? [] : [[first.thickness, later.thickness] as const];
  });

const inFile = (readings: readonly Reading[]): readonly Reading[] =>
  [...readings].sort((a, b) => a.origin.line - b.origin.line);
