/** One job of a batch as plain data, which goes to a worker as it is. */
import { isAbsolute, join } from 'node:path';
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { isTemplatePath } from '../../film/template/template-name.ts';
import type { BatchEntry, SaidCell } from '../../tasks/batch/batch-jobs.ts';
import { readOptionValue } from '../options/option-values.ts';
import { type OptionName, optionSpecs, type TypedOptions } from '../options.ts';
import { type JobColumns, mayNameFile } from './job-columns.ts';
import type { VehiclePart } from './vehicle-part.ts';

export type JobTask = {
  /** From 1, in the order of the list. */
  readonly seq: number;
  readonly id: string;
  readonly operands: readonly string[];
  /** What was typed for all jobs, and over it what the list says of this one. */
  readonly options: TypedOptions;
  /** What is wrong with what the list says of it: it is not run. */
  readonly problems: readonly Diagnostic[];
  /** Its rows of a file of many vehicles, in place of a file of its own. */
  readonly part?: VehiclePart;
};

/** `folder` is that of the list. */
export function jobTask(
  entry: BatchEntry,
  seq: number,
  { optionOf }: JobColumns,
  { folder, typed }: { readonly folder: string; readonly typed: TypedOptions },
): JobTask {
  const problems: Diagnostic[] = [];
  const said = [...entry.said].flatMap(([column, cell]) => {
    const name = optionOf(column);
    if (name === undefined) return [];
    const read = readOptionValue(name, cell.text);
    if ('takes' in read) {
      problems.push(valueProblem(column, cell, read.takes, read.meant));
      return [];
    }
    return [[name, namesFile(name, cell.text) ? within(folder, cell.text) : read.value] as const];
  });
  return {
    seq,
    id: entry.id,
    operands: entry.readings.map(({ text }) => within(folder, text)),
    options: { ...typed, ...(Object.fromEntries(said) as TypedOptions) },
    problems,
  };
}

const namesFile = (name: OptionName, text: string): boolean =>
  name === 'template' ? isTemplatePath(text) : mayNameFile(name);

const within = (folder: string, path: string): string =>
  folder === '' || isAbsolute(path) ? path : join(folder, path);

const valueProblem = (
  column: string,
  { text, at }: SaidCell,
  takes: string,
  meant: string | undefined,
): Diagnostic =>
  error('batch-value', `${column} is ${JSON.stringify(text)}; it takes ${takes}`, {
    at,
    hint: meant === undefined ? 'mend the list, or leave it empty' : `did you mean "${meant}"?`,
  });

/** Files that a job reads or may read, by name. */
export const filesOfTask = ({
  operands,
  options,
}: Pick<JobTask, 'operands' | 'options'>): readonly string[] => [
  ...operands,
  ...(Object.keys(optionSpecs) as OptionName[]).flatMap((name) => {
    const value = options[name];
    return typeof value === 'string' && name !== 'out' && namesFile(name, value) ? [value] : [];
  }),
];
