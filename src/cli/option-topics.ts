/** The options of the command line as something to be explained: what each takes, and which commands take it. */
import type { OptionTopic } from '../tasks/explanation.ts';
import type { Command } from './command.ts';
import { variableOf } from './environment.ts';
import { commonOptions, type OptionName, type OptionSpec, optionSpecs } from './options.ts';

export const optionTopics = (commands: readonly Command[]): readonly OptionTopic[] =>
  (Object.keys(optionSpecs) as OptionName[]).map((name) => topicOf(name, commands));

function topicOf(option: OptionName, commands: readonly Command[]): OptionTopic {
  const spec: OptionSpec = optionSpecs[option];
  const [, short, name = '', value = ''] =
    spec.flags.match(/^(?:(-\w), )?(--[\w-]+)(?: <(.+)>)?$/) ?? [];
  return {
    name,
    also: [...(short === undefined ? [] : [short]), name.slice(2)],
    summary: spec.summary,
    takes: takes(spec, value),
    commands: commonOptions.includes(option)
      ? ['every one']
      : commands.filter(({ options }) => options.includes(option)).map((one) => one.name),
    variable: spec.environment === true ? variableOf(option) : null,
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
