/** What a command is: options as data, and a run from what was typed to what is to be written. */
import type { Diagnostic } from '../base/diagnostics.ts';
import type { Reading } from '../film/reading.ts';
import type { Block, DataTable, MachineRecord } from '../report/model.ts';
import type { LoadedFile } from '../tasks/read/read-request.ts';
import type { Effective } from '../tasks/settings/setting-origin.ts';
import type { ColourUse } from '../tasks/settings/settings-layers.ts';
import { type Format, pageFormats } from './options/output-specs.ts';
import { commonOptions, type OptionName, type TypedOptions } from './options.ts';
import type { Surroundings } from './surroundings.ts';

export type FromList = ReadonlyMap<OptionName, string>;

/** The outside world as a command sees it. */
export type World = {
  /** Bytes of a named file, or of standard input for `-`. */
  readonly load: (
    name: string,
  ) => Promise<{ file?: LoadedFile; diagnostics: readonly Diagnostic[] }>;
  /** Writes new files into a folder, which is made if need be: all of them, or none and why. */
  readonly create: (
    folder: string,
    files: readonly { readonly path: string; readonly text: string }[],
  ) => Promise<readonly Diagnostic[]>;
  readonly surroundings: Surroundings;
  /** What follows from options alone, by name: made anew, or kept where many jobs have the same. */
  readonly once: <T>(
    what: string,
    options: TypedOptions,
    make: (world: World) => Promise<T>,
  ) => Promise<T>;
  /** The options that nobody typed and the environment gives. */
  readonly fromEnvironment: ReadonlySet<OptionName>;
  /** Of a job of a batch, what its list says, each with its file and line. */
  readonly fromList?: FromList;
  /** One command by its name, loaded. */
  readonly command: (name: string) => Promise<Command>;
  /** Every command there is, loaded. */
  readonly commands: () => Promise<readonly Command[]>;
};

export type BesideFile = {
  readonly path: string;
  readonly text: string;
  /** Said on standard error once it is written: what it is for. */
  readonly told?: string;
};

/** What a command found: one page and one record for each vehicle. */
export type Answer = {
  /** For people; made when they are asked for. */
  readonly pages: () => readonly (readonly Block[])[];
  readonly records: () => readonly MachineRecord[];
  /** What --format text writes as it is, where it is made for a program and is no page. */
  readonly script?: string;
  /** What --format csv writes; given by every command that offers it. */
  readonly table?: () => DataTable;
  /** The same written already, where its rows were written as they came. */
  readonly csv?: string;
  /** What it writes besides, where an option asks for it: `--gauge-out`. */
  readonly files?: readonly BesideFile[];
  readonly diagnostics: readonly Diagnostic[];
  /** Whether the text is coloured; as typed where a command has no say. */
  readonly color?: Effective<ColourUse>;
  /** For each record, whether its answer is no; exit 1 where all are. */
  readonly answersNo?: readonly boolean[];
  /** For each record, the readings it is made of; where a batch may run the command. */
  readonly readings?: () => readonly (readonly Reading[])[];
};

export type Command = {
  readonly name: string;
  readonly summary: string;
  /** What its operands are; the word stands in the usage line. */
  readonly operands: string;
  readonly options: readonly OptionName[];
  /** Words that may stand as its first operand. */
  readonly words?: readonly string[];
  /** Which of its operands are files; all of them, or standard input, where it does not say. */
  readonly filesOf?: (operands: readonly string[]) => readonly string[];
  /** True where an option of another command may stand as a word: `explain --risk-pct`. */
  readonly asksAboutOptions?: boolean;
  /** True where how an export is read is what it is for: its short help lists those options. */
  readonly isAboutReading?: true;
  /** The forms of output it offers; those of a page and its record where it does not say. */
  readonly formats?: readonly Format[];
  /** True where each record follows from the rows of one vehicle: a long input goes through in parts. */
  readonly byVehicle?: boolean;
  /** True where the rows of its table do so too, in the same columns whatever the vehicle. */
  readonly rowsByVehicle?: boolean;
  readonly examples: readonly string[];
  readonly run: (
    operands: readonly string[],
    options: TypedOptions,
    world: World,
  ) => Promise<Answer>;
  /** In place of `run`, where records are written as they come. */
  readonly stream?: (
    operands: readonly string[],
    options: TypedOptions,
    world: World,
  ) => Promise<StreamedRun>;
};

/** How a run ended whose output is written already. */
export type StreamedRun = {
  readonly diagnostics: readonly Diagnostic[];
  /** The exit code, where no diagnostic decides it. */
  readonly exit: number;
  /** What people are told at the end, safe to print. */
  readonly told: readonly string[];
};

/** All that a command takes: its own options, the columns of a table where it gives one, the common ones. */
export const optionsOf = ({ options, formats }: Command): readonly OptionName[] => [
  ...options,
  ...(formats?.includes('csv') === true ? (['fields'] as const) : []),
  ...commonOptions,
];

export const formatsOf = ({ formats = pageFormats }: Pick<Command, 'formats'>): readonly Format[] =>
  formats;

/** Nothing came of it. */
export const failed = (diagnostics: readonly Diagnostic[]): Answer => ({
  pages: () => [],
  records: () => [],
  diagnostics,
});

/** The job is done and the answer is no: to every one of its records. */
export const answerIsNo = ({ answersNo = [] }: Pick<Answer, 'answersNo'>): boolean =>
  answersNo.length > 0 && answersNo.every((isNo) => isNo);
