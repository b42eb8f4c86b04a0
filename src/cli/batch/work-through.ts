/** Jobs handed to the workers, and their records written in the order of the jobs. */
import { availableParallelism } from 'node:os';
import type { Command } from '../command.ts';
import { exitCodes } from '../exit-code.ts';
import { writeError } from '../files/standard-output.ts';
import type { TypedOptions } from '../options.ts';
import type { BatchOutput } from './batch-output.ts';
import { inOrder, type Runner } from './in-order.ts';
import type { JobTask } from './job-task.ts';
import type { JobList } from './open-list.ts';
import {
  createJobRunner,
  finished,
  type JobDone,
  type JobSetup,
  settingsSumOf,
} from './run-job.ts';
import type { Tally } from './tally.ts';
import { startWorkers, traceOf, type WorkerAnswer } from './workers.ts';

type Work = {
  readonly command: Command;
  readonly options: TypedOptions;
  readonly setup: JobSetup;
  readonly list: Pick<Extract<JobList, { readonly kind: 'jobs' }>, 'count'>;
};

type Ends = {
  readonly output: BatchOutput;
  readonly tally: Tally;
  readonly tell: () => void;
  /** What need not be done, as an earlier run has it. */
  readonly stood: (task: JobTask) => Promise<JobDone | undefined>;
};

/** True when every job came to an end and was written. */
export async function workThrough(
  { command, options, setup, list }: Work,
  tasks: AsyncIterable<JobTask>,
  { output, tally, tell, stood }: Ends,
): Promise<boolean> {
  const count = workersFor(list.count, options);
  const workers = count === 1 ? undefined : startWorkers(count, { command: command.name, setup });
  const runners = workers?.runners ?? [alone(command, setup)];
  let complete = true;
  try {
    await inOrder(
      tasks,
      withTask(runners.map((run) => unlessStood(run, stood))),
      aheadOfEach * count,
      async ({ task, answer }) => {
        const done =
          'done' in answer ? answer.done : broken(answer.broke, task, { command, setup });
        tally.add(done);
        tell();
        complete &&= await output.add(done);
        complete &&= !(options.failFast === true && done.status !== 'done');
        return complete;
      },
    );
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

const unlessStood =
  (run: Runner<JobTask, WorkerAnswer>, stood: Ends['stood']): Runner<JobTask, WorkerAnswer> =>
  async (task) => {
    const done = await stood(task);
    return done === undefined ? run(task) : { done };
  };

type Answered = { readonly task: JobTask; readonly answer: WorkerAnswer };

const withTask = (
  runners: readonly Runner<JobTask, WorkerAnswer>[],
): readonly Runner<JobTask, Answered>[] =>
  runners.map((run) => async (task) => ({ task, answer: await run(task) }));

/** A fault of ours in one job: it is told, and the others go on. */
function broken(trace: string, task: JobTask, { command, setup }: Pick<Work, 'command' | 'setup'>) {
  writeError(
    `leastcut: job ${JSON.stringify(task.id)}: a bug of ours, please report it with the input\n${trace}\n`,
  );
  return finished({
    ...{ job: task.id, seq: task.seq, command: command.name, status: 'failed' },
    ...{ exit: exitCodes.bug, inputs: [], diagnostics: [], readingsSum: null, result: null },
    settingsSum: settingsSumOf(command.name, task, setup.found),
  });
}
