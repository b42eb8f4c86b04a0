/**
 * Panels mixed up, by the likelihood ratio of two ways of naming them: 2·ln LR = Σ z²(as named) − Σ z²(otherwise).
 * An honest survey has an LR over K with a chance of at most 1/K (Markov), so K is the count of ways to mix up as many
 * over the chance of a false alarm.
 *
 * The left and the right of all panels are tried first, together: who mixes up the sides of the car does so on every
 * panel, each a little apart. Else names moved on by one in the order of the file (src/training/moved-names.ts), and the
 * rings of the likeliest naming (src/training/name-rings.ts), are told.
 */
import { at } from '../base/at.ts';
import { says } from '../base/sentence.ts';
import { sum } from '../base/sum.ts';
import type { PanelSurvey } from '../film/survey.ts';
import type { Panel } from '../film/template/template.ts';
import { faceReadings } from './graded-survey.ts';
import { type MovedNames, movedNames } from './moved-names.ts';
import { type Named, namedPanels, nameFits } from './name-fits.ts';
import { type Fits, movesOf, nameRings, type Ring, ringGain, ringsOf, SURE } from './name-rings.ts';
import type { Scoring } from './panel-score.ts';
import { type Reason, reason, together } from './reasons.ts';
import type { ReferencePanel } from './reference.ts';
import type { TrainingModel } from './training-model.ts';

export function swappedPanels(scoring: Scoring, model: TrainingModel): readonly Reason[] {
  const named = namedPanels(scoring);
  const names = [...named.map(({ reference }) => reference), ...unreadOf(named, scoring)];
  const fits = nameFits(named, names, scoring, model);
  const proof = 2 * Math.log(1 / model.slips.falseAlarm);
  const { unsatisfactory } = model.scores;
  const sides = sidesOf(named);
  const surveysOf = (ring: Ring): readonly PanelSurvey[] =>
    ring.flatMap((place) => named[place]?.read ?? []);
  if (
    areAllSwapped(sides, fits, proof) &&
    sides.every((pair) => fitsIn(pair, fits, unsatisfactory))
  )
    return [toldSides(sides.flatMap(surveysOf), 'are swapped, all over the car', scoring)];
  const isSides = ([one, other]: Ring): boolean =>
    sides.some(([left, right]) => left === one && right === other);
  const waysOf = (ring: Ring): number =>
    isSides(ring)
      ? sides.length
      : ringsOf(named.length, ring.length) - (ring.length === 2 ? sides.length : 0);
  const { rings: mixedUp, worth } = nameRings(fits, sides, unsatisfactory);
  const moved = movedNames(fits, unsatisfactory);
  const rings = ringsBeside(moved, mixedUp, worth)
    .map((ring) => ({ ring, ways: ring === moved?.ring ? moved.ways : waysOf(ring) }))
    .filter(({ ring, ways }) => ringGain(ring, fits) > proof + 2 * Math.log(ways))
    .map(({ ring }) => ring)
    .sort((one, other) => ringGain(other, fits) - ringGain(one, fits));
  return [
    ...rings.filter(isSides).map((ring) => {
      const panels = surveysOf(ring);
      const swapped = isByMarks(ring, fits) ? 'are swapped' : 'seem swapped';
      return toldSides(panels, `${swapped}, ${together(panels.map(nameOf))}`, scoring);
    }),
    ...rings
      .filter((ring) => !isSides(ring))
      .map((ring) =>
        toldPanels(
          unreadLast(ring, named.length).map((place) => at(names, place).panel),
          { ...scoring, byMarks: isByMarks(ring, fits), read: surveysOf(ring) },
        ),
      ),
  ];
}

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

const unreadOf = (named: readonly Named[], { reference }: Scoring): readonly ReferencePanel[] =>
  [...reference.panels.values()].filter((panel) => !named.some((one) => one.reference === panel));

/** A ring through a panel that the file has not, as the line of names that it is: what belongs under the first was not read. */
function unreadLast(ring: Ring, read: number): Ring {
  const end = ring.findIndex((place) => place >= read);
  return [...ring.slice(end + 1), ...ring.slice(0, end + 1)];
}

const nameOf = ({ panel }: PanelSurvey): string => panel.name;

/** Pairs of the left and the right, in the order of the file. */
const sidesOf = (named: readonly Named[]): readonly Ring[] =>
  named.flatMap(({ read: { panel } }, i) =>
    named.flatMap((other, j) => (j > i && panel.mirror === other.read.panel.id ? [[i, j]] : [])),
  );

function areAllSwapped(sides: readonly Ring[], fits: Fits, proof: number): boolean {
  const gains = sides.map((pair) => ringGain(pair, fits));
  const most = gains.filter((gain) => gain > 0).length > sides.length / 2;
  return sides.length > 1 && sum(gains) > proof && most;
}

const fitsIn = (ring: Ring, fits: Fits, unsatisfactory: number): boolean =>
  movesOf(ring, fits).every(({ largest }) => largest < unsatisfactory);

/** By its mean a panel may fit more names than one: which of them were mixed up is less sure then. */
const isByMarks = (ring: Ring, fits: Fits): boolean =>
  movesOf(ring, fits).every(({ atMarks }) => atMarks);

const MEND = 'write the name of a panel while you stand before it';

type Told = Pick<Scoring, 'trainee'> & {
  readonly byMarks: boolean;
  /** Of the panels, those that the file has. */
  readonly read: readonly PanelSurvey[];
};

function toldPanels(panels: readonly Panel[], { trainee, byMarks, read }: Told): Reason {
  const [are, readings] = byMarks
    ? ['are', 'the readings agree']
    : ['seem', 'the means of their points agree'];
  const names = panels.map(({ name }) => name);
  const moved = read.map((_, i) => at(names, i));
  const passedOver = moved.length < names.length ? `; the ${names[0]} itself was passed over` : '';
  const said =
    names.length === 2
      ? says`${together(names)} ${are} swapped: with their names changed ${readings} with the reference; ${MEND}`
      : says`the names of ${together(moved)} ${are} moved on by one: ${movedText(moved, names)}${passedOver}; ${MEND}`;
  return reason('panels-swapped', said, {
    panels: read.map(({ panel }) => panel.id),
    at: faceReadings(trainee, panels[0]?.id)[0],
  });
}

const MOST_MOVES = 4;

/** Of many the first: the others go on so. */
function movedText(moved: readonly string[], names: readonly string[]): string {
  const moves = moved.map((name, i) => {
    const of = at(names, (i + 1) % names.length);
    return i === 0
      ? `what stands under ${name} agrees with the reference of ${of}`
      : `what stands under ${name} with that of ${of}`;
  });
  return moves.length > MOST_MOVES
    ? `${moves.slice(0, MOST_MOVES - 1).join(', ')}, and so on`
    : together(moves);
}

const toldSides = (
  panels: readonly PanelSurvey[],
  swappedWhere: string,
  { trainee }: Pick<Scoring, 'trainee'>,
): Reason =>
  reason(
    'sides-swapped',
    says`left and right ${swappedWhere}: with the sides changed the readings agree with the reference; sides are as seen from the driver’s seat`,
    {
      panels: panels.map(({ panel }) => panel.id),
      at: faceReadings(trainee, panels[0]?.panel.id)[0],
    },
  );
