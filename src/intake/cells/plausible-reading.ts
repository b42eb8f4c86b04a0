/**
 * Whether a number can be the reading of a film.
 *
 * 0 is what a gauge shows on bare metal or without a signal: it is left out aloud. No film is below 0 either: a
 * value a little below it is such a 0 of a gauge whose zero was set on another surface, and no mean takes it. One
 * as far below 0 as paint is thick no zero explains: it is a slip of the sign or a difference. Over the largest reading of gauges for vehicle paint (built in,
 * 5000 µm) none of them reads; such a value is a slip of unit or key and stops the file.
 */
import { shown } from '../../base/rounding.ts';
import type { Micrometres } from '../../base/units.ts';
import { type ReadingCell, wrong } from './cell-verdict.ts';
import { quoted } from './quoted.ts';
import { mayBeDaySerial } from './spreadsheet-dates.ts';
import { inMicrometres, largestIn, type TableUnit, unitSign } from './unit.ts';

export function judged(
  text: string,
  { value, decimals }: { readonly value: number; readonly decimals: number },
  unit: TableUnit,
  largest: Micrometres,
): ReadingCell {
  if (Math.abs(value) > largestIn(unit, largest)()) {
    return wrong(
      'reading-implausible',
      `${quoted(text)} ${unitSign[unit]} is more than the ${shown(largest, 0)} µm a gauge for vehicle paint can show`,
      tooLargeHint(value, unit),
    );
  }
  if (value > 0) return { kind: 'reading', thickness: inMicrometres(value, unit), decimals };
  if (value < 0) return belowZero(text, inMicrometres(value, unit));
  return noFilm(
    text,
    'a 0 is no film reading',
    'a gauge shows 0 on bare metal or without a signal',
  );
}

/** No zero that was set on another surface is off by as much as paint is thick. */
const FARTHEST_ZERO = 40;

/** What is said of a value that no zero explains: what was read there is not known. */
export const FAR_BELOW_ZERO =
  'a value below 0 is no film, and as large as one: a slip of the sign, or a difference';

const belowZero = (text: string, thickness: Micrometres): ReadingCell =>
  thickness > -FARTHEST_ZERO
    ? noFilm(
        text,
        'a value below 0 is no film reading',
        'a gauge shows it for 0, bare metal, where its zero was set on another surface: set it again and read the point anew',
      )
    : noFilm(
        text,
        FAR_BELOW_ZERO,
        'if the gauge showed it without the sign, take that out; else read the point again',
      );

const doubted = { severity: 'warning', code: 'reading-implausible' } as const;

/** Where most numbers are below 0 the dash before them may be no sign: none of them is read. */
export const unprovedSign = (text: string): ReadingCell =>
  noFilm(
    text,
    'a value below 0 is no film reading',
    'most numbers of the file have it: if the dash is no minus sign, take it out',
  );

const noFilm = (text: string, reason: string, hint: string): ReadingCell => ({
  kind: 'excluded',
  class: 'not-film',
  reason,
  complaint: { ...doubted, message: `${quoted(text)}: ${reason}; the cell is left out`, hint },
});

function tooLargeHint(value: number, unit: TableUnit): string {
  if (unit === 'mil') return lostMarkInMil(value);
  if (unit !== 'um') return 'is the unit µm?';
  return mayBeDaySerial(value)
    ? 'a spreadsheet counts days so: was a number taken for a date?'
    : 'is the decimal mark missing, or a second reading in the cell?';
}

/** Films of vehicles, filler left out, are hardly thicker. */
const MOST_MIL = 12;

/** `469` among readings such as 4.76 is more likely a decimal mark that was lost than the unit of all. */
function lostMarkInMil(value: number): string {
  const meant = [10, 100, 1000].map((factor) => value / factor).find(isUsualMil);
  return meant === undefined
    ? 'is the unit µm?'
    : `if the decimal mark was lost (${Number(meant.toPrecision(6))}?), put it right, or leave the cell empty and read the point again; if all numbers are like it, is the unit µm?`;
}

const isUsualMil = (value: number): boolean => value >= 1 && value <= MOST_MIL;
