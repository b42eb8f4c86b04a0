/**
 * A doubt about readings of 999, 1999 and the like, which some displays show for "no reading".
 *
 * They are within what a gauge can read, so they stand; where no other reading of the file comes to a
 * third of them the user is told of it.
 */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import type { Reading } from '../../film/reading.ts';
import { micrometresPer, type TableUnit } from '../cells/unit.ts';

const fullDisplays: ReadonlySet<number> = new Set([999, 999.9, 1999, 1999.9, 2999, 3999, 4999]);

const least = Math.min(...fullDisplays);

export function doubtNines(readings: readonly Reading[], unit: TableUnit): readonly Diagnostic[] {
  const isFull = ({ thickness }: Reading): boolean => {
    const value = thickness / micrometresPer[unit];
    return value >= least && fullDisplays.has(value);
  };
  const full = readings.filter(isFull);
  if (full.length === 0) return [];
  const others = readings.filter((reading) => !isFull(reading));
  const most = others.reduce((largest, { thickness }) => Math.max(largest, thickness), 0);
  return full
    .filter(({ thickness }) => most > 0 && most * 3 <= thickness)
    .map(({ thickness, origin }) => {
      const value = thickness / micrometresPer[unit];
      const message = `${value} may be a full display, written for no reading: no other is over ${Math.ceil(most)} µm`;
      const hint = 'if it is no reading, empty the cell';
      return warning('reading-implausible', message, { at: origin, hint });
    });
}
