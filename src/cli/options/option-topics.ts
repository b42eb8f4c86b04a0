/** The options of the command line as something to be explained: what each takes, and which commands take it. */
import type { OptionTopic } from '../../tasks/explain/explanation.ts';
import { type Command, optionsOf } from '../command.ts';
import { flagParts } from '../help/offers.ts';
import { commonOptions, helpOption, type OptionName, optionSpecs } from '../options.ts';
import { variableOf } from './environment.ts';
import type { OptionSpec } from './option-spec.ts';

export const optionTopics = (commands: readonly Command[]): readonly OptionTopic[] => [
  ...(Object.keys(optionSpecs) as OptionName[]).map((name) =>
    topicOf(optionSpecs[name], takenBy(name, commands), variableIf(name)),
  ),
  topicOf(helpOption, EVERY, null),
];

const EVERY = ['every one'];

const takenBy = (option: OptionName, commands: readonly Command[]): readonly string[] =>
  commonOptions.includes(option)
    ? EVERY
    : commands.filter((one) => optionsOf(one).includes(option)).map((one) => one.name);

function variableIf(option: OptionName): string | null {
  const spec: OptionSpec = optionSpecs[option];
  return spec.environment === true ? variableOf(option) : null;
}

function topicOf(
  spec: OptionSpec,
  commands: readonly string[],
  variable: string | null,
): OptionTopic {
  const { short, name, value } = flagParts(spec);
  return {
    name,
    also: [...(short === undefined ? [] : [short]), name.slice(2)],
    summary: spec.summary,
    takes: takes(spec, value),
    commands,
    variable,
  };
}

function takes({ choices, range, whole, words }: OptionSpec, value: string): string {
  if (choices !== undefined) return choices.join(', ');
  if (words !== undefined) return Object.keys(words).join(', ');
  if (range !== undefined) {
    return `${whole === true ? 'a whole number' : 'a number'} from ${range[0]} to ${range[1]}`;
  }
  return value === '' ? '' : `<${value}>`;
}
