/** What stands around every machine record. */
import type { Diagnostic } from '../base/diagnostics.ts';
import { roundTo } from '../base/rounding.ts';
import type { ReadInput } from '../tasks/read-vehicles.ts';
import type { Assumption } from '../tasks/settings.ts';
import type { MachineRecord } from './model.ts';

export type RecordContext = {
  readonly version: string;
  readonly diagnostics: readonly Diagnostic[];
};

export const envelope = (
  command: string,
  about: {
    readonly vehicle: string | null;
    readonly inputs: readonly ReadInput[];
    readonly assumptions: readonly Assumption[];
  },
  { version, diagnostics }: RecordContext,
): MachineRecord => ({
  schema: `leastcut/${command}/1`,
  version,
  command,
  vehicle: about.vehicle,
  inputs: about.inputs.map(inputRecord),
  assumptions: about.assumptions,
  diagnostics: diagnostics.map(diagnosticRecord),
});

/** Envelope of a run that came to nothing: its diagnostics and no result. */
export const emptyRecord = (command: string, context: RecordContext): MachineRecord =>
  envelope(command, { vehicle: null, inputs: [], assumptions: [] }, context);

const inputRecord = ({ file, sha256, decisions }: ReadInput) => ({
  file,
  sha256,
  decisions:
    decisions === null
      ? null
      : {
          encoding: decisions.encoding,
          delimiter: decisions.delimiter,
          decimal: decisions.decimal,
          layout: decisions.layout,
          unit: decisions.unit,
          header_line: decisions.headerLine,
          evidence: decisions.evidence,
        },
});

const diagnosticRecord = ({ code, severity, message, at, hint }: Diagnostic) => ({
  code,
  severity,
  message,
  at:
    at === undefined
      ? null
      : {
          file: at.file,
          line: at.line ?? null,
          column: at.column ?? null,
          length: at.length ?? null,
          line_text: at.lineText ?? null,
        },
  hint: hint ?? null,
});

/** Machine output carries six decimals: far below what any gauge can tell. */
const MACHINE_DIGITS = 6;

export const machine = (value: number): number => {
  const rounded = roundTo(value, MACHINE_DIGITS);
  return rounded === 0 ? 0 : rounded;
};
export const machineOrNull = (value: number | null | undefined): number | null =>
  value === null || value === undefined ? null : machine(value);
