import type { MachineRecord } from '../report/model.ts';

/** One record, indented. */
export const renderJson = (record: MachineRecord): string =>
  `${harmless(JSON.stringify(record, null, 2))}\n`;

/** One record a line (newline-delimited JSON). */
export const renderNdjson = (records: readonly MachineRecord[]): string =>
  records.map((record) => `${harmless(JSON.stringify(record))}\n`).join('');

/** Marks that JSON lets stand and a terminal may obey, or show as nothing; they stand in strings only. */
const OBEYED =
  /[\u007f-\u009f\u00ad\u061c\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb\u{e0000}-\u{e007f}]/gu;

/** The same JSON with those marks escaped: the value is unchanged. */
const harmless = (json: string): string =>
  json.replace(OBEYED, (mark) =>
    Array.from(
      { length: mark.length },
      (_, i) => `\\u${mark.charCodeAt(i).toString(16).padStart(4, '0')}`,
    ).join(''),
  );
