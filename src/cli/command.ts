/** What a command is: options as data, and a run from what was typed to what is to be written. */
import type { Diagnostic } from '../base/diagnostics.ts';
import type { Block, MachineRecord } from '../report/model.ts';
import type { LoadedFile } from '../tasks/read-vehicles.ts';
import type { OptionName, TypedOptions } from './options.ts';

/** The outside world as a command sees it. */
export type World = {
  /** Bytes of a named file, or of standard input for `-`. */
  readonly load: (
    name: string,
  ) => Promise<{ file?: LoadedFile; diagnostics: readonly Diagnostic[] }>;
};

/** What a command found: one page and one record for each vehicle. */
export type Answer = {
  readonly pages: readonly (readonly Block[])[];
  readonly records: readonly MachineRecord[];
  readonly diagnostics: readonly Diagnostic[];
  /** True when the job is done and the answer is no: exit 1. */
  readonly answerIsNo?: boolean;
};

export type Command = {
  readonly name: string;
  readonly summary: string;
  /** What its operands are; the word stands in the usage line. */
  readonly operands: string;
  readonly options: readonly OptionName[];
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
