/**
 * Panels mixed up, by the likelihood ratio of two ways of naming them: 2·ln LR = Σ z²(as named) − Σ z²(otherwise).
 * An honest survey has an LR over K with a chance of at most 1/K (Markov), so K is the count of ways to mix up as many
 * over the chance of a false alarm.
 *
 * The left and the right of all panels are tried first, together: who mixes up the sides of the car does so on every
 * panel, each a little apart. Else names moved on by one in the order of the file (src/training/moved-names.ts), and the
 * rings of the likeliest naming (src/training/name-rings.ts), are told.
 *
 * Of the others, two that do not fit their names as closely as the rest of the car does are told as swapped or numbered in
 * another order (src/training/swapped-by-spread.ts).
 */
import { at } from '../base/at.ts';
import { sum } from '../base/sum.ts';
import { type MovedNames, movedNames } from './moved-names.ts';
import { type Named, namedPanels, nameFits } from './name-fits.ts';
import {
  type Fits,
  fitsIn,
  mayBelong,
  movesOf,
  nameRings,
  type Ring,
  ringGain,
  ringsOf,
  SURE,
} from './name-rings.ts';
import { type KeyedScoring, NOTHING_KEYED } from './panel-score.ts';
import type { Reason } from './reasons.ts';
import type { ReferencePanel } from './reference.ts';
import {
  allSidesReason,
  eitherReason,
  type MixedUp,
  panelsReason,
  sidesReason,
} from './swap-reasons.ts';
import { swappedBySpread } from './swapped-by-spread.ts';
import type { TrainingModel } from './training-model.ts';

export function swappedPanels(scoring: KeyedScoring, model: TrainingModel): readonly Reason[] {
  const { trainee } = scoring;
  const named = namedPanels(scoring);
  const names = [...named.map(({ reference }) => reference), ...unreadOf(named, scoring)];
  const fits = nameFits(named, names, scoring, model);
  const sides = sidesOf(named);
  const readOf = (ring: Ring) => ring.flatMap((place) => named[place]?.read ?? []);
  if (areAllSwapped(sides, fits, model)) return [allSidesReason(readOf(sides.flat()), trainee)];
  const namesOf = (ring: Ring) => ring.map((place) => at(names, place).panel);
  const mixedUp = (ring: Ring): MixedUp => {
    const byMarks = isByMarks(ring, fits);
    return {
      names: namesOf(unreadLast(ring, named.length)),
      read: readOf(ring),
      byMarks,
      asWell: byMarks ? [] : namesOf(mayBelong(ring, fits, model.scores.unsatisfactory)),
    };
  };
  const rings = provedRings(fits, sides, model);
  return [
    ...rings
      .filter((ring) => isSides(ring, sides))
      .map((ring) => sidesReason(mixedUp(ring), trainee)),
    ...rings
      .filter((ring) => !isSides(ring, sides))
      .map((ring) => panelsReason(mixedUp(ring), trainee)),
    ...swappedBySpread(
      fits,
      { told: new Set(rings.flat()), sides },
      { proof: proofOf(model), unsatisfactory: model.scores.unsatisfactory },
    ).map((pair) => eitherReason(readOf(pair), trainee)),
  ];
}

const isSides = ([one, other]: Ring, sides: readonly Ring[]): boolean =>
  sides.some(([left, right]) => left === one && right === other);

/** Those that are likelier than the names as they were written by what a false alarm allows, the surest first. */
function provedRings(fits: Fits, sides: readonly Ring[], model: TrainingModel): readonly Ring[] {
  const { unsatisfactory } = model.scores;
  const waysOf = (ring: Ring): number =>
    isSides(ring, sides) ? sides.length : ringsOf(fits.length, ring.length);
  const { rings, worth } = nameRings(fits, sides, unsatisfactory);
  const moved = movedNames(fits, unsatisfactory);
  return ringsBeside(moved, rings, worth)
    .map((ring) => ({ ring, ways: ring === moved?.ring ? moved.ways : waysOf(ring) }))
    .filter(({ ring, ways }) => ringGain(ring, fits) > proofOf(model) + 2 * Math.log(ways))
    .map(({ ring }) => ring)
    .sort((one, other) => ringGain(other, fits) - ringGain(one, fits));
}

const proofOf = ({ slips }: TrainingModel): number => 2 * Math.log(1 / slips.falseAlarm);

/** Where neither way is sure against the other, no panel of both is told, unless they are one ring. */
function ringsBeside(
  moved: MovedNames | null,
  mixedUp: readonly Ring[],
  worth: number,
): readonly Ring[] {
  if (moved === null || worth - moved.worth > SURE) return mixedUp;
  const shared = (ring: Ring): number => ring.filter((place) => moved.ring.includes(place)).length;
  const isOne = mixedUp.some((ring) => shared(ring) === moved.ring.length);
  const isTold = isOne || moved.worth - worth > SURE;
  return [...(isTold ? [moved.ring] : []), ...mixedUp.filter((ring) => shared(ring) === 0)];
}

/** Panels that the file has not. */
const unreadOf = (
  named: readonly Named[],
  { reference, keyed = NOTHING_KEYED }: KeyedScoring,
): readonly ReferencePanel[] =>
  [...reference.panels.values()].filter(
    (one) => !keyed.has(one.panel.id) && !named.some((other) => other.reference === one),
  );

/** A ring through a panel that the file has not, as the line of names that it is: what belongs under the first was not read. */
function unreadLast(ring: Ring, read: number): Ring {
  const end = ring.findIndex((place) => place >= read);
  return [...ring.slice(end + 1), ...ring.slice(0, end + 1)];
}

/** Pairs of the left and the right, in the order of the file. */
const sidesOf = (named: readonly Named[]): readonly Ring[] =>
  named.flatMap(({ read: { panel } }, i) =>
    named.flatMap((other, j) => (j > i && panel.mirror === other.read.panel.id ? [[i, j]] : [])),
  );

/** One pair that is swapped says nothing of the others: without the surest of them these must be likelier swapped as well. */
function areAllSwapped(sides: readonly Ring[], fits: Fits, model: TrainingModel): boolean {
  const gains = sides.map((pair) => ringGain(pair, fits));
  const most = gains.filter((gain) => gain > 0).length > sides.length / 2;
  const others = sum(gains) - Math.max(...gains) > SURE;
  const fitAll = sides.every((pair) => fitsIn(pair, fits, model.scores.unsatisfactory));
  return sum(gains) > proofOf(model) && most && others && fitAll;
}

/** By its mean a panel may fit more names than one: which of them were mixed up is less sure then. */
const isByMarks = (ring: Ring, fits: Fits): boolean =>
  movesOf(ring, fits).every(({ atMarks }) => atMarks);
