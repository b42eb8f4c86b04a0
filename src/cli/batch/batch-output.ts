/** Where the records of a batch go: to the reader, or line by line into a file; and a summary beside. */
import { renderCsvRow } from '../../render/csv.ts';
import { summaryColumns, summaryRow } from '../../report/batch/batch-summary.ts';
import type { MachineRecord } from '../../report/model.ts';
import type { TypedOptions } from '../options.ts';
import { writeToReader } from '../standard-output.ts';
import { openLineFile } from './line-file.ts';

export type BatchOutput = {
  /** Takes the record of a job as a line of ndjson; false once nobody reads any more. */
  readonly add: (line: string) => Promise<boolean>;
  /** The same for a record that stands in the file already. */
  readonly recall: (line: string) => Promise<void>;
  /** With `complete`, under the final names; else what there is stays for a later --resume. */
  readonly close: (complete: boolean) => Promise<void>;
};

/** `keep` is how many bytes of an earlier run stand. */
export async function openOutput(
  command: string,
  { out, summary, format = 'ndjson' }: TypedOptions,
  keep: number,
): Promise<BatchOutput> {
  const main = out === undefined ? undefined : await openLineFile(out, keep);
  const beside = summary === undefined ? undefined : await openLineFile(summary, 0);
  const head = renderCsvRow(summaryColumns(command));
  const rowOf = (line: string): string =>
    renderCsvRow(summaryRow(command, JSON.parse(line) as MachineRecord));
  const write = (text: string): Promise<boolean> =>
    main === undefined ? writeToReader(text) : main.add(text);
  if (format === 'csv') await write(head);
  await beside?.add(head);
  const summarise = async (line: string): Promise<void> => {
    await beside?.add(rowOf(line));
  };
  return {
    add: async (line) => {
      await summarise(line);
      return write(format === 'csv' ? rowOf(line) : line);
    },
    recall: summarise,
    close: async (complete) => {
      for (const file of [main, beside]) {
        if (file === undefined) continue;
        await (complete ? file.finish() : file.leave());
      }
    },
  };
}
