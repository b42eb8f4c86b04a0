/** One job of a batch as plain data, which goes to a worker as it is. */
import { isAbsolute, join } from 'node:path';
import { diagnosticCatalogue } from '../../base/catalogue.ts';
import { counted } from '../../base/counted.ts';
import { type Diagnostic, error, type Place } from '../../base/diagnostics.ts';
import { groupBy } from '../../base/group-by.ts';
import { isTemplatePath } from '../../film/template/template-name.ts';
import type { BatchEntry, SaidCell } from '../../tasks/batch/batch-jobs.ts';
import type { FromList } from '../command.ts';
import { readOptionValue } from '../options/option-values.ts';
import { type OptionName, optionSpecs, type TypedOptions } from '../options.ts';
import { columnOf, isRepeatable, type JobColumns, mayNameFile } from './job-columns.ts';
import type { VehiclePart } from './vehicle-part.ts';

export type JobTask = {
  /** From 1, in the order of the list. */
  readonly seq: number;
  readonly id: string;
  readonly operands: readonly string[];
  /** What was typed for all jobs, and what the list says of this one where nothing was. */
  readonly options: TypedOptions;
  /** Which of them the list says, and in which line. */
  readonly fromList?: FromList;
  /** What the list says otherwise than was typed. */
  readonly outdone?: readonly OptionName[];
  /** What is wrong with what the list says of it: it is not run. */
  readonly problems: readonly Diagnostic[];
  /** Where the list names each of its files. */
  readonly named?: readonly NamedFile[];
  /** Its rows of a file of many vehicles, in place of a file of its own. */
  readonly part?: VehiclePart;
};

/** A folder has no lines that a record could name, so that its place among the others is a number alone. */
export const isOfFolder = ({ named }: Pick<JobTask, 'named'>): boolean =>
  named?.every(({ at }) => at.line === undefined) === true;

type NamedFile = { readonly file: string; readonly at: Place };

/** `folder` is that of the list; `typedNames` are those options that the environment does not give. */
export type ForAllJobs = {
  readonly folder: string;
  readonly typed: TypedOptions;
  readonly typedNames: ReadonlySet<OptionName>;
};

/** The command line goes before the list, and the list before the environment. */
export function jobTask(
  entry: BatchEntry,
  seq: number,
  { optionOf }: JobColumns,
  { folder, typed, typedNames }: ForAllJobs,
): JobTask {
  const said = [...entry.said].flatMap(([column, cells]) => {
    const name = optionOf(column);
    const [cell] = cells;
    if (name === undefined || cell === undefined) return [];
    const where = sayingPlace(cell, folder);
    return [{ name, where, ...saidValue(column, name, cells, folder) }];
  });
  const readings = entry.readings.map(({ text, at }) => ({ file: within(folder, text), at }));
  const inForce = said.filter(({ name }) => !typedNames.has(name));
  const others = said.filter(({ name, value }) => typedNames.has(name) && typed[name] !== value);
  const options = Object.fromEntries(inForce.map(({ name, value }) => [name, value]));
  return {
    seq,
    id: entry.id,
    operands: readings.map(({ file }) => file),
    options: { ...typed, ...(options as TypedOptions) },
    problems: said.flatMap(({ problems }) => problems),
    named: [...readings, ...said.flatMap(({ named }) => named)],
    fromList: new Map(inForce.map(({ name, where }) => [name, where])),
    outdone: others.map(({ name }) => name),
  };
}

/** What the cells of a job's column say, what is wrong with it, and the files that it names. */
function saidValue(
  column: string,
  name: OptionName,
  cells: readonly SaidCell[],
  folder: string,
): Pick<JobTask, 'problems'> & {
  readonly value: unknown;
  readonly named: readonly NamedFile[];
} {
  const problems: Diagnostic[] = [];
  const named: NamedFile[] = [];
  const values = cells.flatMap((cell) => {
    const read = readOptionValue(name, cell.text);
    if ('takes' in read) {
      problems.push(valueProblem(column, cell, read.takes, read.meant));
      return [];
    }
    if (!namesFile(name, cell.text)) return [read.value];
    const file = within(folder, cell.text);
    named.push({ file, at: cell.at });
    return [file];
  });
  const value = isRepeatable(name) ? values : values[0];
  return { value, problems, named };
}

/** A folder has no lines: there the file says it. */
const sayingPlace = ({ text, at: { file, line } }: SaidCell, folder: string): string =>
  line === undefined ? within(folder, text) : `${file}:${line}`;

/** Of all jobs at once: which of their columns an option that was typed stands in place of. */
export function outdoneTexts(tasks: readonly JobTask[], typed: TypedOptions): readonly string[] {
  const names = tasks.flatMap(({ outdone = [] }) => outdone);
  return [...groupBy(names, (name) => name)].map(([name, all]) => {
    const [flag = ''] = optionSpecs[name].flags.split(' <');
    return `${flag} ${typed[name]} in place of the list's ${columnOf(name)} of ${counted(all.length, 'job')}`;
  });
}

/** A file that is not there, or cannot be read, is told where the list names it. */
export function placedInList(
  diagnostics: readonly Diagnostic[],
  { named = [] }: Pick<JobTask, 'named'>,
): readonly Diagnostic[] {
  return diagnostics.map((one) => {
    if (diagnosticCatalogue[one.code].kind !== 'input-file' || one.at?.line !== undefined)
      return one;
    const place = named.find(({ file, at }) => file === one.at?.file && at.line !== undefined);
    if (place === undefined) return one;
    const isPattern = one.code === 'file-missing' && /[*?]/.test(place.file);
    return { ...one, at: place.at, ...(isPattern ? { hint: NO_PATTERN } : {}) };
  });
}

const NO_PATTERN =
  'a list names each file itself, several with a semicolon between them; a folder of readings is named in place of a list';

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
    const values = [options[name]].flat();
    return values.filter(
      (value) => typeof value === 'string' && name !== 'out' && namesFile(name, value),
    ) as readonly string[];
  }),
];
