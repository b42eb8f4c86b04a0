/** The columns of a list of jobs: its name, its readings, and the options that are about one job. */
import type { Command } from '../command.ts';
import type { OptionSpec } from '../options/option-spec.ts';
import { type OptionName, optionSpecs } from '../options.ts';

/** Options that say something of one job: a list may have a column for each, whatever its command. */
const ofOneJob: readonly OptionName[] = [
  'job',
  'shop',
  'gauge',
  'defects',
  'spots',
  'template',
  'vehicle',
  'finish',
  'aim',
  'riskPct',
  'floorUm',
  'filmRecord',
  'kind',
  'policy',
  'readingUnit',
  'nearside',
  'encoding',
  'delimiter',
  'decimal',
  'layout',
];

/** The column `job` is the job's name, so that its file has another. */
export const columnOf = (name: OptionName): string =>
  name === 'job' ? 'job_file' : name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

export type JobColumns = {
  readonly columns: readonly string[];
  readonly needed: readonly string[];
  readonly several: readonly string[];
  /** As a list would write the other options: no column of it, and no column of the shop's own either. */
  readonly others: readonly string[];
  /** Undefined where the command has no use for it, so that one list serves several. */
  readonly optionOf: (column: string) => OptionName | undefined;
};

export function jobColumns(command: Pick<Command, 'options'>): JobColumns {
  const options = new Map(ofOneJob.map((name) => [columnOf(name), name] as const));
  return {
    columns: ['job', 'readings', ...options.keys()],
    needed: ['job', 'readings'],
    several: [
      'readings',
      ...[...options].flatMap(([key, name]) => (isRepeatable(name) ? [key] : [])),
    ],
    others: (Object.keys(optionSpecs) as OptionName[])
      .filter((name) => !ofOneJob.includes(name))
      .map(columnOf),
    optionOf: (column) => {
      const name = options.get(column);
      return name !== undefined && command.options.includes(name) ? name : undefined;
    },
  };
}

/** Each of its values counts. */
export const isRepeatable = (name: OptionName): boolean => {
  const { repeatable }: OptionSpec = optionSpecs[name];
  return repeatable === true;
};

/** Whether an option names a file, or may: a path in a list is relative to the list. */
export function mayNameFile(name: OptionName): boolean {
  const { flags }: OptionSpec = optionSpecs[name];
  return /<(?:\w+\|)?file>/.test(flags);
}
