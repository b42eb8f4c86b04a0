/** Threads that run jobs, each one job at a time. */
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Runner } from './in-order.ts';
import type { JobTask } from './job-task.ts';
import type { JobDone, JobSetup } from './run-job.ts';

/** What a thread is told at its start. */
export type WorkerStart = { readonly command: string; readonly setup: JobSetup };
/** What a thread answers: what came of the job, or what broke on our side. */
export type WorkerAnswer = { readonly done: JobDone } | { readonly broke: string };

export type Workers = {
  readonly runners: readonly Runner<JobTask, WorkerAnswer>[];
  readonly stop: () => Promise<void>;
};

/** The build puts it beside the script that this file ends up in. */
const entry = join(import.meta.dirname, 'batch-worker.js');

/**
 * Where more than 2048 are allowed, V8 lets a heap grow to four times what is in use before it clears up; where
 * a little less, to twice. A single job of a large file still has room.
 */
const MOST_HEAP_MB = 2000;
/**
 * What a survey leaves behind is gone with the next: more room for what is young is memory and no speed. A plan or a
 * quote keeps what its planner looked up as long as a car lasts, and a small room costs it a quarter of its time. Half
 * of the usual room (24 MB) spares 11 MB of 300, and all is cleared up more than twice as often.
 */
const youngLimit = (command: string): { readonly maxYoungGenerationSizeMb?: number } =>
  command === 'survey' ? { maxYoungGenerationSizeMb: 12 } : {};

export function startWorkers(count: number, start: WorkerStart): Workers {
  const running = new Set<Worker>();
  const create = (): Worker => {
    const worker = new Worker(entry, {
      workerData: start,
      resourceLimits: { maxOldGenerationSizeMb: MOST_HEAP_MB, ...youngLimit(start.command) },
    });
    running.add(worker);
    return worker;
  };
  const runnerOf = (first: Worker): Runner<JobTask, WorkerAnswer> => {
    let worker = first;
    return async (task) => {
      const answer = await answerOf(worker, task);
      if ('done' in answer || !answer.gone) return answer;
      running.delete(worker);
      worker = create();
      return answer;
    };
  };
  return {
    runners: Array.from({ length: count }, () => runnerOf(create())),
    stop: async () => {
      await Promise.all([...running].map((worker) => worker.terminate()));
    },
  };
}

/** A thread that ends without an answer is gone, and another takes its place. */
const answerOf = (
  worker: Worker,
  task: JobTask,
): Promise<{ readonly done: JobDone } | { readonly broke: string; readonly gone: boolean }> =>
  new Promise((resolve) => {
    const end = (answer: Parameters<typeof resolve>[0]): void => {
      worker.off('message', onMessage).off('error', onError).off('exit', onExit);
      resolve(answer);
    };
    const onMessage = (answer: WorkerAnswer): void =>
      end('done' in answer ? answer : { ...answer, gone: false });
    const onError = (problem: Error): void => end({ broke: traceOf(problem), gone: true });
    const onExit = (code: number): void =>
      end({ broke: `its thread ended with code ${code}`, gone: true });
    worker.on('message', onMessage).on('error', onError).on('exit', onExit);
    worker.postMessage(task);
  });

export const traceOf = (problem: unknown): string =>
  problem instanceof Error ? (problem.stack ?? problem.message) : String(problem);
