/** What the command line offers, as plain data: completion and the man page are written from it. */
import { asciiText } from '../../render/ascii-text.ts';
import { type Command, formatsOf, optionsOf } from '../command.ts';
import { variableOf } from '../options/environment.ts';
import type { OptionSpec } from '../options/option-spec.ts';
import { helpOption, type OptionName, optionSpecs } from '../options.ts';

export type OfferedOption = {
  /** `-o`, or undefined. */
  readonly short: string | undefined;
  /** `--out`. */
  readonly long: string;
  /** What stands behind it, such as `file`; empty for a switch. */
  readonly value: string;
  readonly summary: string;
  /** Words that may stand behind it. */
  readonly choices: readonly string[];
  /** Whether a file may. */
  readonly takesFile: boolean;
  readonly repeatable: boolean;
  /** The variable that sets it as well, or null. */
  readonly variable: string | null;
};

export type OfferedCommand = {
  readonly name: string;
  readonly summary: string;
  readonly operands: string;
  readonly words: readonly string[];
  readonly takesFiles: boolean;
  readonly options: readonly OfferedOption[];
  readonly examples: readonly string[];
};

/** What the first word may be besides a command. */
export const rootWords = ['help', '--help', '-h', '--version', '-V'] as const;

export const offersOf = (command: Command): OfferedCommand => ({
  name: command.name,
  summary: asciiText(command.summary),
  operands: asciiText(command.operands),
  words: command.words ?? [],
  takesFiles: namesFile(command.operands),
  options: [
    ...optionsOf(command).map((name) => offeredOption(name, command)),
    offered(helpOption, null, []),
  ],
  examples: command.examples.map(asciiText),
});

function offeredOption(name: OptionName, command: Command): OfferedOption {
  const spec: OptionSpec = optionSpecs[name];
  const { choices = [], among = [], words = {} } = spec;
  const given = name === 'format' ? formatsOf(command) : choices;
  const variable = spec.environment === true ? variableOf(name) : null;
  return offered(spec, variable, [...given, ...among, ...Object.keys(words)]);
}

function offered(
  spec: OptionSpec,
  variable: string | null,
  choices: readonly string[],
): OfferedOption {
  const { short, name, value } = flagParts(spec);
  return {
    short,
    long: name,
    value,
    summary: asciiText(spec.summary),
    choices,
    takesFile: namesFile(value),
    repeatable: spec.repeatable === true,
    variable,
  };
}

/** `-o, --out <file>` in its parts. */
export function flagParts({ flags }: Pick<OptionSpec, 'flags'>): {
  readonly short: string | undefined;
  readonly name: string;
  readonly value: string;
} {
  const [, short, name = '', value = ''] =
    flags.match(/^(?:(-\w), )?(--[\w-]+)(?: <(.+)>)?$/) ?? [];
  return { short, name, value };
}

const namesFile = (usage: string): boolean => /file|folder|\.csv|\.json/.test(usage);
