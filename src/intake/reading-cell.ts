/**
 * What one cell of a reading column says: a thickness, no reading and why, or what is wrong with it.
 *
 * 0 is what a gauge shows on bare metal or without a signal, and a value below 0 comes from a zero
 * set on another surface: neither is a film, both are left out aloud. Over the
 * largest value that a gauge for vehicle paint shows (built in, 5000 µm) a number is a slip of unit or key and stops the file.
 */
import type { DiagnosticCode } from '../base/catalogue.ts';
import type { Severity } from '../base/diagnostics.ts';
import { type Micrometres, micrometres, milToMicrometres } from '../base/units.ts';
import type { DecimalDecision } from './decimal.ts';
import { type NumberShape, numberOf, numberShape, readsTwoWays } from './numbers.ts';
import { micrometresPer, type ReadingUnit, unitNamed, unitSign } from './unit.ts';
import { meansNoReading } from './words.ts';

type Complaint = {
  readonly severity: Severity;
  readonly code: DiagnosticCode;
  readonly message: string;
  readonly hint?: string;
};
export type ReadingCell =
  | { readonly kind: 'reading'; readonly thickness: Micrometres }
  | { readonly kind: 'excluded'; readonly reason: string; readonly complaint: Complaint }
  | { readonly kind: 'wrong'; readonly complaint: Complaint };

export type NumberRules = {
  readonly unit: ReadingUnit;
  readonly decimal: DecimalDecision;
  /** More than this no gauge for vehicle paint shows. */
  readonly largest: Micrometres;
};

/** The largest number, in the unit of the column, that can be a reading. */
export const largestIn = (unit: ReadingUnit, largest: Micrometres): number =>
  largest / micrometresPer[unit];

export function readReadingCell(text: string, rules: NumberRules): ReadingCell {
  if (meansNoReading(text)) return noReading(text);
  const shape = numberShape(text);
  if (shape === undefined) return notANumber(text);
  const { unit } = rules;
  if (shape.suffix !== '') {
    const named = unitNamed(shape.suffix);
    if (named === undefined) return notANumber(text);
    if (named !== unit) return otherUnit(text, unit);
  }
  const doubt = doubtAbout(text, shape, rules);
  return doubt === undefined ? judged(text, numberOf(shape), rules) : doubt;
}

const wrong = (code: DiagnosticCode, message: string, hint?: string): ReadingCell => ({
  kind: 'wrong',
  complaint: { severity: 'error', code, message, ...(hint === undefined ? {} : { hint }) },
});

function noReading(text: string): ReadingCell {
  const reason = text === '' ? 'empty cell' : `"${text}" marks no reading`;
  return {
    kind: 'excluded',
    reason,
    complaint: {
      severity: text === '' ? 'note' : 'warning',
      code: 'reading-missing',
      message: text === '' ? 'an empty cell is no reading' : `${reason}; the cell is left out`,
    },
  };
}

const notANumber = (text: string): ReadingCell =>
  wrong(
    'reading-not-a-number',
    `"${text}" is not a number`,
    'correct the cell, or leave it empty where there is no reading',
  );

const otherUnit = (text: string, unit: ReadingUnit): ReadingCell =>
  wrong(
    'unit-conflict',
    `"${text}" names another unit than ${unitSign[unit]}, the unit of its column`,
    'write all readings of a file in one unit',
  );

/** Why a number cannot be read without guessing, or undefined if it can. Shared with other columns. */
export function numberDoubt(
  text: string,
  shape: NumberShape,
  largest: number,
  { mark, threes }: DecimalDecision,
): { readonly message: string; readonly hint: string } | undefined {
  if (shape.grouped) {
    const hint = 'write the number without separators between its digits';
    return { message: `"${text}" has a thousands separator`, hint };
  }
  const { whole, fraction } = shape;
  if (readsTwoWays(shape, largest) && !(threes && shape.mark === mark)) {
    const message = `"${text}" may be ${whole}.${fraction} or ${whole},${fraction}`;
    return { message, hint: `write ${whole}${fraction}, or fewer digits after the decimal mark` };
  }
  if (shape.mark !== '' && shape.mark !== mark) {
    const [has, others] = mark === ',' ? ['point', 'comma'] : ['comma', 'point'];
    return {
      message: `"${text}" has a decimal ${has} among numbers with a decimal ${others}`,
      hint: `write ${whole}${mark}${fraction} if that is meant`,
    };
  }
  return undefined;
}

function doubtAbout(
  text: string,
  shape: NumberShape,
  { unit, decimal, largest }: NumberRules,
): ReadingCell | undefined {
  const doubt = numberDoubt(text, shape, largestIn(unit, largest), decimal);
  return doubt === undefined ? undefined : wrong('reading-ambiguous', doubt.message, doubt.hint);
}

function judged(text: string, value: number, { unit, largest }: NumberRules): ReadingCell {
  if (value > largestIn(unit, largest)) {
    return wrong(
      'reading-implausible',
      `"${text}" ${unitSign[unit]} is more than the ${largest} µm a gauge for vehicle paint can show`,
      unit === 'mil'
        ? 'is the unit µm?'
        : 'is the decimal mark missing, or a second reading in the cell?',
    );
  }
  if (value > 0) {
    const thickness = unit === 'mil' ? milToMicrometres(value) : micrometres(value);
    return { kind: 'reading', thickness };
  }
  const reason = value === 0 ? 'a 0 is no film reading' : 'a value below 0 is no film reading';
  const hint =
    value === 0
      ? 'a gauge shows 0 on bare metal or without a signal'
      : 'the zero of the gauge was set on another surface: set it again and measure anew';
  return {
    kind: 'excluded',
    reason,
    complaint: {
      severity: 'warning',
      code: 'reading-implausible',
      message: `"${text}": ${reason}`,
      hint,
    },
  };
}
