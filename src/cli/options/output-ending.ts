/** A name such as `quote.html` for an output that nobody asked to be a page: what it will hold is said. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { type Command, formatsOf } from '../command.ts';
import type { TypedOptions } from '../options.ts';
import type { Format } from './output-specs.ts';

const formatOfEnding: ReadonlyMap<string, Format> = new Map([
  ['json', 'json'],
  ['ndjson', 'ndjson'],
  ['jsonl', 'ndjson'],
  ['csv', 'csv'],
  ['md', 'md'],
  ['html', 'html'],
  ['htm', 'html'],
]);

/** -o never implies a format, whatever the file is called. */
export function doubtEnding(
  command: Pick<Command, 'formats'>,
  { out, format }: TypedOptions,
): readonly Diagnostic[] {
  if (out === undefined || format !== undefined) return [];
  const [, ending = ''] = /\.([a-z]+)$/iu.exec(out) ?? [];
  const called = formatOfEnding.get(ending.toLowerCase());
  if (called === undefined) return [];
  const [first = 'text', ...others] = formatsOf(command);
  if (called === first || !others.includes(called)) return [];
  const message = `"${out}" will hold ${first}, for its name chooses no form`;
  return [warning('output-ending', message, { at: { file: out }, hint: `add --format ${called}` })];
}
