/**
 * What of an earlier run still stands: jobs whose name, place, question and files are the same as now. The place
 * of one of a folder is a number, which is set anew; that of one of a list may be told by its record as a line.
 *
 * Of a run that was cut off it is those at its start: from the first that is not the same, all are done anew, so
 * that its file can be gone on with. Of a run that came to its end, it is any of them.
 */
import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { open } from 'node:fs/promises';
import type { MachineRecord } from '../../report/model.ts';
import { statOrNothing } from '../files/file-status.ts';
import { fileBehind } from '../files/output-files.ts';
import type { TypedOptions } from '../options.ts';
import { aboutJob, type JobLine, recordOfLine } from './about-job.ts';
import { isOfFolder, type JobTask } from './job-task.ts';
import { partName } from './line-file.ts';
import type { JobDone } from './run-job.ts';
import type { CountedJob } from './tally.ts';
import { whyRecalled } from './why-not-done.ts';

export type Standing = {
  /** Jobs that need not be done again. */
  readonly jobs: readonly CountedJob[];
  /** The first job whose record no longer stands, as its question or its files are others; undefined where all do. */
  readonly anewFrom: string | undefined;
  /** Bytes of the file that hold their records. */
  readonly bytes: number;
  readonly lines: () => AsyncIterable<JobLine>;
  /** The jobs that are still to be done. */
  readonly rest: AsyncIterable<JobTask>;
  /** What a run that came to its end has of one of them, if that still stands. */
  readonly stood: (task: JobTask) => Promise<JobDone | undefined>;
};

/** What the jobs ask now, besides their files, as a checksum; and the checksums of files that are known. */
type Now = {
  readonly question: (task: JobTask) => string;
  readonly sums: Map<string, string | null>;
};

export async function standing(
  tasks: AsyncIterable<JobTask> | readonly JobTask[],
  { resume, out = '' }: TypedOptions,
  question: Now['question'],
): Promise<Standing> {
  const left = iterated(tasks);
  if (resume !== true) return { ...nothingStands, rest: left };
  const path = await partName(out);
  const now: Now = { question, sums: new Map() };
  const { next, ...before } = await standingAtStart(path, left, now);
  return {
    ...before,
    lines: () => linesIn(path, before.bytes),
    rest: following(next, left),
    stood:
      statOrNothing(path) === undefined
        ? await finishedJobs(await fileBehind(out), now)
        : nothingStands.stood,
  };
}

const nothingStands: Omit<Standing, 'rest'> = {
  jobs: [],
  anewFrom: undefined,
  bytes: 0,
  lines: async function* () {},
  stood: async () => undefined,
};

/** Jobs at the start of a file of records that are as they were; `next` was taken from those that are left. */
async function standingAtStart(
  path: string,
  left: AsyncGenerator<JobTask, undefined>,
  now: Now,
): Promise<Pick<Standing, 'jobs' | 'anewFrom' | 'bytes'> & { readonly next: JobTask | undefined }> {
  const jobs: CountedJob[] = [];
  let bytes = 0;
  for await (const { record, end } of recordsIn(path, Number.POSITIVE_INFINITY)) {
    const { value: task, done } = await left.next();
    if (done === true) break;
    if (!(await isAsItWas(record, task, now))) {
      return { jobs, bytes, next: task, anewFrom: task.id };
    }
    jobs.push(doneBefore(record, task));
    bytes = end;
  }
  return { jobs, bytes, next: undefined, anewFrom: undefined };
}

async function* linesIn(path: string, bytes: number): AsyncIterable<JobLine> {
  if (bytes === 0) return;
  for await (const { record, line } of recordsIn(path, bytes)) yield { ...aboutJob(record), line };
}

/** Where the line of a job is in a file of records. */
type Place = { readonly start: number; readonly end: number };

