/** Test spots whose figures cannot be of what they name: taken as they stand, they would make a paint of nobody’s car. */
import { type Diagnostic, error, type Place } from '../../base/diagnostics.ts';
import { rangeShown, shown } from '../../base/rounding.ts';
import { median } from '../../base/stats/summary.ts';
import { removalLogSd } from '../../correction/removal/removal-knowledge.ts';
import { areNamedApart } from '../../correction/spot/one-place.ts';
import { removedFilm, type SpotMark, type SpotTrial } from '../../correction/spot/spot-trial.ts';
import type { Reading } from '../../film/reading.ts';
import type { SpotRow } from '../../intake/read-spots-file.ts';
import type { Settings } from '../settings/settings.ts';
import type { PlacedTrial } from './placed-trial.ts';
import { areSameFilms, isFine } from './same-films.ts';

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
  const most = usual * Math.exp(spot.lossBeyondSds * removalLogSd(removal));
  if (removed === null || removed.mean - spot.lossBeyondSds * removed.standardError <= most) {
    return [];
  }
  return [
    doubted(
      at,
      `spot "${trial.spot}" lost ${shown(removed.mean, 1)} µm in ${trial.sets} × ${trial.combination.id}, which takes ${shown(usual, 1)} µm as a rule and hardly ever ${shown(most, 0)}`,
      'correct the readings, their unit, or the sets; if the gauge did show so, no machine goes on this car until it is known why',
    ),
  ];
}

/** The marks of a panel that reads otherwise are of another panel, or another car. */
export function marksDoubted(
  { trial, at }: PlacedTrial,
  readings: readonly Reading[],
  { marksOff: far }: Settings['correction']['spot'],
): readonly Diagnostic[] {
  const films = readings.flatMap(({ layer, thickness }) => (layer === '' ? [thickness] : []));
  const [least, most] = [Math.min(...films), Math.max(...films)];
  const off = trial.marks.filter(({ before }) => before < least - far || before > most + far);
  if (films.length === 0 || off.length === 0) return [];
  const um = (value: number): string => shown(value, 0);
  return [
    doubted(
      at,
      `spot "${trial.spot}" reads ${rangeShown(
        off.map(({ before }) => before),
        um,
      )} µm before, and ${trial.panel} ${rangeShown(films, um)}`,
      whyOff(off, films),
    ),
  ];
}

/** The likeliest reason first: films that all lie off on one side by more than a coat were painted over, or stripped, since. */
function whyOff(off: readonly Pick<SpotMark, 'before'>[], films: readonly number[]): string {
  const before = median(off.map((mark) => mark.before));
  const now = median(films);
  const unit = [25.4, 1 / 25.4].some((factor) => isNear(before / (factor * now)))
    ? 'other units (1 mil is 25.4 µm)? '
    : '';
  const since =
    now > before
      ? 'was the panel painted since the spot? leave the spot out, it says nothing of the new paint; '
      : 'was paint taken off since the spot, or is it of another panel or car? ';
  const other = now > before ? 'another panel or car? correct it; ' : 'correct it; ';
  return `${unit}${since}${other}if its film is so at that place, read a point there with the panel`;
}

/** Films of one place, read in two units, are off by that factor and little else. */
const isNear = (ratio: number): boolean => ratio > 1 / NEAR && ratio < NEAR;
const NEAR = 1.5;

/** Film that no paint has is of another unit, or no film: no rate and no leave comes of it. */
export function thinDoubted(
  rows: readonly SpotRow[],
  { doubtfulUnder }: Settings['film']['measurement'],
): readonly Diagnostic[] {
  return rows.flatMap((row) => {
    const role = (['before', 'after'] as const).find(
      (one) => (row[one] ?? doubtfulUnder) < doubtfulUnder,
    );
    return role === undefined
      ? []
      : [
          doubted(
            row.placeOf(role),
            `"${row.textOf(role)}" ${role} of spot "${row.spot}" is under ${shown(doubtfulUnder, 0)} µm, which no paint is`,
            'mil? write µm (1 mil is 25.4 µm); what went alone? write what was read before and after; else leave both cells of the mark empty',
          ),
        ];
  });
}

/** As many marks that begin where another spot’s ended are no chance: with decimals, and of any once they had moved. */
const SAME_FINE = 2;
const SAME_MOVED = 3;

/**
 * A place worked on with the same combination is one trial of more sets: as two, the second would seem to clear alone what
 * both did. With another it is held to be one place, so that all that went there counts, unless its file names two.
 */
export const goesOn = (trials: readonly PlacedTrial[]): readonly Diagnostic[] =>
  trials.flatMap(({ trial, at }) => {
    const before = trials.find((other) => other.trial !== trial && endsWhere(other.trial, trial));
    const hint = before === undefined ? null : mendedBy(before.trial, trial);
    return before === undefined || hint === null
      ? []
      : [
          doubted(
            at,
            `spot "${trial.spot}" begins with the readings that spot "${before.trial.spot}" ended with: one place worked on`,
            hint,
          ),
        ];
  });

const mendedBy = (before: SpotTrial, trial: SpotTrial): string | null =>
  before.combination.id === trial.combination.id
    ? 'write it as one spot with all its sets, before of the first and after of the last'
    : areNamedApart(before.place, trial.place)
      ? 'one place: call it the same in the column place at both; two places: write what was read at each'
      : null;

/** One trial written under two names would count as new proof. */
export const copiedSpots = (trials: readonly PlacedTrial[]): readonly Diagnostic[] =>
  trials.flatMap(({ trial, at }, i) => {
    const first = trials
      .slice(0, i)
      .find((other) => other.trial.spot !== trial.spot && isCopy(other.trial, trial));
    return first === undefined
      ? []
      : [
          doubted(
            at,
            `every mark of spot "${trial.spot}" reads what spot "${first.trial.spot}" reads, before and after: copied?`,
            'one trial under two names: leave one out; two trials: write what was read at each',
          ),
        ];
  });

const isCopy = (one: SpotTrial, other: SpotTrial): boolean =>
  one.panel === other.panel &&
  areSameFilms([...one.marks, ...one.gained], [...other.marks, ...other.gained]);

const endsWhere = (one: SpotTrial, other: SpotTrial): boolean =>
  one.panel === other.panel &&
  one.marks.length === other.marks.length &&
  other.marks.every((mark, i) => isAt(mark, one.marks[i])) &&
  (other.marks.filter(isFine).length >= SAME_FINE ||
    one.marks.filter(({ before, after }) => before !== after).length >= SAME_MOVED);

const isAt = ({ name, before }: SpotMark, ended: SpotMark | undefined): boolean =>
  ended !== undefined && ended.name === name && ended.after === before;

const doubted = (at: Place, message: string, hint: string): Diagnostic =>
  error('spot-doubted', message, { at, hint });
