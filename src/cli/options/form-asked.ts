/** The form of record that a program asks for in a command line that cannot be understood as a whole. */
import { type Command, formatsOf } from '../command.ts';
import { type Environment, variableOf } from './environment.ts';

const recordForms = ['json', 'ndjson'] as const;
export type RecordForm = (typeof recordForms)[number];

const FLAG = '--format';

/** As typed, else as the environment has it; undefined of a command that gives no record of its own run. */
export function recordFormAsked(
  command: Pick<Command, 'formats' | 'stream'>,
  words: readonly string[],
  environment: Environment,
): RecordForm | undefined {
  const offered = formatsOf(command);
  if (command.stream !== undefined || !recordForms.some((form) => offered.includes(form))) {
    return undefined;
  }
  const asked = typedForm(words) ?? environment[variableOf('format')];
  return recordForms.find((form) => form === asked);
}

/** The last that is typed; a word after `--` is no option. */
function typedForm(words: readonly string[]): string | undefined {
  const end = words.indexOf('--');
  const own = end === -1 ? words : words.slice(0, end);
  return own
    .flatMap((word, i) => {
      if (word === FLAG) return [own[i + 1] ?? ''];
      return word.startsWith(`${FLAG}=`) ? [word.slice(FLAG.length + 1)] : [];
    })
    .at(-1);
}
