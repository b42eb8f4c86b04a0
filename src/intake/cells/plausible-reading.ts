/**
 * Whether a number can be the reading of a film.
 *
 * 0 is what a gauge shows on bare metal or without a signal, and a value below 0 comes from a zero
 * set on another surface: neither is a film, both are left out aloud. Over the largest
 * reading of gauges for vehicle paint (built in, 5000 µm) none of them reads; such a value is a slip of unit or key and stops the file.
 */
import { shown } from '../../base/rounding.ts';
import type { Micrometres } from '../../base/units.ts';
import { type ReadingCell, wrong } from './cell-verdict.ts';
import { quoted } from './quoted.ts';
import { mayBeDaySerial } from './spreadsheet-dates.ts';
import { inMicrometres, largestIn, type TableUnit, unitSign } from './unit.ts';

export function judged(
  text: string,
  value: number,
  unit: TableUnit,
  largest: Micrometres,
): ReadingCell {
  if (value > largestIn(unit, largest)()) {
    return wrong(
      'reading-implausible',
      `${quoted(text)} ${unitSign[unit]} is more than the ${shown(largest, 0)} µm a gauge for vehicle paint can show`,
      tooLargeHint(value, unit),
    );
  }
  if (value > 0) {
    return { kind: 'reading', thickness: inMicrometres(value, unit) };
  }
  const reason = value === 0 ? 'a 0 is no film reading' : 'a value below 0 is no film reading';
  const hint =
    value === 0
      ? 'a gauge shows 0 on bare metal or without a signal'
      : 'the zero of the gauge was set on another surface: set it again and measure anew';
  return {
    kind: 'excluded',
    class: 'not-film',
    reason,
    complaint: {
      severity: 'warning',
      code: 'reading-implausible',
      message: `${quoted(text)}: ${reason}`,
      hint,
    },
  };
}

function tooLargeHint(value: number, unit: TableUnit): string {
  if (unit !== 'um') return 'is the unit µm?';
  return mayBeDaySerial(value)
    ? 'a spreadsheet counts days so: was a number taken for a date?'
    : 'is the decimal mark missing, or a second reading in the cell?';
}
