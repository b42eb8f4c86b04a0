/** Typed words → operands and options, or usage diagnostics. The parser is commander's. */
import { CommanderError, InvalidArgumentError, Option, Command as Parser } from 'commander';
import { type Diagnostic, error, type Outcome } from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import { wrapSetIn } from '../../render/wrap.ts';
import { type Command, formatsOf, optionsOf } from '../command.ts';
import { type CommandEntry, commands } from '../commands.ts';
import { foldedExample } from '../help/folded-example.ts';
import { helpWidth } from '../message-look.ts';
import {
  commonOptions,
  helpOption,
  type OptionName,
  optionSpecs,
  readingOptions,
  type TypedOptions,
} from '../options.ts';
import type { OptionSpec } from './option-spec.ts';
import { readOptionValue } from './option-values.ts';

export type Parsed =
  | { readonly kind: 'run'; readonly operands: readonly string[]; readonly options: TypedOptions }
  | { readonly kind: 'help'; readonly text: string };

export function parseArguments(command: Command, words: readonly string[]): Outcome<Parsed> {
  if (isOptionAskedAbout(command, words)) {
    return { value: { kind: 'run', operands: words, options: {} }, diagnostics: [] };
  }
  const parser = parserOf(command, optionsAmong(words, command));
  parser.exitOverride().configureOutput({ writeOut: () => {}, writeErr: () => {} });
  try {
    parser.parse([...words], { from: 'user' });
  } catch (problem) {
    if (!(problem instanceof CommanderError)) throw problem;
    return problem.code === 'commander.helpDisplayed'
      ? { value: { kind: 'help', text: helpAskedFor(command, words) }, diagnostics: [] }
      : { diagnostics: [usageProblem(command.name, problem)] };
  }
  const options = parser.opts() as TypedOptions;
  return { value: { kind: 'run', operands: parser.args, options }, diagnostics: [] };
}

/** `explain -v` asks what -v is; with other words beside it, it is the option itself. */
const isOptionAskedAbout = (command: Command, words: readonly string[]): boolean =>
  command.asksAboutOptions === true &&
  words.length === 1 &&
  words.every((word) => word.startsWith('-') && word !== '-h' && word !== '--help');

const helpAskedFor = (command: Command, words: readonly string[]): string =>
  words.includes('--help') ? commandHelp(command) : shortHelp(command);

/** Help of one command, as `leastcut COMMAND --help` prints it: every option, and examples. */
export const commandHelp = (command: Command): string => {
  const examples = command.examples.flatMap((one) => foldedExample(one, helpWidth()));
  return helpText(
    parserOf(command).addHelpText('after', ['', 'Examples:', ...examples].join('\n')),
  );
};

/** As `leastcut COMMAND -h` prints it: what is the command's own. */
export function shortHelp(command: Command): string {
  const [example = ''] = command.examples;
  const own = optionsOf(command).filter(
    (name) =>
      groupOf(name) === OWN_GROUP ||
      (command.isAboutReading === true && readingOptions.includes(name)),
  );
  const others = optionsOf(command).length + 1 - own.length;
  const more = `leastcut ${command.name} --help has ${others} more options, and more examples.`;
  const parser = parserOf(command, own).addHelpText(
    'after',
    ['', 'Example:', ...foldedExample(example, helpWidth()), '', ...folded(more)].join('\n'),
  );
  return helpText(parser.helpOption(false));
}

const folded = (line: string): readonly string[] => wrapSetIn(line, helpWidth(), '      ');

function helpText(parser: Parser): string {
  let text = '';
  const writeOut = (part: string): void => {
    text += part;
  };
  parser.configureOutput({ writeOut, getOutHelpWidth: helpWidth }).outputHelp();
  return text;
}

function parserOf(command: Command, names: readonly OptionName[] = optionsOf(command)): Parser {
  const parser = new Parser(`leastcut ${command.name}`)
    .description(`${command.summary[0]?.toUpperCase()}${command.summary.slice(1)}.`)
    .usage(`[options] ${command.operands}`)
    .argument('[operands...]')
    .addHelpOption(new Option(helpOption.flags, helpOption.summary).helpGroup(OUTPUT_GROUP))
    .allowExcessArguments(true)
    .allowUnknownOption(command.asksAboutOptions === true);
  parser.configureHelp({ visibleArguments: () => [], minWidthToWrap: LEAST_FOLDED });
  for (const name of names) parser.addOption(optionOf(name, command));
  return parser;
}

/** Columns that a summary is folded into, at the least. */
const LEAST_FOLDED = 16;

const OWN_GROUP = 'Options:';
const OUTPUT_GROUP = 'Output:';

/** The heading an option stands under in the help: what a job needs comes first. */
function groupOf(name: OptionName): string {
  if (commonOptions.includes(name) || name === 'fields') return OUTPUT_GROUP;
  return readingOptions.includes(name)
    ? 'How the export is read, where it does not say:'
    : OWN_GROUP;
}

function optionOf(name: OptionName, command: Command): Option {
  const spec: OptionSpec = optionSpecs[name];
  const option = new Option(spec.flags, spec.summary).helpGroup(groupOf(name));
  const choices = name === 'format' ? formatsOf(command) : spec.choices;
  if (choices !== undefined) option.choices(choices);
  else if (spec.repeatable !== true && spec.flags.includes('<')) option.argParser(parserFor(name));
  if (spec.repeatable === true) {
    option.argParser((value: string, before: readonly string[] = []) => [...before, value]);
  } else if (spec.flags.includes('<')) option.argParser(onceOnly(option));
  return option;
}

