/** One job: its command on its files, as if it had been typed, and what came of it as a record. */
import { createHash } from 'node:crypto';
import { isAbsolute, relative } from 'node:path';
import { type Diagnostic, error, hasErrors } from '../../base/diagnostics.ts';
import { saidFile } from '../../base/file-name.ts';
import { renderNdjson } from '../../render/json.ts';
import { batchRecord, type FinishedJob, type JobStatus } from '../../report/batch/batch-record.ts';
import { type Answer, answerIsNo, type Command, type World } from '../command.ts';
import { exitCodeOf, exitCodes } from '../exit-code.ts';
import { loadFile } from '../files/files.ts';
import { version } from '../version.ts';
import { aboutJob, type JobLine } from './about-job.ts';
import { filesOfTask, isOfFolder, type JobTask, placedInList } from './job-task.ts';
import { createJobWorlds, type JobWorlds, type LoadedSums } from './job-world.ts';
import { readingsSum } from './readings-sum.ts';
import { toPiece } from './vehicle-part.ts';
import { type WhyNotDone, whyNotDone } from './why-not-done.ts';

/** What a job came to, ready to be written. */
export type JobDone = Pick<FinishedJob, 'job' | 'seq' | 'status' | 'exit'> & WhyNotDone & JobLine;

export type JobRunner = (task: JobTask) => Promise<JobDone>;

/** What holds for all jobs; `found` are the settings files that nobody named, as they are shown. */
export type JobSetup = Pick<World, 'surroundings' | 'fromEnvironment'> & {
  readonly found: readonly string[];
};

export function createJobRunner(command: Command, { found, ...around }: JobSetup): JobRunner {
  const worlds = createJobWorlds(around);
  return async (task) => {
    const settingsSum = settingsSumOf(command.name, task, found);
    const sums: LoadedSums = new Map();
    const ended = await attempt(
      command,
      task,
      (load) => worlds.worldOf(sums, load, task.fromList),
      worlds.same,
    );
    return finished({
      ...{ job: task.id, seq: task.seq, command: command.name, settingsSum },
      inputs: inputsOf(sums, task, around.surroundings.workingDirectory),
      ...ended,
    });
  };
}

export function finished(job: FinishedJob): JobDone {
  const record = batchRecord(job, version);
  return {
    ...aboutJob(record),
    ...{ seq: job.seq, status: job.status, exit: job.exit },
    line: new TextEncoder().encode(renderNdjson([record])),
    ...whyNotDone(job.diagnostics),
  };
}

/** The same question is asked again where this is the same, and so are the files. */
export const settingsSumOf = (
  command: string,
  { options }: Pick<JobTask, 'options'>,
  found: readonly string[],
): string => {
  const sorted = Object.entries(options).sort(([a], [b]) => (a < b ? -1 : 1));
  return createHash('sha256')
    .update(JSON.stringify([version, command, sorted, found]))
    .digest('hex');
};

export type Ended = Pick<FinishedJob, 'status' | 'exit' | 'diagnostics' | 'readingsSum' | 'result'>;

async function attempt(
  command: Command,
  task: JobTask,
  worldWith: (load: World['load']) => World,
  same: JobWorlds['same'],
): Promise<Ended> {
  if (task.problems.length > 0) return stopped(task.problems);
  const answer = await command.run(
    task.operands,
    same(task.options, task.fromList ?? new Map()),
    worldWith(loadOf(task)),
  );
  const records = answer.records();
  const [record, second] = records;
  const told = placedInList(answer.diagnostics, task);
  const diagnostics =
    second === undefined ? told : [...told, severalVehicles(records.length, task)];
  if (hasErrors(diagnostics) || record === undefined) return stopped(diagnostics);
  const exit = answerIsNo(answer) ? exitCodes.answerIsNo : exitCodes.done;
  return {
    ...{ status: 'done', exit, diagnostics, result: record },
    readingsSum: sumOfRecord(answer, 0),
  };
}

/** Of the record at a place among those of the answer. */
export function sumOfRecord({ readings }: Pick<Answer, 'readings'>, at: number): string | null {
  const own = readings?.()[at];
  return own === undefined ? null : readingsSum(own);
}

export function stopped(diagnostics: readonly Diagnostic[]): Ended {
  const exit = exitCodeOf(diagnostics);
  return { status: statusOf(exit), exit, diagnostics, readingsSum: null, result: null };
}

const statusOf = (exit: number): JobStatus =>
  exit === exitCodes.usage || exit === exitCodes.data || exit === exitCodes.settings
    ? 'refused'
    : 'failed';

function severalVehicles(count: number, task: JobTask): Diagnostic {
  const file = saidFile(task.operands[0] ?? '');
  return error(
    'usage-several-vehicles',
    `the readings hold ${count} vehicles, and a job is of one`,
    {
      hint: isOfFolder(task)
        ? `give each a file of its own in the folder, or name this file in place of the folder: batch ${file}`
        : 'name one in the column vehicle, in JSON by the key "vehicle", or give a file of vehicles as the list itself',
    },
  );
}

/** The rows of a vehicle stand for the file they come from. */
function loadOf({ operands: [name = ''], part }: JobTask): World['load'] {
  if (part === undefined) return loadFile;
  const { sha256 } = part;
  const file = { name, bytes: new Uint8Array(), sha256, piece: toPiece(name, part) };
  return async (wanted) => (wanted === name ? { file, diagnostics: [] } : loadFile(wanted));
}

/**
 * Files as the job names them, then those that were found, by name: the order in which a disk answers says
 * nothing. A path that nobody typed is private: it is shown from the working directory.
 */
export function inputsOf(
  sums: LoadedSums,
  task: Pick<JobTask, 'operands' | 'options'>,
  folder: string | undefined,
): FinishedJob['inputs'] {
  const typed = [...new Set(filesOfTask(task))].filter((name) => sums.has(name));
  const found = [...sums.keys()].filter((name) => !typed.includes(name)).sort();
  return [
    ...typed.map((name) => ({ name, file: name })),
    ...found.map((name) => ({
      name,
      file: isAbsolute(name) ? relative(folder ?? '', name) : name,
    })),
  ].map(({ name, file }) => ({ file, sha256: sums.get(name) ?? null }));
}
