/** A list of jobs → a record for each, in the order of the list, and how it went. */
import { type Diagnostic, hasErrors } from '../../base/diagnostics.ts';
import { renderCsv } from '../../render/csv.ts';
import { printable } from '../../render/printable.ts';
import { summaryColumns } from '../../report/batch/batch-summary.ts';
import { type ChosenColumns, chosenColumns, namesOf } from '../chosen-fields.ts';
import type { Command, StreamedRun, World } from '../command.ts';
import { exitCodes } from '../exit-code.ts';
import { cannotWrite, writeOutput } from '../files/output-files.ts';
import { writeToReader } from '../files/standard-output.ts';
import { seekSettingsFiles } from '../load/settings-files.ts';
import type { OptionName, TypedOptions } from '../options.ts';
import { openOutput } from './batch-output.ts';
import {
  besideToReader,
  foreignOption,
  outputAmongInputs,
  reorderOfOthers,
  severalInputs,
  unfinishedOutput,
  withoutOutput,
} from './batch-problems.ts';
import { commonSettings } from './common-settings.ts';
import type { JobTask } from './job-task.ts';
import { type JobList, openList } from './open-list.ts';
import { showProgress } from './progress.ts';
import { standing } from './resume.ts';
import { type JobSetup, settingsSumOf } from './run-job.ts';
import { createTally, type Tally } from './tally.ts';
import { wholeJobs } from './whole-jobs.ts';
import { workThrough } from './work-through.ts';

/** Options of the batch itself; the others are those of its jobs. */
const ofBatch: readonly OptionName[] = [
  'command',
  'workers',
  'failFast',
  'resume',
  'summary',
  'reorder',
  'fields',
  'out',
  'force',
  'format',
  'color',
  'plain',
  'ascii',
  'quiet',
  'verbose',
];

export async function runBatch(
  operands: readonly string[],
  options: TypedOptions,
  world: World,
): Promise<StreamedRun> {
  const command = await world.command(options.command ?? usualCommand);
  const typed = typedForJobs(options);
  const problem =
    severalInputs(operands) ??
    foreignOption(command, typed, world) ??
    withoutOutput(options) ??
    besideToReader(options) ??
    reorderOfOthers(command, options) ??
    (await unfinishedOutput(options));
  if (problem !== undefined) return stopped([problem]);
  if (options.fields?.trim() === '') return listFields(command.name, options);
  const { value: columns, diagnostics } = chosenColumns(
    summaryColumns(command.name),
    options.fields,
  );
  if (columns === undefined) return stopped(diagnostics);
  const common = await commonSettings(typed, world);
  if (common.value === undefined) return stopped(common.diagnostics);
  const [list = '-'] = operands;
  const forAll = { options: typed, intake: common.value };
  const opened = await openList(list, command, forAll, world);
  if (opened.value === undefined || hasErrors(opened.diagnostics)) {
    return stopped(opened.diagnostics);
  }
  const { value: jobs } = opened;
  const clash = outputAmongInputs(jobs, options, world);
  if (clash !== undefined) return stopped([...opened.diagnostics, clash]);
  const terms = { command, options, columns, setup: setupOf(world) };
  const ended =
    jobs.kind === 'whole'
      ? await doWhole(jobs, terms, typed, world.load)
      : await doJobs({ ...terms, list: jobs });
  return { ...ended, diagnostics: [...opened.diagnostics, ...ended.diagnostics] };
}

const typedForJobs = (options: TypedOptions): TypedOptions =>
  Object.fromEntries(
    Object.entries(options).filter(([name]) => !ofBatch.includes(name as OptionName)),
  ) as TypedOptions;

/** Which columns there are; no job is begun. */
async function listFields(command: string, { out }: TypedOptions): Promise<StreamedRun> {
  const text = renderCsv(namesOf(summaryColumns(command)));
  const problem = out === undefined ? undefined : await writeOutput(out, text);
  if (out === undefined) await writeToReader(text);
  return { diagnostics: problem === undefined ? [] : [problem], exit: exitCodes.done, told: [] };
}

