/**
 * Readings in a form that is read whole, such as rows of vehicles in turn: a job for each vehicle in it.
 *
 * What is wrong with the rows of one vehicle is wrong with its job alone: the file is read again without
 * them. Where it cannot be told whose a fault is, or it is of the file as a whole, there is no job.
 */
import { concerning, type Diagnostic, hasErrors } from '../../base/diagnostics.ts';
import { fileStem } from '../../base/file-name.ts';
import type { IntakeOptions } from '../../intake/intake-options.ts';
import { type RowsByVehicle, rowsByVehicle } from '../../intake/rows-by-vehicle.ts';
import type { Answer, Command, World } from '../command.ts';
import { exitCodes } from '../exit-code.ts';
import type { TypedOptions } from '../options.ts';
import { createJobWorlds, type LoadedSums } from './job-world.ts';
import {
  type Ended,
  finished,
  inputsOf,
  type JobDone,
  type JobSetup,
  settingsSumOf,
  stopped,
  sumOfRecord,
} from './run-job.ts';
import { type Faults, faultsByVehicle } from './vehicle-faults.ts';

export type WholeJobs = {
  readonly jobs: readonly JobDone[];
  readonly diagnostics: readonly Diagnostic[];
};

/** All of them, or what is wrong with the file. */
export async function wholeJobs(
  { readings: name, intake }: { readonly readings: string; readonly intake: IntakeOptions },
  command: Command,
  options: TypedOptions,
  { setup, load }: { readonly setup: JobSetup; readonly load: World['load'] },
): Promise<WholeJobs> {
  const { found, ...around } = setup;
  const worlds = createJobWorlds(around);
  const sums: LoadedSums = new Map();
  const ask = (faults: Faults): Promise<Answer> =>
    command.run([name], options, worlds.worldOf(sums, leavingOut(faults, name, load)));
  const answered = await answerWithout(ask, async () => {
    const { file } = await load(name);
    return file === undefined ? undefined : rowsByVehicle(file, intake);
  });
  if ('refused' in answered) return { jobs: [], diagnostics: answered.refused };
  const settingsSum = settingsSumOf(command.name, { options }, found);
  const inputs = inputsOf(
    sums,
    { operands: [name], options },
    around.surroundings.workingDirectory,
  );
  const jobs = endedJobs(answered, fileStem(name)).map(({ job, ended }, i) =>
    finished({ ...{ job, seq: i + 1, command: command.name, settingsSum, inputs }, ...ended }),
  );
  return { jobs, diagnostics: [] };
}

type Answered = {
  readonly answer: Pick<Answer, 'records' | 'diagnostics' | 'answersNo' | 'readings'>;
  readonly faults: Faults;
  /** The vehicles in the order of their rows; empty where nobody had to ask. */
  readonly order: readonly string[];
};

const nothing: Answered['answer'] = { records: () => [], diagnostics: [] };

/** Asked again without the vehicles that have a fault of their own, until the others have none. */
async function answerWithout(
  ask: (faults: Faults) => Promise<Answer>,
  rowsOf: () => Promise<RowsByVehicle | undefined>,
): Promise<Answered | { readonly refused: readonly Diagnostic[] }> {
  let faults: Faults = { byVehicle: new Map(), lines: new Set() };
  let rows: RowsByVehicle | undefined;
  let answer = await ask(faults);
  while (hasErrors(answer.diagnostics)) {
    rows ??= await rowsOf();
    const more = rows === undefined ? undefined : faultsByVehicle(answer.diagnostics, rows, faults);
    if (rows === undefined || more === undefined) {
      return { refused: [...[...faults.byVehicle.values()].flat(), ...answer.diagnostics] };
    }
    faults = more;
    if (faults.byVehicle.size === rows.size) {
      return { answer: nothing, faults, order: [...rows.keys()] };
    }
    answer = await ask(faults);
  }
  return { answer, faults, order: [...(rows?.keys() ?? [])] };
}

const leavingOut =
  ({ lines }: Faults, name: string, load: World['load']): World['load'] =>
  async (wanted) => {
    const loaded = await load(wanted);
    return wanted !== name || loaded.file === undefined
      ? loaded
      : { ...loaded, file: { ...loaded.file, leftOut: lines } };
  };

/** Those that are answered and those that have a fault, in the order of the file. */
function endedJobs(
  { answer, faults, order }: Answered,
  stem: string,
): readonly { readonly job: string; readonly ended: Ended }[] {
  const done = answer.records().map((record, i) => {
    const vehicle = typeof record['vehicle'] === 'string' ? record['vehicle'] : null;
    const exit = answer.answersNo?.[i] === true ? exitCodes.answerIsNo : exitCodes.done;
    const diagnostics = concerning(vehicle, answer.diagnostics);
    const readingsSum = sumOfRecord(answer, i);
    const ended: Ended = { status: 'done', exit, diagnostics, readingsSum, result: record };
    return { job: vehicle ?? stem, ended };
  });
  const wrong = [...faults.byVehicle].map(([job, diagnostics]) => ({
    job,
    ended: stopped(diagnostics),
  }));
  return wrong.length === 0
    ? done
    : [...done, ...wrong].sort((a, b) => order.indexOf(a.job) - order.indexOf(b.job));
}
