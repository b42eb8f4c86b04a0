/**
 * Which test spots of a panel, all of one visit, are held to be one place. Two that their file names apart are two. Else
 * the film tells: a trial where another ended begins with what that one left, or a little under it, as a step that refines
 * haze gets no row. Film that surely begins higher was not worked by the other; film far lower is another place’s. Trials
 * that nothing tells apart may be one place, and then all that they took is gone there.
 */
import { valueAt } from '../../base/at.ts';
import { inWords } from '../../base/in-words.ts';
import { type Remark, remark } from '../../base/remark.ts';
import { LEAST_TENTH } from '../../base/rounding.ts';
import { says, um } from '../../base/sentence.ts';
import { differenceInterval, type MeanDifference } from '../../base/stats/mean-difference.ts';
import { mean } from '../../base/stats/summary.ts';
import { sum } from '../../base/sum.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { moderatedDifference, type RoundRule, roundDifference } from '../../film/same-round.ts';
import type { SpotMark } from './spot-trial.ts';

type Taken = { readonly mean: Micrometres; readonly sd: Micrometres };

export type TriedPlace = {
  readonly spot: string;
  /** As its file calls the place; empty where it does not. */
  readonly place: string;
  readonly sets: number;
  /** None where it was judged by eye alone, or where all that was read rose. */
  readonly films: readonly SpotMark[];
  readonly taken: Taken;
};

export type HeldPlace = { readonly tries: readonly TriedPlace[]; readonly taken: Taken };

/** Whether more is held to be gone there than by one of them alone, though no name says that they are one place. */
export const isHeldAsOne = ({ tries, taken }: HeldPlace): boolean =>
  tries.some(({ place }) => place === '') &&
  taken.mean - Math.max(...tries.map((one) => one.taken.mean)) >= LEAST_TENTH;

/** What is said of a place that is held to be one. */
export const heldAsOneRemark = (panel: string, { tries, taken }: HeldPlace): Remark =>
  remark(
    'spots-one-place',
    says`${panel}: test spots ${inWords(tries.map(({ spot }) => spot))} are held to be one place, as nothing tells them apart: ${um(taken.mean)} gone there in all. If each was a place of its own, say where it was (column place)`,
    taken.mean,
  );

export type PlaceRule = Pick<RoundRule, 'repeatability' | 'rounds'>;

export function heldPlaces(tries: readonly TriedPlace[], rule: PlaceRule): readonly HeldPlace[] {
  const anywhere = tries.filter(({ place, films }) => place === '' && films.length === 0);
  const known = tries.filter((one) => !anywhere.includes(one));
  const places = known.reduce<readonly (readonly TriedPlace[])[]>((held, one) => {
    const joined = held.filter((place) => place.some((other) => mayBeOne(one, other, rule)));
    const apart = held.filter((place) => !joined.includes(place));
    return [...apart, [...joined.flat(), one]];
  }, []);
  if (places.length === 0 && anywhere.length > 0) return [placeOf([], anywhere)];
  return places.flatMap(asNamed).map((place) => placeOf(place, anywhere));
}

/** Where one without a name may be any of several that names apart, it counts with each. */
function asNamed(place: readonly TriedPlace[]): readonly (readonly TriedPlace[])[] {
  const names = new Set(place.map((one) => folded(one.place)).filter((name) => name !== ''));
  if (names.size < 2) return [place];
  return [...names].map((name) =>
    place.filter((one) => one.place === '' || folded(one.place) === name),
  );
}

function placeOf(known: readonly TriedPlace[], anywhere: readonly TriedPlace[]): HeldPlace {
  const unread = [...known, ...anywhere].filter(({ films }) => films.length === 0);
  const read = known.filter(({ films }) => films.length > 0);
  // What was not read is foretold from one paint: its doubts are one doubt.
  const doubts = [...read.map(({ taken }) => taken.sd), sum(unread.map(({ taken }) => taken.sd))];
  return {
    tries: [...known, ...anywhere],
    taken: {
      mean: micrometres(goneBy([...known, ...anywhere])),
      sd: micrometres(Math.hypot(...doubts)),
    },
  };
}

/** What a trial seems to have put on hides nothing of what the others took. */
const goneBy = (tries: readonly TriedPlace[]): number =>
  sum(tries.map(({ taken }) => Math.max(0, taken.mean)));

function mayBeOne(one: TriedPlace, other: TriedPlace, rule: PlaceRule): boolean {
  if (one.place !== '' && other.place !== '') return !areNamedApart(one.place, other.place);
  if (one.films.length === 0 || other.films.length === 0) return true;
  return mayGoOn(one, other, rule) || mayGoOn(other, one, rule);
}

/** Whether both are named, and otherwise: two places. */
export const areNamedApart = (one = '', other = ''): boolean =>
  one !== '' && other !== '' && folded(one) !== folded(other);

const folded = (place: string): string => place.normalize('NFC').trim().toLowerCase();

/** Whether the later may have begun where the earlier ended, or where a refining step after it did. */
function mayGoOn(earlier: TriedPlace, later: TriedPlace, rule: PlaceRule): boolean {
  const [low, high] = differenceInterval(
    riseOf(earlier.films, later.films, rule),
    1 - rule.rounds.falseAlarm,
  );
  return low <= 0 && high >= -Math.max(0, earlier.taken.mean) / earlier.sets;
}

/** What the later marks read before over what the earlier read after: mark by mark where they have the same names. */
function riseOf(
  earlier: readonly SpotMark[],
  later: readonly SpotMark[],
  rule: PlaceRule,
): MeanDifference {
  const ended = new Map(earlier.map(({ name, after }) => [name, after]));
  if (later.length === earlier.length && later.every(({ name }) => ended.has(name))) {
    const rises = later.map(({ name, before }) => before - valueAt(ended, name));
    return roundDifference(rises, { ...rule, pointsAreNamed: true });
  }
  const [before, after] = [later.map((mark) => mark.before), earlier.map((mark) => mark.after)];
  const squares = 2 * (squaresOf(before) + squaresOf(after));
  return moderatedDifference(
    {
      difference: mean(before) - mean(after),
      count: 2 / (1 / before.length + 1 / after.length),
    },
    { squares, dof: before.length + after.length - 2 },
    { ...rule, pointsAreNamed: false },
  );
}

const squaresOf = (values: readonly number[]): number => {
  const middle = mean(values);
  return sum(values.map((value) => (value - middle) ** 2));
};
