/**
 * The manual page leastcut(1), in the roff of `man`: written by the build from the same data as the help.
 * Text is escaped in one place, so that nothing in it is taken for a request or an escape.
 */
import { exitCodeMeanings } from '../formats/data/state-meanings.ts';
import { asciiText } from '../render/ascii-text.ts';
import { flagsOf } from './completion/choices.ts';
import type { OfferedCommand, OfferedOption } from './offers.ts';
import { commonOptions, helpOption, type OptionSpec, optionSpecs } from './options.ts';

export const manPage = (commands: readonly OfferedCommand[], version: string): string =>
  `${[
    `.TH LEASTCUT 1 "" "leastcut ${roff(version)}" "User Commands"`,
    '.SH NAME',
    'leastcut \\- paint-thickness readings into knowledge and a correction plan',
    '.SH SYNOPSIS',
    `${bold('leastcut')} ${italic('command')} [${italic('options')}] ${italic('file')} ... | \\-`,
    '.SH DESCRIPTION',
    roff(DESCRIPTION),
    '.SH COMMANDS',
    ...commands.flatMap(commandLines),
    '.SH OPTIONS OF EVERY COMMAND',
    ...commonOf(commands).flatMap(optionLines),
    '.SH ENVIRONMENT',
    roff('What may stand in the environment has the name of its option:'),
    ...environmentLines(commands),
    '.SH EXIT STATUS',
    ...exitCodeMeanings.flatMap(({ code, meaning }) => tagged(bold(`${code}`), roff(meaning))),
    '.SH SEE ALSO',
    `${bold('leastcut explain')} ${italic('word')} says what a word, a code, a number, an option or a key means.`,
  ].join('\n')}\n`;

const DESCRIPTION =
  "Turns readings of a paint-thickness gauge into what is known about a vehicle's paint, what may come off, and the mildest plan that corrects it. The result goes to standard output, or to the file that -o names; messages go to standard error. No input is ever changed.";

const isCommon = ({ long }: OfferedOption): boolean =>
  COMMON.some(({ flags }) => flags.split(/[ ,]+/).includes(long));
const COMMON: readonly OptionSpec[] = [
  ...commonOptions.map((name) => optionSpecs[name]),
  helpOption,
];

/** Each once; the words that `--format` takes are said with each command. */
const commonOf = (commands: readonly OfferedCommand[]): readonly OfferedOption[] => {
  const all = commands.flatMap(({ options }) => options.filter(isCommon));
  return [...new Map(all.map((option) => [option.long, option])).values()].map((option) =>
    option.long === '--format' ? { ...option, choices: [] } : option,
  );
};

function commandLines(command: OfferedCommand): readonly string[] {
  const { name, summary, operands, options, examples } = command;
  const formats = options.find(({ long }) => long === '--format')?.choices ?? [];
  return [
    `.SS leastcut ${roff(name)} ${roff(operands)}`,
    `${roff(capital(summary))}.`,
    `Forms of the output: ${roff(formats.join(', '))}.`,
    ...options.filter((option) => !isCommon(option)).flatMap(optionLines),
    '.PP',
    examples.length === 1 ? 'Example:' : 'Examples:',
    '.PP',
    '.nf',
    ...examples.map((example) => `    ${roff(example)}`),
    '.fi',
  ];
}

function optionLines(option: OfferedOption): readonly string[] {
  const { value, summary, choices } = option;
  const flags = flagsOf(option).map(bold).join(', ');
  const said = choices.every((choice) => summary.includes(choice));
  const words = said ? '' : ` (${choices.join(', ')})`;
  return tagged(
    value === '' ? flags : `${flags} ${italic(value)}`,
    roff(`${capital(summary)}${words}.`),
  );
}

function environmentLines(commands: readonly OfferedCommand[]): readonly string[] {
  const all = commands.flatMap(({ options }) =>
    options.flatMap(({ variable, long }) => (variable === null ? [] : [[variable, long] as const])),
  );
  return [...new Map(all)].flatMap(([variable, long]) => tagged(bold(variable), bold(long)));
}

const tagged = (tag: string, text: string): readonly string[] => ['.TP', tag, text];
const bold = (text: string): string => `\\fB${roff(text)}\\fR`;
const italic = (text: string): string => `\\fI${roff(text)}\\fR`;

const capital = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;

/** As it shows: a line that begins with a dot or a quote is no request, and a hyphen can be copied. */
export const roff = (text: string): string =>
  asciiText(text)
    .replaceAll(/[\r\n]+/g, ' ')
    .replaceAll('\u00a0', ' ')
    .replaceAll('\\', '\\e')
    .replaceAll('-', '\\-')
    .replaceAll('"', '\\(dq')
    .replaceAll("'", '\\(aq')
    .replace(/^\./, '\\&.');
