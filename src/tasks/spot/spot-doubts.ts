/** Test spots whose figures cannot be of what they name: taken as they stand, they would make a paint of nobody’s car. */
import { type Diagnostic, error, type Place } from '../../base/diagnostics.ts';
import { rangeShown, shown } from '../../base/rounding.ts';
import { removalLogSd } from '../../correction/removal/removal-knowledge.ts';
import { removedFilm, type SpotMark, type SpotTrial } from '../../correction/spot/spot-trial.ts';
import type { Reading } from '../../film/reading.ts';
import type { Settings } from '../settings/settings.ts';
import type { PlacedTrial } from './placed-trial.ts';

/** As many SDs as one in a thousand passes. */
const BEYOND = 3.29;

/**
 * A loss beyond what paints and ways of working are held to differ by, with what the gauge may be off by. Of one too
 * small only sets beyond those that are usual are known, and these are refused as a number of sets.
 */
export function lossDoubted(
  { trial, at }: PlacedTrial,
  { film, correction: { spot, removal } }: Pick<Settings, 'film' | 'correction'>,
): readonly Diagnostic[] {
  const removed = removedFilm(trial.marks, film.measurement, spot.scatterDof);
  const usual = trial.combination.perSet * trial.sets;
  const most = usual * Math.exp(BEYOND * removalLogSd(removal));
  if (removed === null || removed.mean - BEYOND * removed.standardError <= most) return [];
  return [
    doubted(
      at,
      `spot "${trial.spot}" lost ${shown(removed.mean, 1)} µm in ${trial.sets} × ${trial.combination.id}, which takes ${shown(usual, 1)} µm as a rule and hardly ever ${shown(most, 0)}`,
      'correct the readings, their unit, or the sets; if the gauge did show so, no machine goes on this car until it is known why',
    ),
  ];
}

/** No place of a panel’s film lies so far, in µm, from all that was read on it: five times the usual spread. */
const FAR = 25;

/** The marks of a panel that reads otherwise are of another panel, or another car. */
export function marksDoubted(
  { trial, at }: PlacedTrial,
  readings: readonly Reading[],
): readonly Diagnostic[] {
  const films = readings.flatMap(({ layer, thickness }) => (layer === '' ? [thickness] : []));
  const [least, most] = [Math.min(...films), Math.max(...films)];
  const off = trial.marks.filter(({ before }) => before < least - FAR || before > most + FAR);
  if (films.length === 0 || off.length === 0) return [];
  const um = (value: number): string => shown(value, 0);
  return [
    doubted(
      at,
      `spot "${trial.spot}" reads ${rangeShown(
        off.map(({ before }) => before),
        um,
      )} µm before, and ${trial.panel} ${rangeShown(films, um)}`,
      'another panel or car? correct it; if its film is so at that place, read a point there with the panel',
    ),
  ];
}

/** As many marks that begin where another spot’s ended are no chance. */
const SAME_PLACE = 2;

/** A spot is one place: worked on after it was read, it is counted twice by the eye, and once in what is gone. */
export const goesOn = (trials: readonly PlacedTrial[]): readonly Diagnostic[] =>
  trials.flatMap(({ trial, at }) => {
    const before = trials.find((other) => other.trial !== trial && endsWhere(other.trial, trial));
    return before === undefined
      ? []
      : [
          doubted(
            at,
            `spot "${trial.spot}" begins with the readings that spot "${before.trial.spot}" ended with: one place worked on`,
            before.trial.combination.id === trial.combination.id
              ? 'write it as one spot with all its sets, before of the first and after of the last'
              : 'a spot is a place of its own: leave out the second trial',
          ),
        ];
  });

const endsWhere = (one: SpotTrial, other: SpotTrial): boolean =>
  one.panel === other.panel &&
  other.marks.length >= SAME_PLACE &&
  one.marks.length === other.marks.length &&
  other.marks.every((mark, i) => isAt(mark, one.marks[i]) && isFine(mark));

const isAt = ({ name, before }: SpotMark, ended: SpotMark | undefined): boolean =>
  ended !== undefined && ended.name === name && ended.after === before;

/** Whole µm meet by chance. */
const isFine = ({ before, after }: SpotMark): boolean =>
  !Number.isInteger(before) || !Number.isInteger(after);

const doubted = (at: Place, message: string, hint: string): Diagnostic =>
  error('spot-doubted', message, { at, hint });
