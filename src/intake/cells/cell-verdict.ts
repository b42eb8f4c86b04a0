/** What is made of one cell of a reading column, and what is said of it. */
import type { DiagnosticCode } from '../../base/catalogue.ts';
import type { Severity } from '../../base/diagnostics.ts';
import type { Micrometres } from '../../base/units.ts';
import type { NoReadingClass } from './not-readings.ts';
import { quoted } from './quoted.ts';
import type { Sentinel } from './sentinels.ts';

export type Complaint = {
  readonly severity: Severity;
  readonly code: DiagnosticCode;
  readonly message: string;
  readonly hint?: string;
};
export type ReadingCell =
  | {
      readonly kind: 'reading';
      readonly thickness: Micrometres;
      /** How many decimals are written, zeros included. */
      readonly decimals: number;
      /** What stands behind the number and speaks of the paint. */
      readonly note?: string;
      /** What is said of a reading that is kept as it stands. */
      readonly complaint?: Complaint;
    }
  | {
      readonly kind: 'excluded';
      readonly class: NoReadingClass;
      readonly reason: string;
      readonly complaint: Complaint;
    }
  | { readonly kind: 'wrong'; readonly complaint: Complaint };

export const wrong = (code: DiagnosticCode, message: string, hint?: string): ReadingCell => ({
  kind: 'wrong',
  complaint: { severity: 'error', code, message, ...(hint === undefined ? {} : { hint }) },
});

const codeOfClass = {
  missing: 'reading-missing',
  'over-range': 'reading-over-range',
  error: 'reading-error',
  deleted: 'reading-deleted',
  'not-film': 'reading-implausible',
} as const satisfies Record<NoReadingClass, DiagnosticCode>;

const hintOfClass: Partial<Record<NoReadingClass, string>> = {
  'over-range':
    'on metal the film is beyond the range of the gauge: look for filler there; on plastic it tells nothing',
  error: 'measure the point anew if it matters',
};

export function excluded(
  kind: NoReadingClass,
  reason: string,
  hint = hintOfClass[kind],
): ReadingCell {
  const empty = reason === 'empty cell';
  const complaint: Complaint = {
    severity: empty ? 'note' : 'warning',
    code: codeOfClass[kind],
    message: empty ? 'an empty cell is no reading' : `${reason}; the cell is left out`,
    ...(hint === undefined ? {} : { hint }),
  };
  return { kind: 'excluded', class: kind, reason, complaint };
}

export const sentinel = (text: string, { class: kind, meaning }: Sentinel): ReadingCell =>
  excluded(kind, `${quoted(text)} is ${meaning}, beyond what a film can read`);
