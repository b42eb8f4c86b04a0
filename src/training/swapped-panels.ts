/**
 * Panels mixed up, by the likelihood ratio of two ways of naming them: 2·ln LR = Σ z²(as named) − Σ z²(otherwise).
 * An honest survey has an LR over K with a chance of at most 1/K (Markov), so K is the count of ways to mix up as many
 * over the chance of a false alarm.
 *
 * The left and the right of all panels are tried first, together: who mixes up the sides of the car does so on every
 * panel, each a little apart. Else the rings of the likeliest naming are told (src/training/name-rings.ts).
 */
import { at } from '../base/at.ts';
import { says } from '../base/sentence.ts';
import { sum } from '../base/sum.ts';
import type { PanelSurvey } from '../film/survey.ts';
import { faceReadings } from './graded-survey.ts';
import { type Named, namedPanels, nameFit } from './name-fits.ts';
import { type Fits, nameRings, type Ring, ringGain, ringsOf } from './name-rings.ts';
import type { Scoring } from './panel-score.ts';
import { type Reason, reason, together } from './reasons.ts';
import type { TrainingModel } from './training-model.ts';

export function swappedPanels(scoring: Scoring, model: TrainingModel): readonly Reason[] {
  const named = namedPanels(scoring);
  const fits = named.map((one) => named.map((other) => nameFit(one, other, scoring, model)));
  const proof = 2 * Math.log(1 / model.slips.falseAlarm);
  const { unsatisfactory } = model.scores;
  const sides = sidesOf(named);
  const surveysOf = (ring: Ring): readonly PanelSurvey[] => ring.map((i) => at(named, i).read);
  if (
    areAllSwapped(sides, fits, proof) &&
    sides.every((pair) => fitsIn(pair, fits, unsatisfactory))
  )
    return [toldSides(sides.flatMap(surveysOf), 'are swapped, all over the car', scoring)];
  const isSides = ([one, other]: Ring): boolean =>
    sides.some(([left, right]) => left === one && right === other);
  const ways = (ring: Ring): number => {
    if (isSides(ring)) return sides.length;
    return ringsOf(named.length, ring.length) - (ring.length === 2 ? sides.length : 0);
  };
  const rings = nameRings(fits, sides, unsatisfactory)
    .filter((ring) => ringGain(ring, fits) > proof + 2 * Math.log(ways(ring)))
    .sort((one, other) => ringGain(other, fits) - ringGain(one, fits));
  return [
    ...rings.filter(isSides).map((ring) => {
      const panels = surveysOf(ring);
      const swapped = isByMarks(ring, fits) ? 'are swapped' : 'seem swapped';
      return toldSides(panels, `${swapped}, ${together(panels.map(nameOf))}`, scoring);
    }),
    ...rings
      .filter((ring) => !isSides(ring))
      .map((ring) => toldPanels(surveysOf(ring), isByMarks(ring, fits), scoring)),
  ];
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

const fitsIn = ([one = 0, other = 0]: Ring, fits: Fits, unsatisfactory: number): boolean =>
  [at(at(fits, one), other), at(at(fits, other), one)].every(
    ({ largest }) => largest < unsatisfactory,
  );

/** By its mean a panel may fit more names than one: which of them were mixed up is less sure then. */
const isByMarks = (ring: Ring, fits: Fits): boolean =>
  ring.every((place, k) => at(at(fits, place), at(ring, (k + 1) % ring.length)).atMarks);

const MEND = 'write the name of a panel while you stand before it';

function toldPanels(
  panels: readonly PanelSurvey[],
  byMarks: boolean,
  { trainee }: Pick<Scoring, 'trainee'>,
): Reason {
  const [are, readings] = byMarks
    ? ['are', 'the readings agree']
    : ['seem', 'the means of their points agree'];
  const names = panels.map(nameOf);
  const said =
    names.length === 2
      ? says`${together(names)} ${are} swapped: with their names changed ${readings} with the reference; ${MEND}`
      : says`the names of ${together(names)} ${are} moved on by one: ${movedText(names)}; ${MEND}`;
  return reason('panels-swapped', said, {
    panels: panels.map(({ panel }) => panel.id),
    at: faceReadings(trainee, panels[0]?.panel.id)[0],
  });
}

const MOST_MOVES = 4;

/** Of many the first: the others go on so. */
function movedText(names: readonly string[]): string {
  const moves = names.map((name, i) => {
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
