import type { MachineRecord } from '../report/model.ts';

/** One record, indented. */
export const renderJson = (record: MachineRecord): string => `${JSON.stringify(record, null, 2)}\n`;

/** One record a line (newline-delimited JSON). */
export const renderNdjson = (records: readonly MachineRecord[]): string =>
  records.map((record) => `${JSON.stringify(record)}\n`).join('');
