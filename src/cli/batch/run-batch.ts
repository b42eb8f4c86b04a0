/** A list of jobs → a record for each, in the order of the list, and how it went. */
import { availableParallelism } from 'node:os';
import { type Diagnostic, hasErrors } from '../../base/diagnostics.ts';
import type { Command, StreamedRun, World } from '../command.ts';
import { exitCodes } from '../exit-code.ts';
import type { OptionName, TypedOptions } from '../options.ts';
import { cannotWrite } from '../output-files.ts';
import { seekSettingsFiles } from '../settings-files.ts';
import { type BatchOutput, openOutput } from './batch-output.ts';
import {
  foreignOption,
  outputAmongInputs,
  unfinishedOutput,
  withoutOutput,
} from './batch-problems.ts';
import { inOrder, type Runner } from './in-order.ts';
import type { JobTask } from './job-task.ts';
import { type JobList, openList } from './open-list.ts';
import { showProgress } from './progress.ts';
import { standing } from './resume.ts';
import { createJobRunner, finished, type JobSetup, settingsSumOf } from './run-job.ts';
import { createTally, type Tally } from './tally.ts';
import { wholeJobs } from './whole-jobs.ts';
import { startWorkers, traceOf, type WorkerAnswer } from './workers.ts';

/** Options of the batch itself; the others are those of its jobs. */
const ofBatch: readonly OptionName[] = [
  'command',
  'workers',
  'failFast',
  'resume',
  'summary',
  'out',
  'force',
  'format',
  'color',
  'quiet',
  'verbose',
];

export async function runBatch(
  list: string,
  options: TypedOptions,
  world: World,
): Promise<StreamedRun> {
  const command = await world.command(options.command ?? usualCommand);
  const typed = Object.fromEntries(
    Object.entries(options).filter(([name]) => !ofBatch.includes(name as OptionName)),
  ) as TypedOptions;
  const problem =
    foreignOption(command, typed, world) ??
    withoutOutput(options) ??
    (await unfinishedOutput(options));
  if (problem !== undefined) return stopped([problem]);
  const opened = await openList(list, command, typed, world);
  if (opened.value === undefined || hasErrors(opened.diagnostics)) {
    return stopped(opened.diagnostics);
  }
  const { value: jobs } = opened;
  const clash = await outputAmongInputs(jobs, options, world);
  if (clash !== undefined) return stopped([...opened.diagnostics, clash]);
  const setup = await setupOf(world);
  const ended =
    jobs.kind === 'whole'
      ? await doWhole(jobs.readings, { command, options, setup }, typed, world.load)
      : await doJobs({ command, options, setup, list: jobs });
  return { ...ended, diagnostics: [...opened.diagnostics, ...ended.diagnostics] };
}

const stopped = (diagnostics: readonly Diagnostic[]): StreamedRun => ({
  diagnostics,
  exit: exitCodes.data,
  told: [],
});

export const usualCommand = 'quote';

async function setupOf({ surroundings, fromEnvironment }: World): Promise<JobSetup> {
  const sought = await seekSettingsFiles(surroundings);
  return {
    surroundings: { ...surroundings, environment: { ...surroundings.environment } },
    fromEnvironment,
    found: sought.filter((file) => file.found).map(({ shown }) => shown),
  };
}

type Terms = {
  readonly command: Command;
  readonly options: TypedOptions;
  readonly setup: JobSetup;
};
type Run = Terms & { readonly list: Extract<JobList, { readonly kind: 'jobs' }> };

/** Records are written as for any other list, and none stands from before. */
async function doWhole(
  readings: string,
  { command, options, setup }: Terms,
  typed: TypedOptions,
  load: World['load'],
): Promise<StreamedRun> {
  const { jobs, diagnostics } = await wholeJobs(readings, command, typed, { setup, load });
  if (hasErrors(diagnostics)) return stopped(diagnostics);
  const tally = createTally();
  return guarded(options, async () => {
    const output = await openOutput(command.name, options, 0);
    for (const job of jobs) {
      tally.add(job);
      if (!(await output.add(job.line))) break;
    }
    await output.close(true);
    return { diagnostics, exit: tally.exit(), told: tally.summary(jobs.length, 0) };
  });
}

