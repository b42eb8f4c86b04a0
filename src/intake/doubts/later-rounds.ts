/**
 * Points of a vehicle that are read again further down, by the readings alone: whatever sets the later part apart, or
 * nothing at all. A second round of the same paint differs from the first by chance only; what differs beyond it is
 * another visit, vehicle or person, and averaged in it would be wrong and quiet.
 *
 * Readings straight after each other at a point, or in one row, are repeats there and of one round. From as many
 * differences on as the defaults say, over two panels or more, a later round is held to the first as any part of a
 * file is (`read-again.ts`). The same is asked of each panel whose points have names, by the scatter about the means of
 * the panels. All these questions share one chance of a false alarm: half of it is for panels, and later rounds and
 * panels have equal parts.
 */
import { groupBy, type OneOrMore } from '../../base/group-by.ts';
import { mean } from '../../base/stats/summary.ts';
import type { Reading } from '../../film/reading.ts';
import { moderatedDifference, roundsDiffer } from '../../film/same-round.ts';
import { clockIn } from '../cells/clock.ts';
import {
  agreement,
  differencesOf,
  type How,
  type Pair,
  panelKey,
  pointKey,
  ruleOf,
} from './read-again.ts';

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

const FEWEST_PANELS = 2;

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
    return roundOf(pairs, 2 * later, how) ?? [];
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
  const clocks = readings.map(({ time }) => clockIn(time ?? ''));
  const [first] = clocks;
  const timed = readings.flatMap((reading, k) => {
    const clock = clocks[k];
    return clock?.before === first?.before && clock?.after === first?.after
      ? [{ reading, minutes: clock?.minutes ?? 0 }]
      : [];
  });
  return first === undefined || timed.length < readings.length
    ? readings
    : timed.sort((a, b) => a.minutes - b.minutes).map(({ reading }) => reading);
}

/** `among` as many questions, of all panels together and of each. */
function roundOf(pairs: readonly Pair[], among: number, how: How): LaterRound | undefined {
  const { length: count } = differencesOf(pairs, how);
  const panels = new Set(pairs.map(({ own }) => own[0].panel));
  if (count < how.scatter.rounds.fewest || panels.size < FEWEST_PANELS) return undefined;
  const { difference, agree } = agreement(pairs, how, among);
  const round = roundWith(pairs, difference, count);
  if (!agree) return round;
  const shifted = how.pointsAreNamed ? shiftedPanel(pairs, among, how) : undefined;
  return shifted ?? { ...round, agrees: true };
}

const roundWith = (pairs: readonly Pair[], difference: number, count: number): LaterRound => ({
  before: inFile(pairs.flatMap(({ other }) => other)),
  own: inFile(pairs.flatMap(({ own }) => own)),
  ...{ count, difference, agrees: false },
});

/** A panel that was worked between two rounds, or is another's, amid others that read as before. */
function shiftedPanel(pairs: readonly Pair[], among: number, how: How): LaterRound | undefined {
  const panels = [...groupBy(pairs, ({ own }) => own[0].panel)].map(([panel, of]) => {
    const differences = differencesOf(of, how);
    const difference = mean(differences);
    const squares = differences.reduce((sum, one) => sum + (one - difference) ** 2, 0);
    return { panel, of, difference, squares };
  });
  const within = {
    squares: panels.reduce((sum, { squares }) => sum + squares, 0),
    dof: pairs.length - panels.length,
  };
  const found = panels.find(({ of, difference }) => {
    const moderated = moderatedDifference({ difference, count: of.length }, within, ruleOf(how));
    return of.length > 1 && roundsDiffer(moderated, how.scatter, among * panels.length);
  });
  if (found === undefined) return undefined;
  const { panel, of, difference } = found;
  return { ...roundWith(of, difference, of.length), panel };
}

const inFile = (readings: readonly Reading[]): readonly Reading[] =>
  [...readings].sort((a, b) => a.origin.line - b.origin.line);
