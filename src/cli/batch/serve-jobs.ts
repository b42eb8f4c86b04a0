/** A thread of a batch: runs the jobs it is handed, one after the other. */
import { parentPort, workerData } from 'node:worker_threads';
import { loadCommand } from '../commands.ts';
import type { JobTask } from './job-task.ts';
import { createJobRunner } from './run-job.ts';
import { traceOf, type WorkerAnswer, type WorkerStart } from './workers.ts';

export async function serveJobs(): Promise<void> {
  const { command: name, setup } = workerData as WorkerStart;
  if (parentPort === null) throw new Error('this is no thread');
  const port = parentPort;
  const run = createJobRunner(await loadCommand(name), setup);

  port.on('message', async (task: JobTask) => {
    const answer = await run(task).then(
      (done): WorkerAnswer => ({ done }),
      (problem: unknown): WorkerAnswer => ({ broke: traceOf(problem) }),
    );
    port.postMessage(answer, 'done' in answer ? [answer.done.line.buffer as ArrayBuffer] : []);
  });
}
