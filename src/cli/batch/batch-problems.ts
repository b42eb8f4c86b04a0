/** What keeps a batch from being begun. */
import { stat } from 'node:fs/promises';
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import type { Command, World } from '../command.ts';
import { outputProblem } from '../files/output-problem.ts';
import { seekSettingsFiles } from '../load/settings-files.ts';
import { type OptionName, optionSpecs, type TypedOptions } from '../options.ts';
import { filesOfTask, type JobTask } from './job-task.ts';
import { partName } from './line-file.ts';
import type { JobList } from './open-list.ts';

/** What was typed for all jobs must mean something to their command. */
export function foreignOption(
  command: Command,
  typed: TypedOptions,
  { fromEnvironment }: World,
): Diagnostic | undefined {
  const known: readonly OptionName[] = [...command.options, 'showUnit'];
  const foreign = (Object.keys(typed) as OptionName[]).find(
    (name) => !known.includes(name) && !fromEnvironment.has(name),
  );
  if (foreign === undefined) return undefined;
  const [flag = ''] = optionSpecs[foreign].flags.split(' ');
  return error('usage-unknown-option', `${flag} means nothing to ${command.name}`, {
    hint: `leastcut ${command.name} --help lists its options`,
  });
}

/** Of several inputs none is left out unsaid: a shell makes them of `cars/*.csv`. */
export function severalInputs(operands: readonly string[]): Diagnostic | undefined {
  if (operands.length <= 1) return undefined;
  const hint = 'put them into a folder and name that, or name them in a list, a row for each';
  const message = `batch takes one list, folder or file, and ${operands.length} are named`;
  return error('usage-option-value', message, { hint });
}

export function withoutOutput({ resume, out, format }: TypedOptions): Diagnostic | undefined {
  if (resume !== true) return undefined;
  if (out === undefined) {
    const hint = 'name with -o the file that was being written';
    return error('usage-option-value', '--resume goes on with a file, and none is named', { hint });
  }
  if (format === undefined || format === 'ndjson') return undefined;
  const hint = 'write the records, and the rows beside them with --summary FILE';
  return error('usage-option-value', `--resume goes on with records, not with ${format}`, { hint });
}

/** What stands beside the records is a file: standard output is theirs. */
export function besideToReader({ summary, reorder }: TypedOptions): Diagnostic | undefined {
  const flag = summary === '-' ? '--summary' : reorder === '-' ? '--reorder' : undefined;
  if (flag === undefined) return undefined;
  const hint =
    flag === '--summary' ? 'name one, or write the rows alone with --format csv' : 'name one';
  return error('usage-option-value', `${flag} takes a file, and - is none`, { hint });
}

/** Only a quote looks at packs and stock. */
export function reorderOfOthers(
  { name }: Pick<Command, 'name'>,
  { reorder }: TypedOptions,
): Diagnostic | undefined {
  if (reorder === undefined || name === 'quote') return undefined;
  const message = `--reorder adds up what quotes need, and a ${name} says nothing of packs and stock`;
  return error('usage-option-value', message, { hint: 'run it with --command quote' });
}

/** What an earlier run left is not thrown away unasked. */
export async function unfinishedOutput({ out, resume, force }: TypedOptions) {
  if (out === undefined || resume === true || force === true) return undefined;
  const path = await partName(out);
  const there = await stat(path).then(
    () => true,
    () => false,
  );
  return there
    ? error('output-exists', `"${path}" exists: a batch was cut off`, {
        at: { file: path },
        hint: '--resume goes on with it, --force begins anew',
      })
    : undefined;
}

/** A list names inputs that the command line does not, and settings are found. */
export function outputAmongInputs(
  list: JobList,
  { out, summary, reorder, force = false }: TypedOptions,
  { surroundings }: Pick<World, 'surroundings'>,
): Diagnostic | undefined {
  if (!force) return undefined;
  const tasks = list.kind === 'jobs' && Array.isArray(list.tasks) ? list.tasks : [];
  const found = seekSettingsFiles(surroundings).filter((file) => file.found);
  const inputs = [
    ...new Set((tasks as readonly JobTask[]).flatMap(filesOfTask)),
    ...found.map(({ path }) => path),
  ];
  for (const name of [out, summary, reorder]) {
    const problem = name === undefined ? undefined : outputProblem(name, force, inputs);
    if (problem !== undefined) return problem;
  }
  return undefined;
}
