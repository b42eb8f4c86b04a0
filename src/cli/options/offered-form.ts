import { found, type Outcome, warning } from '../../base/diagnostics.ts';
import { type Command, formatsOf } from '../command.ts';
import type { TypedOptions } from '../options.ts';
import { variableOf } from './environment.ts';

/**
 * What was typed, before what the environment gives. A form of output that the environment asks of
 * every command is passed over, aloud, where a command does not give it.
 */
export function offeredForm(
  command: Command,
  typed: TypedOptions,
  given: TypedOptions,
): Outcome<TypedOptions> {
  const { format, ...others } = given;
  const offered = formatsOf(command);
  if (typed.format !== undefined || format === undefined || offered.includes(format)) {
    return found({ ...given, ...typed });
  }
  const variable = variableOf('format');
  const message = `${variable} is "${format}", which ${command.name} does not give`;
  const hint = `it gives ${offered.join(', ')}; --format chooses`;
  // One that gives a single form is asked for that form.
  const said = offered.length === 1 ? [] : [warning('environment-unknown', message, { hint })];
  return { value: { ...others, ...typed }, diagnostics: said };
}
