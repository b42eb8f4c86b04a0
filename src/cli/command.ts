/** What a command is: options as data, and a run from what was typed to what is to be written. */
import type { Diagnostic } from '../base/diagnostics.ts';
import type { Block, DataTable, MachineRecord } from '../report/model.ts';
import type { LoadedFile } from '../tasks/read-request.ts';
import type { Effective } from '../tasks/setting-origin.ts';
import type { ColourUse } from '../tasks/settings-layers.ts';
import type { Format, OptionName, TypedOptions } from './options.ts';
import type { Surroundings } from './surroundings.ts';

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
  /** The options that nobody typed and the environment gives. */
  readonly fromEnvironment: ReadonlySet<OptionName>;
  /** Every command there is, loaded. */
  readonly commands: () => Promise<readonly Command[]>;
};

/** What a command found: one page and one record for each vehicle. */
export type Answer = {
  readonly pages: readonly (readonly Block[])[];
  readonly records: readonly MachineRecord[];
  /** What --format csv writes; given by every command that offers it. */
  readonly table?: DataTable;
  /** What it writes besides, where an option asks for it: `--gauge-out`. */
  readonly files?: readonly { readonly path: string; readonly text: string }[];
  readonly diagnostics: readonly Diagnostic[];
  /** Whether the text is coloured; as typed where a command has no say. */
  readonly color?: Effective<ColourUse>;
  /** True when the job is done and the answer is no: exit 1. */
  readonly answerIsNo?: boolean;
};

export type Command = {
  readonly name: string;
  readonly summary: string;
  /** What its operands are; the word stands in the usage line. */
  readonly operands: string;
  readonly options: readonly OptionName[];
  /** Which of its operands are files; all of them, or standard input, where it does not say. */
  readonly filesOf?: (operands: readonly string[]) => readonly string[];
  /** True where an option of another command may stand as a word: `explain --risk-pct`. */
  readonly asksAboutOptions?: boolean;
  /** The forms of output it offers; text, json and ndjson where it does not say. */
  readonly formats?: readonly Format[];
  /** True where each record follows from the rows of one vehicle: a long input goes through in parts. */
  readonly byVehicle?: boolean;
  readonly examples: readonly string[];
  readonly run: (
    operands: readonly string[],
    options: TypedOptions,
    world: World,
  ) => Promise<Answer>;
};

/** Nothing came of it. */
export const failed = (diagnostics: readonly Diagnostic[]): Answer => ({
  pages: [],
  records: [],
  diagnostics,
});
