/**
 * A few readings thinner than any film, among others that are paint: `.101` may be 0.1 µm on bare metal,
 * or 101 µm in millimetres; 12 µm among 110 a digit not typed, or the end of a file cut off. They are read
 * as they stand, and told.
 */
import type { Micrometres } from '../../base/units.ts';
import type { Reading } from '../../film/reading.ts';
import type { Findings } from '../findings.ts';
import { readingPlace } from '../readings/reading-place.ts';
import type { Source } from '../rows/source.ts';

/** A µm of paint does not cover: no film is thinner, in no layer. */
const thinnestLayer = 1;

/** `leastFilm`: under this a film of all its layers is doubted, as the middle of a file is. */
export function tellThinReadings(
  readings: readonly Reading[],
  leastFilm: Micrometres,
  source: Source,
  findings: Findings,
): void {
  const thin = readings.filter(
    ({ thickness, layer }) => thickness < (layer === '' ? leastFilm : thinnestLayer),
  );
  // One below 0 is told where its cell is read.
  const untold = thin.filter(({ thickness }) => thickness >= 0);
  // Of more of them the unit of the file is doubted instead.
  if (thin.length * 2 > readings.length) return;
  for (const reading of untold) {
    findings.add('warning', 'reading-implausible', () => ({
      message: `a reading of ${Number(reading.thickness.toFixed(3))} µm is thinner than any film of paint`,
      at: readingPlace(source, reading),
      hint: 'bare metal reads so; else a digit, the decimal mark or the unit is wrong',
    }));
  }
}
