/**
 * A doubt about the unit of a whole file, from the size of its middle reading.
 *
 * Paint on vehicles reads from some tens of µm to a mm over filler. With the median of the
 * whole-film readings outside the plausible (built in, 15 to 1500 µm), another unit is likelier than such a car: 100 µm
 * written as 3.9 mil and read as µm are 3.9 µm, and read as mil they are 2540 µm; 0.1 mm read as µm are
 * 0.1 µm. Single layers may be thinner and are not asked.
 */
import { type Diagnostic, error, type Place, warning } from '../../base/diagnostics.ts';
import { median } from '../../base/stats/summary.ts';
import type { Micrometres } from '../../base/units.ts';
import type { FilmModel } from '../../film/film-model.ts';
import type { Reading } from '../../film/reading.ts';
import { micrometresPer, otherUnitHint, type TableUnit } from '../cells/unit.ts';

type Doubtful = Pick<FilmModel['measurement'], 'doubtfulUnder' | 'doubtfulOver'>;

/** `asked`: the user named the unit, and nothing is refused. */
export function doubtUnit(
  readings: readonly Reading[],
  unit: TableUnit,
  { doubtfulUnder, doubtfulOver }: Doubtful,
  at: () => Place,
  asked = false,
): readonly Diagnostic[] {
  if (mostAreWithin(readings, doubtfulUnder, doubtfulOver)) return [];
  const film = readings.filter(({ layer }) => layer === '').map(({ thickness }) => thickness);
  if (film.length === 0) return [];
  const middle = median(film);
  if (middle >= doubtfulUnder && middle <= doubtfulOver) return [];
  const likelier = likelierThan(unit, middle, doubtfulUnder);
  const question = likelier === undefined ? ' is that so?' : ` ${likelier}?`;
  const message = `the middle reading is ${middle.toFixed(middle < 1 ? 3 : 1)} µm:${question}`;
  const hint =
    likelier === 'mm'
      ? otherUnitHint('mm')
      : 'if the unit is wrong, correct it where the file or --reading-unit names it';
  const told = asked || !cannotBe(film, unit, { doubtfulUnder, doubtfulOver }) ? warning : error;
  return [told('unit-doubtful', message, { at: at(), hint })];
}

/** One or two readings may all lie on filler, 2 to 3 mm thick: they are told (an assumption). */
const fewest = 3;

/** Not one reading can be paint in the unit that is named, and all can be in the other. */
function cannotBe(
  film: readonly Micrometres[],
  unit: TableUnit,
  { doubtfulUnder, doubtfulOver }: Doubtful,
): boolean {
  if (film.length < fewest || (unit !== 'um' && unit !== 'mil')) return false;
  const factor = unit === 'um' ? micrometresPer.mil : 1 / micrometresPer.mil;
  const outside = (value: number): boolean => value < doubtfulUnder || value > doubtfulOver;
  const films = film.filter((value) => value > 0);
  return films.every(outside) && films.every((value) => !outside(value * factor));
}

/** Then the middle one is as well, and nothing needs sorting. */
function mostAreWithin(readings: readonly Reading[], least: number, most: number): boolean {
  let [below, above, all] = [0, 0, 0];
  for (const { layer, thickness } of readings) {
    if (layer !== '') continue;
    all += 1;
    if (thickness < least) below += 1;
    else if (thickness > most) above += 1;
  }
  return below < (all - 1) / 2 && above < (all - 1) / 2;
}

/** The unit in which the numbers would be paint: a film of paint is 0.02 to 1 in mm. */
function likelierThan(
  unit: TableUnit,
  middle: number,
  thinnest: number,
): 'mil' | 'µm' | 'mm' | undefined {
  const number = middle / micrometresPer[unit];
  if (number < 1 && middle < thinnest) return 'mm';
  if (middle < thinnest) return unit === 'um' ? 'mil' : undefined;
  return unit === 'um' ? undefined : 'µm';
}
