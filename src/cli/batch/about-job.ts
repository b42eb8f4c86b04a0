/** What the end of a batch says of its jobs taken together, from the record of each. */
import { list, textAt } from '../../report/batch/record-paths.ts';
import type { MachineRecord } from '../../report/model.ts';

export type AboutJob = {
  readonly job: string;
  /** Of its result; null where there is none, or nobody named the vehicle. */
  readonly vehicle: string | null;
  /** Checksum of the readings that its result is made of; null where there is none. */
  readonly readingsSum: string | null;
  /** What a shop file would have to say for its quote to have a price. */
  readonly missingKeys: readonly string[];
};

/**
 * A job with its record as a line of ndjson, to be written and told: as bytes, which a thread hands over without
 * their being copied, or made into a text again where they are only written.
 */
export type JobLine = AboutJob & { readonly line: Uint8Array };

export const recordOfLine = (line: Uint8Array): MachineRecord =>
  JSON.parse(new TextDecoder().decode(line)) as MachineRecord;

export const aboutJob = (record: MachineRecord): AboutJob => ({
  job: String(record['job']),
  vehicle: textAt(record, 'result', 'vehicle'),
  readingsSum: textAt(record, 'readings_sha256'),
  missingKeys: list(record['result'], 'missing_keys').map(String),
});