/** What the system refuses is an output that cannot be written. */
async function guarded(
  { out = 'standard output' }: TypedOptions,
  work: () => Promise<StreamedRun>,
): Promise<StreamedRun> {
  try {
    return await work();
  } catch (problem) {
    if (!(problem instanceof Error && 'syscall' in problem)) throw problem;
    const { path = out } = problem as NodeJS.ErrnoException;
    return stopped([cannotWrite(path, problem)]);
  }
}

async function doJobs({ command, options, setup, list }: Run): Promise<StreamedRun> {
  const tally = createTally();
  const progress = showProgress(list.count, options);
  const question = (task: JobTask): string => settingsSumOf(command.name, task, setup.found);
  const before = await standing(list.tasks, options, question);
  for (const one of before.jobs) tally.add(one);
  const ended = await guarded(options, async () => {
    const output = await openOutput(command.name, options, before.bytes);
    for await (const line of before.lines()) await output.recall(line);
    const complete = await workThrough({ command, options, setup, list }, before.rest, {
      output,
      tally,
      tell: () => progress.show(tally.seen()),
    });
    const trouble = list.afterwards();
    await output.close(complete && trouble.length === 0);
    return {
      diagnostics: trouble,
      exit: tally.exit(),
      told: tally.summary(list.count, before.jobs.length),
    };
  });
  progress.end();
  return ended;
}

type Ends = {
  readonly output: BatchOutput;
  readonly tally: Tally;
  readonly tell: () => void;
};

/** True when every job came to an end and was written. */
async function workThrough(
  { command, options, setup, list }: Run,
  tasks: AsyncIterable<JobTask>,
  { output, tally, tell }: Ends,
): Promise<boolean> {
  const count = workersFor(list.count, options);
  const workers = count === 1 ? undefined : startWorkers(count, { command: command.name, setup });
  const runners = workers?.runners ?? [alone(command, setup)];
  let complete = true;
  try {
    await inOrder(tasks, withTask(runners), aheadOfEach * count, async ({ task, answer }) => {
      const done = 'done' in answer ? answer.done : broken(answer.broke, task, { command, setup });
      tally.add(done);
      tell();
      complete &&= await output.add(done.line);
      complete &&= !(options.failFast === true && done.status !== 'done');
      return complete;
    });
  } finally {
    await workers?.stop();
  }
  return complete;
}

/** Records that may wait for their turn, for each worker. */
const aheadOfEach = 4;
const mostByDefault = 8;

const workersFor = (jobs: number, { workers }: TypedOptions): number =>
  Math.max(1, Math.min(jobs, workers ?? Math.min(availableParallelism(), mostByDefault)));

const alone = (command: Command, setup: JobSetup): Runner<JobTask, WorkerAnswer> => {
  const run = createJobRunner(command, setup);
  return (task) =>
    run(task).then(
      (done) => ({ done }),
      (problem: unknown) => ({ broke: traceOf(problem) }),
    );
};

type Answered = { readonly task: JobTask; readonly answer: WorkerAnswer };

const withTask = (
  runners: readonly Runner<JobTask, WorkerAnswer>[],
): readonly Runner<JobTask, Answered>[] =>
  runners.map((run) => async (task) => ({ task, answer: await run(task) }));

/** A fault of ours in one job: it is told, and the others go on. */
function broken(trace: string, task: JobTask, { command, setup }: Pick<Run, 'command' | 'setup'>) {
  process.stderr.write(
    `leastcut: job ${JSON.stringify(task.id)}: a bug of ours, please report it with the input\n${trace}\n`,
  );
  return finished({
    ...{ job: task.id, seq: task.seq, command: command.name, status: 'failed' },
    ...{ exit: exitCodes.bug, inputs: [], diagnostics: [], result: null },
    settingsSum: settingsSumOf(command.name, task, setup.found),
  });
}
