/**
 * What the tool has to say about an input, as data: a code from the catalogue, a sentence, the place
 * and a way out. Expected failures are returned in an `Outcome`; only our own bugs are thrown.
 */
import type { DiagnosticCode } from './catalogue.ts';

export type Severity = 'error' | 'warning' | 'note';

/** A place in an input. Line and column count from 1; column counts UTF-16 units; `length` likewise. */
export type Place = {
  readonly file: string;
  readonly line?: number;
  readonly column?: number;
  readonly length?: number;
  /** The whole line as the user wrote it, without its line end. */
  readonly lineText?: string;
};

export type Diagnostic = {
  readonly code: DiagnosticCode;
  readonly severity: Severity;
  readonly message: string;
  readonly at?: Place;
  readonly hint?: string;
  /** Whose it is, where an input holds several vehicles; absent where it is of the input as a whole. */
  readonly vehicle?: string | null;
};

/** A value, or none, with everything there is to say about how it came to be. */
export type Outcome<T> = {
  readonly value?: T;
  readonly diagnostics: readonly Diagnostic[];
};

type Rest = { readonly at?: Place | undefined; readonly hint?: string | undefined };

const diagnostic = (
  severity: Severity,
  code: DiagnosticCode,
  message: string,
  { at, hint }: Rest,
): Diagnostic => ({
  code,
  severity,
  message,
  ...(at === undefined ? {} : { at }),
  ...(hint === undefined ? {} : { hint }),
});

export const error = (code: DiagnosticCode, message: string, rest: Rest = {}): Diagnostic =>
  diagnostic('error', code, message, rest);
export const warning = (code: DiagnosticCode, message: string, rest: Rest = {}): Diagnostic =>
  diagnostic('warning', code, message, rest);
export const note = (code: DiagnosticCode, message: string, rest: Rest = {}): Diagnostic =>
  diagnostic('note', code, message, rest);

export const hasErrors = (diagnostics: readonly Diagnostic[]): boolean =>
  diagnostics.some(({ severity }) => severity === 'error');

/** The same, told of one vehicle of so many; of the input as a whole where it is the only one. */
export const ofVehicle = (
  vehicle: string | null,
  vehicles: number,
  diagnostics: readonly Diagnostic[],
): readonly Diagnostic[] =>
  vehicles === 1 ? diagnostics : diagnostics.map((one) => ({ ...one, vehicle }));

/** What is told of a vehicle, and of the input as a whole. */
export const concerning = (
  vehicle: string | null,
  diagnostics: readonly Diagnostic[],
): readonly Diagnostic[] =>
  diagnostics.filter((one) => one.vehicle === undefined || one.vehicle === vehicle);

/** A value with what was noticed on the way. */
export const found = <T>(value: T, diagnostics: readonly Diagnostic[] = []): Outcome<T> => ({
  value,
  diagnostics,
});

/** No value, and why. */
export const refused = <T>(...diagnostics: readonly Diagnostic[]): Outcome<T> => ({ diagnostics });
