/**
 * A doubt about the unit of a whole file, from the size of its middle reading.
 *
 * Paint on vehicles reads from some tens of µm to a mm over filler. With the median of the
 * whole-film readings under 15 µm or over 1500 µm, another unit is likelier than such a car: 100 µm
 * written as 3.9 mil and read as µm are 3.9 µm, and read as mil they are 2540 µm; 0.1 mm read as µm are
 * 0.1 µm. Single layers may be thinner and are not asked.
 */
import { type Diagnostic, type Place, warning } from '../base/diagnostics.ts';
import { median } from '../base/stats/summary.ts';
import type { Reading } from '../film/reading.ts';
import { micrometresPer, otherUnitHint, type ReadingUnit } from './unit.ts';

const THINNEST_MIDDLE = 15;
const THICKEST_MIDDLE = 1500;

export function doubtUnit(
  readings: readonly Reading[],
  unit: ReadingUnit,
  at: Place,
): readonly Diagnostic[] {
  const film = readings.filter(({ layer }) => layer === '').map(({ thickness }) => thickness);
  if (film.length === 0) return [];
  const middle = median(film);
  if (middle >= THINNEST_MIDDLE && middle <= THICKEST_MIDDLE) return [];
  const likelier = likelierThan(unit, middle);
  const question = likelier === undefined ? ' is that so?' : ` ${likelier}?`;
  const message = `the middle reading is ${middle.toFixed(middle < 1 ? 3 : 1)} µm:${question}`;
  const hint =
    likelier === 'mm'
      ? otherUnitHint('mm')
      : 'if the unit is wrong, correct it where the file or --reading-unit names it';
  return [warning('unit-doubtful', message, { at, hint })];
}

/** The unit in which the numbers would be paint: a film of paint is 0.02 to 1 in mm. */
function likelierThan(unit: ReadingUnit, middle: number): 'mil' | 'µm' | 'mm' | undefined {
  const number = middle / micrometresPer[unit];
  if (number < 1 && middle < THINNEST_MIDDLE) return 'mm';
  if (middle < THINNEST_MIDDLE) return unit === 'um' ? 'mil' : undefined;
  return unit === 'mil' ? 'µm' : undefined;
}
