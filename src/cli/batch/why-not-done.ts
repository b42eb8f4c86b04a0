/** Why a job was not done: its first error, from what came of it now or from the record that stands of it. */
import type { Diagnostic, Place } from '../../base/diagnostics.ts';
import { renderDiagnostic } from '../../render/diagnostic-text.ts';
import type { diagnosticRecord } from '../../report/envelope.ts';
import type { MachineRecord } from '../../report/model.ts';

export type WhyNotDone = {
  /** What the error says, without its place: jobs that have the same are told together. */
  readonly reason: string;
  /** The same as people are told it. */
  readonly told: string;
};

/** Both empty where there is none. */
export function whyNotDone(diagnostics: readonly Diagnostic[]): WhyNotDone {
  const first = diagnostics.find(({ severity }) => severity === 'error');
  return first === undefined
    ? { reason: '', told: '' }
    : { reason: `${first.code}: ${first.message}`, told: renderDiagnostic(first) };
}

export const whyRecalled = ({ diagnostics }: MachineRecord): WhyNotDone =>
  whyNotDone((diagnostics as readonly Recorded[]).map(diagnosticOf));

type Recorded = ReturnType<typeof diagnosticRecord>;

const diagnosticOf = ({ at, hint, ...rest }: Recorded): Diagnostic => ({
  ...rest,
  ...(at === null ? {} : { at: placeOf(at) }),
  ...(hint === null ? {} : { hint }),
});

const placeOf = ({
  file,
  line,
  column,
  length,
  line_text,
}: NonNullable<Recorded['at']>): Place => ({
  file,
  ...(line === null ? {} : { line }),
  ...(column === null ? {} : { column }),
  ...(length === null ? {} : { length }),
  ...(line_text === null ? {} : { lineText: line_text }),
});
