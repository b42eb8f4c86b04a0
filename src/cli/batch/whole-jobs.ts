/** Readings in a form that is read whole, such as rows of vehicles in turn: a job for each vehicle in it. */
import { concerning, type Diagnostic, hasErrors } from '../../base/diagnostics.ts';
import { fileStem } from '../../base/file-name.ts';
import type { Command, World } from '../command.ts';
import { exitCodes } from '../exit-code.ts';
import type { TypedOptions } from '../options.ts';
import { createJobWorlds, type LoadedSums } from './job-world.ts';
import { finished, type JobDone, type JobSetup, settingsSumOf } from './run-job.ts';

export type WholeJobs = {
  readonly jobs: readonly JobDone[];
  readonly diagnostics: readonly Diagnostic[];
};

/** All of them, or what is wrong with the file. */
export async function wholeJobs(
  name: string,
  command: Command,
  options: TypedOptions,
  { setup: { found, ...around }, load }: { readonly setup: JobSetup; readonly load: World['load'] },
): Promise<WholeJobs> {
  const worlds = createJobWorlds(around);
  const sums: LoadedSums = new Map();
  const answer = await command.run([name], options, worlds.worldOf(sums, load));
  if (hasErrors(answer.diagnostics)) return { jobs: [], diagnostics: answer.diagnostics };
  const settingsSum = settingsSumOf(command.name, { options }, found);
  const jobs = answer.records.map((record, i) => {
    const vehicle = typeof record['vehicle'] === 'string' ? record['vehicle'] : null;
    return finished({
      job: vehicle ?? fileStem(name),
      ...{ seq: i + 1, command: command.name, status: 'done', settingsSum },
      exit: answer.answersNo?.[i] === true ? exitCodes.answerIsNo : exitCodes.done,
      inputs: [...sums].map(([file, sha256]) => ({ file, sha256 })),
      ...{ diagnostics: concerning(vehicle, answer.diagnostics), result: record },
    });
  });
  return { jobs, diagnostics: [] };
}
