/** The entry of a thread that runs jobs of a batch. */
import { parentPort, workerData } from 'node:worker_threads';
import type { JobTask } from './batch/job-task.ts';
import { createJobRunner } from './batch/run-job.ts';
import { traceOf, type WorkerAnswer, type WorkerStart } from './batch/workers.ts';
import { loadCommand } from './commands.ts';

const { command: name, setup } = workerData as WorkerStart;
if (parentPort === null) throw new Error('this is no thread');
const port = parentPort;
const run = createJobRunner(await loadCommand(name), setup);

port.on('message', async (task: JobTask) => {
  const answer = await run(task).then(
    (done): WorkerAnswer => ({ done }),
    (problem: unknown): WorkerAnswer => ({ broke: traceOf(problem) }),
  );
  port.postMessage(answer);
});
