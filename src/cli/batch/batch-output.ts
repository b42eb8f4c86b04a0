/** Where the records of a batch go: to the reader, or line by line into a file; what stands beside them. */
import type { Diagnostic } from '../../base/diagnostics.ts';
import { inWords } from '../../base/in-words.ts';
import { renderCsv, renderCsvRow } from '../../render/csv.ts';
import { printable } from '../../render/printable.ts';
import { batchBlocks, type SummaryRow } from '../../report/batch/batch-page.ts';
import { summaryColumns, summaryRow } from '../../report/batch/batch-summary.ts';
import { createReorderBook } from '../../report/batch/reorder-list.ts';
import { reorderTable } from '../../report/batch/reorder-table.ts';
import { reorderWords } from '../../report/batch/reorder-words.ts';
import type { MachineRecord } from '../../report/model.ts';
import type { ChosenColumns } from '../chosen-fields.ts';
import { pageOutput } from '../deliver.ts';
import { writeOutput } from '../files/output-files.ts';
import { writeToReader } from '../files/standard-output.ts';
import type { TypedOptions } from '../options.ts';
import { type JobLine, recordOfLine } from './about-job.ts';
import { createDoubled } from './doubled.ts';
import { isPage } from './is-page.ts';
import { type LineFile, openLineFile } from './line-file.ts';
import { createUnpriced } from './unpriced.ts';

export type BatchOutput = {
  /** False once nobody reads any more. */
  readonly add: (job: JobLine) => Promise<boolean>;
  /** The same for a job whose record stands in the file already. */
  readonly recall: (job: JobLine) => Promise<void>;
  /** With `complete`, under the final names; else what there is stays for a later --resume. */
  readonly close: (complete: boolean) => Promise<Closed>;
};

/** What is to be said of what stands beside the records, safe to print. */
export type Closed = {
  readonly diagnostics: readonly Diagnostic[];
  readonly told: readonly string[];
};

type Beginning = {
  /** Columns of the rows of csv; the summary has all. */
  readonly columns: ChosenColumns;
  /** How many bytes of an earlier run stand. */
  readonly keep: number;
  /** How many there are to do. */
  readonly jobs: number;
};

export async function openOutput(
  command: string,
  options: TypedOptions,
  { columns, keep, jobs }: Beginning,
): Promise<BatchOutput> {
  const { out, format = 'ndjson' } = options;
  const main = out === undefined ? undefined : await openLineFile(out, keep);
  const write = (part: string | Uint8Array): Promise<boolean> =>
    main === undefined ? writeToReader(part) : main.add(part);
  const page = isPage(format) ? createPage(command, options) : undefined;
  if (format === 'csv') await write(renderCsvRow(columns.columns));
  const beside = await openBeside(command, options);
  return {
    add: async (job) => {
      const { line } = job;
      await beside.note(job);
      if (page !== undefined) return page.add(recordOfLine(line));
      if (format !== 'csv') return write(line);
      const row = summaryRow(command, recordOfLine(line));
      return write(renderCsvRow(columns.of(row)));
    },
    recall: beside.note,
    close: async (complete) => {
      if (page !== undefined) await write(await page.text(beside.doubled(), jobs));
      const left = await closeAll([main, beside.summary], complete);
      const { diagnostics, told } = await beside.close(complete);
      return { diagnostics, told: [...told, ...leftTexts(left, format)] };
    },
  };
}

/** What is noted of each job besides its record: for the summary, the list to buy, and the last lines. */
async function openBeside(command: string, { summary: path, reorder }: TypedOptions) {
  const summary = path === undefined ? undefined : await openLineFile(path, 0);
  const toBuy = reorder === undefined ? undefined : createReorder(reorder);
  const unpriced = createUnpriced();
  const doubled = createDoubled();
  await summary?.add(renderCsvRow(summaryColumns(command)));
  return {
    summary,
    doubled: (): readonly string[] => doubled.told(),
    note: async (job: JobLine): Promise<void> => {
      unpriced.add(job);
      doubled.add(job);
      if (summary === undefined && toBuy === undefined) return;
      const record = recordOfLine(job.line);
      toBuy?.add(record);
      await summary?.add(renderCsvRow(summaryRow(command, record)));
    },
    close: async (complete: boolean): Promise<Closed> => {
      const { diagnostics, told } = (await toBuy?.close(complete)) ?? { diagnostics: [], told: [] };
      const noted = [...doubled.told().map(printable), ...unpriced.told()];
      return { diagnostics, told: [...noted, ...told] };
    },
  };
}

/** Gives the names under which what is not complete stays. */
async function closeAll(
  files: readonly (LineFile | undefined)[],
  complete: boolean,
): Promise<readonly string[]> {
  const left: string[] = [];
  for (const file of files) {
    if (file === undefined) continue;
    if (complete) await file.finish();
    else left.push(await file.leave());
  }
  return left;
}

/** Made when the last job is done, of a few figures of each. */
function createPage(command: string, options: TypedOptions) {
  const columns = summaryColumns(command);
  const rows: SummaryRow[] = [];
  return {
    add: (record: MachineRecord): true => {
      const cells = summaryRow(command, record);
      rows.push(new Map(columns.map((name, i) => [name, cells[i] ?? null])));
      return true;
    },
    text: (doubled: readonly string[], jobs: number): Promise<string> => {
      const { showUnit: unit = 'um' } = options;
      return pageOutput(batchBlocks(command, rows, { unit, doubled, jobs }), options);
    },
  };
}

/** What was cut off is not where it was wanted, and nothing of it is lost. */
function leftTexts(left: readonly string[], format: string): readonly string[] {
  if (left.length === 0) return [];
  const named = inWords(left.map((path) => printable(JSON.stringify(path))));
  const goOn = format === 'ndjson' ? '; the same with --resume goes on from there' : '';
  return [`what there is stands in ${named}${goOn}`];
}

/** What to buy is known when the last job is: the list is written whole, or not at all. */
function createReorder(path: string) {
  const book = createReorderBook();
  return {
    add: book.add,
    close: async (complete: boolean): Promise<Closed> => {
      if (!complete) {
        return { diagnostics: [], told: ['no list to buy: not every job was done'] };
      }
      const list = book.list();
      const problem = await writeOutput(path, renderCsv(reorderTable(list)));
      return {
        diagnostics: problem === undefined ? [] : [problem],
        told: reorderWords(list).map(printable),
      };
    },
  };
}