const stopped = (diagnostics: readonly Diagnostic[]): StreamedRun => ({
  diagnostics,
  exit: exitCodes.data,
  told: [],
});

export const usualCommand = 'quote';

function setupOf({ surroundings, fromEnvironment }: World): JobSetup {
  const sought = seekSettingsFiles(surroundings);
  return {
    surroundings: { ...surroundings, environment: { ...surroundings.environment } },
    fromEnvironment,
    found: sought.filter((file) => file.found).map(({ shown }) => shown),
  };
}

type Terms = {
  readonly command: Command;
  readonly options: TypedOptions;
  /** Those of the rows of csv. */
  readonly columns: ChosenColumns;
  readonly setup: JobSetup;
};
type Run = Terms & { readonly list: Extract<JobList, { readonly kind: 'jobs' }> };

/** Records are written as for any other list, and none stands from before. */
async function doWhole(
  list: Extract<JobList, { readonly kind: 'whole' }>,
  { command, options, columns, setup }: Terms,
  typed: TypedOptions,
  load: World['load'],
): Promise<StreamedRun> {
  const { jobs, diagnostics } = await wholeJobs(list, command, typed, { setup, load });
  if (hasErrors(diagnostics)) return stopped(diagnostics);
  const tally = createTally();
  return guarded(options, async () => {
    const output = await openOutput(command.name, options, { columns, keep: 0, jobs: jobs.length });
    let complete = true;
    for (const job of jobs) {
      tally.add(job);
      complete &&= await output.add(job);
      complete &&= !(options.failFast === true && job.status !== 'done');
      if (!complete) break;
    }
    const closed = await output.close(complete);
    return {
      diagnostics: closed.diagnostics,
      exit: tally.exit(),
      told: [...tally.summary(jobs.length, 0), ...closed.told],
    };
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

async function doJobs(run: Run): Promise<StreamedRun> {
  const { command, options, columns, setup, list } = run;
  const tally = createTally();
  const progress = showProgress(list.count, options);
  const question = (task: JobTask): string => settingsSumOf(command.name, task, setup.found);
  const before = await standing(list.tasks, options, question);
  for (const one of before.jobs) tally.add(one);
  let stood = before.jobs.length;
  const ended = await guarded(options, async () => {
    const output = await openOutput(command.name, options, {
      ...{ columns, keep: before.bytes, jobs: list.count },
    });
    for await (const job of before.lines()) await output.recall(job);
    const complete = await workThrough(run, before.rest, {
      output,
      tally,
      tell: () => progress.show(tally.seen()),
      stood: async (task) => {
        const done = await before.stood(task);
        if (done !== undefined) stood += 1;
        return done;
      },
    });
    progress.end();
    const trouble = list.afterwards();
    const closed = await output.close(complete && trouble.length === 0);
    return {
      diagnostics: [...trouble, ...closed.diagnostics],
      exit: tally.exit(),
      told: [
        ...list.told,
        ...begunAnew(before.anewFrom),
        ...tally.summary(list.count, stood),
        ...(complete ? wayBack(tally, options) : []),
        ...closed.told,
      ],
    };
  });
  progress.end();
  return ended;
}

/** How to do again what was not done, and that alone. */
const wayBack = (tally: Tally, { out, format = 'ndjson' }: TypedOptions): readonly string[] =>
  tally.exit() === exitCodes.done || out === undefined || format !== 'ndjson'
    ? []
    : ['once they are mended, the same with --resume --force does again only what has changed'];

/** Records that an earlier run left and that are of no use any more are not dropped unsaid. */
const begunAnew = (job: string | undefined): readonly string[] =>
  job === undefined
    ? []
    : [
        `job ${printable(JSON.stringify(job))} or what is asked of it is not as it was: done anew from there`,
      ];