/**
 * Of a command's options those that are typed: to make all of them for commander takes a millisecond. All, where a word
 * in front of which stands a dash is none of them: it may be a value, several letters in one, or wrong.
 */
function optionsAmong(words: readonly string[], command: Command): readonly OptionName[] {
  const typed = new Set(words.flatMap((word) => (isDashed(word) ? flagOf(word) : [])));
  const all = optionsOf(command);
  const flags = all.map((name) => optionSpecs[name].flags.split(/[ ,]+/));
  const known = new Set(flags.flat());
  return [...typed].every((flag) => known.has(flag))
    ? all.filter((_, index) => flags[index]?.some((flag) => typed.has(flag)))
    : all;
}

const isDashed = (word: string): boolean => word.startsWith('-') && word !== '-';

/** `--panel=roof` as `--panel`. */
const flagOf = (word: string): string => word.split('=', 1)[0] ?? '';

/** A second value that says otherwise is refused: none of the two is the last word. */
function onceOnly({ parseArg }: Option): (text: string, read: unknown) => unknown {
  let before: string | undefined;
  return (text, read) => {
    if (before !== undefined && before !== text) {
      throw new InvalidArgumentError(`It is ${before} already, ${NOT_BOTH}.`);
    }
    before = text;
    return parseArg === undefined ? text : parseArg(text, read);
  };
}

const NOT_BOTH = 'and cannot be both';

const parserFor =
  (name: OptionName) =>
  (text: string): string | number | boolean => {
    const read = readOptionValue(name, text);
    if ('takes' in read) {
      const meant = read.meant === undefined ? '' : `\n(Did you mean "${read.meant}"?)`;
      throw new InvalidArgumentError(`It takes ${read.takes}.${meant}`);
    }
    return read.value;
  };

/** Commander's own sentence as a diagnostic: its "Did you mean" is the hint. */
function usageProblem(command: string, { code, message }: CommanderError): Diagnostic {
  const [first = '', ...rest] = message.replace(/^error: /, '').split('\n');
  const meant = rest.join(' ').match(/\(Did you mean (.*)\?\)/)?.[1];
  const didYouMean = meant === undefined ? undefined : `did you mean ${meant}?`;
  const hint = didYouMean ?? panelHint(first) ?? `leastcut ${command} --help lists them`;
  return code === 'commander.unknownOption'
    ? error('usage-unknown-option', first, { hint })
    : error('usage-option-value', first.replace(/\.$/, ''), {
        hint:
          twiceHint(first) ??
          suggestChoice(first) ??
          didYouMean ??
          `leastcut ${command} --help says what it takes`,
      });
}

/** What to do about an option that was given two values. */
function twiceHint(sentence: string): string | undefined {
  const flag = /option '.*?(--[a-z-]+)/.exec(sentence)?.[1];
  if (flag === undefined || !sentence.includes(NOT_BOTH)) return undefined;
  return `give ${flag} once`;
}

/** `--roof` is a panel, and no option. */
function panelHint(sentence: string): string | undefined {
  const panel = /option '--([a-z-]+)'/.exec(sentence)?.[1];
  return panel !== undefined && PANEL_WORD.test(panel)
    ? `a panel is named with --panel ${panel}`
    : undefined;
}

const PANEL_WORD =
  /\b(?:bonnet|hood|roof|boot|trunk|tailgate|wing|fender|door|quarter|bumper|sill|mirror)\b/;

/** The choice nearest to a misspelt one, from commander's sentence. */
function suggestChoice(sentence: string): string | undefined {
  const [, typed, choices] =
    sentence.match(/argument '(.*)' is invalid\. .*choices are (.*)\./) ?? [];
  // Of numbers none is a slip of another.
  return typed === undefined || choices === undefined || /^\d+$/.test(typed)
    ? undefined
    : suggest(typed, choices.split(', '));
}

export function findCommand(word: string): Outcome<CommandEntry> {
  const entry = commands.find(({ name }) => name === word);
  if (entry !== undefined) return { value: entry, diagnostics: [] };
  const names = commands.map(({ name }) => name);
  const hint = word.startsWith('-')
    ? (suggest(word, ['--version', '--help']) ??
      `the command comes first, one of ${names.join(', ')}`)
    : (otherWordFor(word) ??
      suggest(word, names) ??
      begun(word, names) ??
      `one of ${names.join(', ')}`);
  return {
    diagnostics: [error('usage-unknown-command', `"${word}" is not a command`, { hint })],
  };
}

/** `surv` is how but one command begins. */
function begun(word: string, names: readonly string[]): string | undefined {
  const [name, second] = names.filter((one) => one.startsWith(word.toLowerCase()));
  return name === undefined || second !== undefined ? undefined : `did you mean "${name}"?`;
}

/** `price` is a word for what quote does. */
function otherWordFor(word: string): string | undefined {
  const meant = commands.find(({ also = [] }) => also.includes(word.toLowerCase()));
  return meant === undefined
    ? undefined
    : `did you mean "${meant.name}"? It is to ${meant.summary}`;
}
