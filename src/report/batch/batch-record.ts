/** `leastcut/batch/1`: one job of a batch, with the record of its command or why there is none. */
import type { Diagnostic } from '../../base/diagnostics.ts';
import { diagnosticRecord } from '../envelope.ts';
import type { MachineRecord } from '../model.ts';

/**
 * `done`: there is a result, also where the answer is no. `refused`: what was given cannot be used as
 * it stands. `failed`: a file could not be read or written, or the fault is ours.
 */
export type JobStatus = 'done' | 'refused' | 'failed';

export type FinishedJob = {
  readonly job: string;
  /** From 1, in the order of the list. */
  readonly seq: number;
  readonly command: string;
  readonly status: JobStatus;
  /** The exit code that its command would have ended with. */
  readonly exit: number;
  /** Checksum of all that was asked besides the files: options, version, which settings were found. */
  readonly settingsSum: string;
  /** Checksum of the readings that the result is made of; null where there is none. */
  readonly readingsSum: string | null;
  /** Every file that was loaded; without a checksum where it could not be. */
  readonly inputs: readonly { readonly file: string; readonly sha256: string | null }[];
  readonly diagnostics: readonly Diagnostic[];
  readonly result: MachineRecord | null;
};

export const batchRecord = (
  {
    settingsSum,
    readingsSum,
    diagnostics,
    job,
    seq,
    command,
    status,
    exit,
    inputs,
    result,
  }: FinishedJob,
  version: string,
): MachineRecord => ({
  schema: 'leastcut/batch/1',
  version,
  ...{ job, seq, command, status, exit },
  settings_sha256: settingsSum,
  readings_sha256: readingsSum,
  inputs,
  diagnostics: diagnostics.map(diagnosticRecord),
  result,
});
