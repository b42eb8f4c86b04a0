/**
 * A folder as a list of jobs: one for each name in it, in order of the names.
 *
 * `coupe.job.json` says what is known of the job "coupe", `coupe.csv` holds its readings; beside them
 * may lie `coupe.defects.csv`, `coupe.spots.csv` and `coupe.gauge.json`. A file of readings alone is
 * a job as well. Folders within it are not looked into, and results that an earlier run left there are no jobs: both
 * are told, as is a file that may hold readings in a form that is none of ours, or that belongs to no job by its name.
 */
import { open, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { groupBy } from '../../base/group-by.ts';
import { ownJson, ownResult } from '../../base/own-files.ts';
import type { BatchEntry } from '../../tasks/batch/batch-jobs.ts';
import { statOrNothing } from '../files/file-status.ts';

/** What lies beside the readings of a job, by the end of its name. */
const beside: Readonly<Record<string, string>> = {
  '.job.json': 'job_file',
  '.defects.csv': 'defects',
  '.spots.csv': 'spots',
  '.gauge.json': 'gauge',
};
const readings = /\.(?:csv|tsv|txt)$/i;

/** What a command wrote, by what stands in it. */
export type ResultFile = { readonly path: string; readonly called: string };

/** By name: folders within, files that may be readings in another form, and what belongs to a job and to none of these. */
export type PassedOver = {
  readonly folders: readonly string[];
  readonly files: readonly string[];
  readonly unused: readonly string[];
};

/** What people keep readings in that is no table of text. */
const otherForms = /\.(?:xlsx?|xlsm|ods|numbers|docx?|odt|rtf|pdf|dat|log|prn|xml|zip|gz)$/i;

export async function folderJobs(
  folder: string,
  columns: readonly string[],
): Promise<{
  readonly entries: readonly BatchEntry[];
  readonly results: readonly ResultFile[];
  readonly passedOver: PassedOver;
}> {
  const all = (await readdir(folder, { withFileTypes: true })).filter(
    ({ name }) => !name.startsWith('.'),
  );
  const folders = all.filter((one) => one.isDirectory()).map(({ name }) => name);
  const named = all.filter((one) => !one.isDirectory()).map(({ name }) => name);
  const pipes = named.filter((name) => isEndless(join(folder, name)));
  const endless = new Set(pipes);
  const names = named.filter((name) => !endless.has(name));
  const results: ResultFile[] = [];
  const others: string[] = [];
  for (const name of names.sort(byCode)) {
    const path = join(folder, name);
    const called = readings.test(name) ? ownResult(await beginningOf(path)) : undefined;
    if (called === undefined) others.push(name);
    else results.push({ path, called });
  }
  const files = [...others.filter((name) => otherForms.test(name)), ...pipes].sort(byCode);
  const entries = jobsAmong(folder, others, columns);
  const unused = await unusedAmong(folder, others, new Set(entries.map(({ id }) => id)));
  return { entries, results, passedOver: { folders: folders.sort(byCode), files, unused } };
}

/** A pipe or device, by a link too: to open it may wait for ever. */
function isEndless(path: string): boolean {
  const status = statOrNothing(path);
  return status !== undefined && !status.isFile() && !status.isDirectory();
}

/** What is called as if it lay beside readings that are not there, and job files that are not called after any. */
async function unusedAmong(
  folder: string,
  names: readonly string[],
  jobs: ReadonlySet<string>,
): Promise<readonly string[]> {
  const unused: string[] = [];
  for (const name of names) {
    const [part] = partOf(name);
    const isUnused =
      part === undefined
        ? /\.json$/i.test(name) && isJobFile(await beginningOf(join(folder, name)))
        : !jobs.has(part.id);
    if (isUnused) unused.push(name);
  }
  return unused;
}

const isJobFile = (beginning: string): boolean => ownJson(beginning)?.called === 'a job file';

/** Bytes that hold the names of the columns. */
const HEAD = 4096;

/** As far as it can be read: a job says itself what is wrong with its file. */
async function beginningOf(path: string): Promise<string> {
  const handle = await open(path).catch(() => undefined);
  if (handle === undefined) return '';
  try {
    const { buffer, bytesRead } = await handle.read(new Uint8Array(HEAD), 0, HEAD, 0);
    return new TextDecoder('latin1').decode(buffer.subarray(0, bytesRead));
  } catch {
    return '';
  } finally {
    await handle.close();
  }
}

/** The same from the names of the files. */
export function jobsAmong(
  folder: string,
  names: readonly string[],
  columns: readonly string[],
): readonly BatchEntry[] {
  const parts = names.filter((name) => !name.startsWith('.')).flatMap(partOf);
  return [...groupBy(parts, ({ id }) => id)]
    .filter(([, own]) => own.some(makesJob))
    .sort(([one], [other]) => byCode(one, other))
    .map(([id, own]) => jobOf(id, own, { folder, columns }));
}

function jobOf(
  id: string,
  own: readonly Part[],
  { folder, columns }: { readonly folder: string; readonly columns: readonly string[] },
): BatchEntry {
  const at = { file: folder };
  const read = own.filter(({ column }) => column === 'readings').map(({ name }) => name);
  const said = own.filter(({ column }) => columns.includes(column) && column !== 'readings');
  // A job without readings is one whose file is missing: its record says so.
  const files = read.length === 0 ? [`${id}.csv`] : read.sort(byCode);
  return {
    id,
    at,
    readings: files.map((text) => ({ text, at })),
    said: new Map(said.map(({ column, name }) => [column, [{ text: name, at }]])),
  };
}

type Part = { readonly id: string; readonly column: string; readonly name: string };

const makesJob = ({ column }: Part): boolean => column === 'readings' || column === 'job_file';

function partOf(name: string): readonly Part[] {
  const ending = Object.keys(beside).find((one) => name.toLowerCase().endsWith(one));
  if (ending !== undefined) {
    return [{ id: name.slice(0, -ending.length), column: beside[ending] ?? '', name }];
  }
  return readings.test(name) ? [{ id: name.replace(readings, ''), column: 'readings', name }] : [];
}

/** By code unit: the same on every machine. */
const byCode = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
