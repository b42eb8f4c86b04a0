/**
 * The manual page leastcut(1), in the roff of `man`: written by the build from the same data as the help.
 * Text is escaped in one place, so that nothing in it is taken for a request or an escape.
 */
import { exitCodeMeanings } from '../../formats/data/state-meanings.ts';
import { asciiText } from '../../render/ascii-text.ts';
import { flagsOf } from '../completion/choices.ts';
import { commonOptions, type OptionName, optionSpecs, readingOptions } from '../options.ts';
import type { OfferedCommand, OfferedOption } from './offers.ts';

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
    ...sharedBy(commands, isCommon).flatMap(optionLines),
    '.SH OPTIONS OF HOW AN EXPORT IS READ',
    roff('Of read, survey, plan, quote, batch, compare and grade, where the export does not say.'),
    ...sharedBy(commands, isAboutReading).flatMap(optionLines),
    '.SH SIGNS',
    roff('In the strip beside a panel; in brackets with --ascii.'),
    ...SIGNS.flatMap(([sign, meaning]) => tagged(bold(sign), roff(meaning))),
    '.SH FILES',
    ...FILES.flatMap(([name, meaning]) => tagged(bold(name), roff(meaning))),
    '.SH ENVIRONMENT',
    roff(ENVIRONMENT),

    ...environmentLines(commands),
    '.SH EXIT STATUS',
    ...exitCodeMeanings.flatMap(({ code, meaning }) => tagged(bold(`${code}`), roff(meaning))),
    '.SH SEE ALSO',
    `${bold('leastcut explain')} ${italic('word')} says what a word, a code, a number, an option or a key means.`,
  ].join('\n')}\n`;

const DESCRIPTION =
  "Turns readings of a paint-thickness gauge into what is known about a vehicle's paint, what may come off, and the mildest plan that corrects it. The result goes to standard output, or to the file that -o names; messages go to standard error. No input is ever changed.";

const ENVIRONMENT =
  'An option that stands for more than one run may stand in the environment, under its name in capitals. What is typed goes before it; it goes before settings files. NO_COLOR, FORCE_COLOR, COLUMNS and TERM mean what they mean elsewhere; the locale decides whether a terminal is written to in ASCII.';

/** Spelled as on a page: what ASCII makes of a sign stands in brackets. */
const SIGNS: readonly (readonly [string, string])[] = [
  ['one dot (.)', 'One point.'],
  ['two dots (:)', 'Two points.'],
  ['four dots (#)', 'More points.'],
  ['angle (<)', 'The thinnest credible film: 95 % of the face is thicker, 95 % sure.'],
  ['dashed line (|)', 'The floor that the total must keep.'],
  ['double angles ({ })', 'A value beyond the end of the strip.'],
  ['?', 'Behind a condition: near its line, so less than 95 % sure.'],
];

const FILES: readonly (readonly [string, string])[] = [
  ['job file', 'What is known of one vehicle besides its readings: --job.'],
  ['shop file', 'What a workshop has, how it works and what it charges: --shop.'],
  [
    'leastcut.json',
    'Settings of a folder, found in the one of the run or those above it; read where no shop file says the same.',
  ],
  [
    'user file',
    'Your own settings for all work; leastcut doctor says where it is looked for, and what is in force.',
  ],
  ['FILE.part', 'What a batch that was cut off left behind; --resume goes on with it.'],
];

const flagsIn = (names: readonly OptionName[]): ReadonlySet<string> =>
  new Set(names.flatMap((name) => optionSpecs[name].flags.match(/--[\w-]+/g) ?? []));

const commonFlags = new Set([...flagsIn(commonOptions), '--help']);
const readingFlags = flagsIn(readingOptions);

const isCommon = ({ long }: OfferedOption): boolean => commonFlags.has(long);
const isAboutReading = ({ long }: OfferedOption): boolean => readingFlags.has(long);

const takesAll = ({ options }: OfferedCommand, flags: ReadonlySet<string>): boolean =>
  [...flags].every((flag) => options.some(({ long }) => long === flag));

const READS_EXPORTS = 'Also the options of how an export is read, below.';

/** Each once; the words that `--format` takes are said with each command. */
const sharedBy = (
  commands: readonly OfferedCommand[],
  isShared: (option: OfferedOption) => boolean,
): readonly OfferedOption[] => {
  const all = commands.flatMap(({ options }) => options.filter(isShared));
  return [...new Map(all.map((option) => [option.long, option])).values()].map((option) =>
    option.long === '--format' ? { ...option, choices: [] } : option,
  );
};

function commandLines(command: OfferedCommand): readonly string[] {
  const { name, summary, operands, options, examples } = command;
  const readsExports = takesAll(command, readingFlags);
  const formats = options.find(({ long }) => long === '--format')?.choices ?? [];
  return [
    `.SS leastcut ${roff(name)} ${roff(operands)}`,
    `${roff(capital(summary))}.`,
    `Forms of the output: ${roff(formats.join(', '))}.`,
    ...options
      .filter((option) => !isCommon(option) && !(readsExports && isAboutReading(option)))
      .flatMap(optionLines),
    ...(readsExports ? ['.PP', READS_EXPORTS] : []),
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
