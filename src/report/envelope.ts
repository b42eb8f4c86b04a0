/** What stands around every machine record. */
import { concerning, type Diagnostic } from '../base/diagnostics.ts';
import type { Remark } from '../base/remark.ts';
import type { ReadInput } from '../tasks/read/read-request.ts';
import { type Assumption, namingAll } from '../tasks/settings/assumption.ts';
import { type EffectiveSetting, isOwn } from '../tasks/settings/effective-settings.ts';
import type { MachineRecord } from './model.ts';
import { recorded } from './recorded.ts';

export type RecordContext = {
  readonly version: string;
  readonly diagnostics: readonly Diagnostic[];
};

export const envelope = (
  command: string | null,
  about: {
    readonly vehicle: string | null;
    readonly inputs: readonly ReadInput[];
    readonly assumptions: readonly Assumption[];
    readonly settings?: { readonly effective: readonly EffectiveSetting[] };
  },
  { version, diagnostics }: RecordContext,
): MachineRecord => ({
  schema: command === null ? null : `leastcut/${command}/1`,
  version,
  command,
  vehicle: about.vehicle,
  inputs: about.inputs.map(inputRecord),
  assumptions: about.assumptions.map((one) => ({
    code: one.code,
    text: namingAll(one),
    origin: one.origin,
  })),
  ...(about.settings === undefined
    ? {}
    : { settings: about.settings.effective.filter(isOwn).map(settingRecord) }),
  diagnostics: concerning(about.vehicle, diagnostics).map(diagnosticRecord),
});

/** A setting with where it came from; `origin` and `where` as the text has them. */
export const settingRecord = ({ name, value, origin, where }: EffectiveSetting) => ({
  name,
  value: typeof value === 'number' ? recorded(value) : value,
  origin,
  where,
});

/** Envelope of a run that came to nothing: its diagnostics and no result; null where the word typed is no command. */
export const emptyRecord = (command: string | null, context: RecordContext): MachineRecord => ({
  ...envelope(command, { vehicle: null, inputs: [], assumptions: [] }, context),
  diagnostics: context.diagnostics.map(diagnosticRecord),
});

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
          columns: Object.fromEntries(decisions.columns),
          evidence: decisions.evidence,
          metadata: decisions.metadata.map(({ key, value, line }) => ({ key, value, line })),
        },
});

export const remarkRecord = ({ code, text, value }: Remark) => ({
  code,
  text,
  ...(value === undefined ? {} : { value: recorded(value) }),
});

export const diagnosticRecord = ({ code, severity, message, at, hint }: Diagnostic) => ({
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