/** It grows with the number of jobs, not with their records: those are read again when they are asked for. */
async function finishedJobs(path: string, now: Now): Promise<Standing['stood']> {
  const places = new Map<string, Place>();
  let start = 0;
  for await (const { record, end } of recordsIn(path, Number.POSITIVE_INFINITY)) {
    places.set(String(record['job']), { start, end });
    start = end;
  }
  return async (task) => {
    const place = places.get(task.id);
    if (place === undefined) return undefined;
    const line = await lineAt(path, place);
    const record = recordOf(line);
    if (record === undefined) return undefined;
    const { seq } = task;
    const inPlace = isOfFolder(task) ? { ...record, seq } : record;
    if (!(await isAsItWas(inPlace, task, now))) return undefined;
    const own = record['seq'] === seq ? line : withPlace(line, seq);
    return { ...aboutJob(record), ...doneBefore(record, task), seq, line: own };
  };
}

/** Only that number of it is another: quotes within a value are written `\"`, so that the first such key is its own. */
const withPlace = (line: Uint8Array, seq: number): Uint8Array =>
  new TextEncoder().encode(new TextDecoder().decode(line).replace(/"seq":\d+/, `"seq":${seq}`));

function doneBefore(record: MachineRecord, { id }: JobTask): CountedJob {
  const { status, exit } = record as unknown as Pick<JobDone, 'status' | 'exit'>;
  return { job: id, status, exit, ...whyRecalled(record) };
}

async function isAsItWas(
  record: MachineRecord,
  task: JobTask,
  { question, sums }: Now,
): Promise<boolean> {
  const isSame =
    record['job'] === task.id &&
    record['seq'] === task.seq &&
    record['settings_sha256'] === question(task);
  return isSame && filesStand(record, sums);
}

async function lineAt(path: string, { start, end }: Place): Promise<Uint8Array> {
  const handle = await open(path);
  try {
    return (await handle.read(new Uint8Array(end - start), 0, end - start, start)).buffer;
  } finally {
    await handle.close();
  }
}

async function* iterated<T>(values: AsyncIterable<T> | readonly T[]): AsyncGenerator<T, undefined> {
  yield* values;
  return undefined;
}

async function* following(
  first: JobTask | undefined,
  rest: AsyncGenerator<JobTask>,
): AsyncIterable<JobTask> {
  if (first !== undefined) yield first;
  yield* rest;
}

type StandingRecord = {
  readonly record: MachineRecord;
  readonly line: Uint8Array;
  /** Bytes of the file up to the end of its line. */
  readonly end: number;
};

/** Whole lines that are records, from the start of the file; it ends at the first that is none. */
async function* recordsIn(path: string, most: number): AsyncIterable<StandingRecord> {
  let held = Buffer.alloc(0);
  let end = 0;
  for await (const chunk of chunksOf(path)) {
    held = Buffer.concat([held, chunk]);
    for (let at = held.indexOf(0x0a); at !== -1; at = held.indexOf(0x0a)) {
      const line = held.subarray(0, at + 1);
      held = held.subarray(at + 1);
      end += line.length;
      const record = recordOf(line);
      if (record === undefined || end > most) return;
      yield { record, line, end };
    }
  }
}

/** Nothing where the file cannot be read: then nothing stands. */
async function* chunksOf(path: string): AsyncIterable<Buffer> {
  try {
    for await (const chunk of createReadStream(path)) yield chunk as Buffer;
  } catch (problem) {
    if (!(problem instanceof Error && 'syscall' in problem)) throw problem;
  }
}

function recordOf(line: Uint8Array): MachineRecord | undefined {
  try {
    const record: MachineRecord | null = recordOfLine(line);
    return record?.['schema'] === 'leastcut/batch/1' ? record : undefined;
  } catch {
    return undefined;
  }
}

/** Whether the files that a record was made from are what they were; `sums` keeps what is known. */
async function filesStand(
  record: MachineRecord,
  sums: Map<string, string | null>,
): Promise<boolean> {
  const inputs = Array.isArray(record['inputs']) ? record['inputs'] : [];
  for (const { file, sha256 } of inputs as { file: string; sha256: string | null }[]) {
    const known = sums.get(file);
    const now = known === undefined ? await sumOf(file) : known;
    sums.set(file, now);
    if (now !== sha256) return false;
  }
  return true;
}

/** Null where the file cannot be read. */
async function sumOf(path: string): Promise<string | null> {
  const hash = createHash('sha256');
  try {
    for await (const chunk of createReadStream(path)) hash.update(chunk as Buffer);
    return hash.digest('hex');
  } catch {
    return null;
  }
}
