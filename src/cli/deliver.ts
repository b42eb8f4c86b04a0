/** An answer in the form that was asked for, written where it was asked for. */

import { type Diagnostic, error, hasErrors } from '../base/diagnostics.ts';
import { once } from '../base/kept.ts';
import { asciiBlocks } from '../render/ascii.ts';
import { asciiDrawing } from '../render/ascii-text.ts';
import { renderJson, renderNdjson } from '../render/json.ts';
import { printable } from '../render/printable.ts';
import { renderText } from '../render/text.ts';
import { emptyRecord } from '../report/envelope.ts';
import { type Block, gap, type MachineRecord } from '../report/model.ts';
import type { Effective } from '../tasks/settings/setting-origin.ts';
import type { ColourUse } from '../tasks/settings/settings-layers.ts';
import { type Answer, answerIsNo, type Command } from './command.ts';
import { conclude } from './ending.ts';
import { STANDARD_OUTPUT, terminalOn, writeAnswer, writeError } from './files/standard-output.ts';
import type { TypedOptions } from './options.ts';
import { colourDecision, isAscii, textStyle, textWidth } from './terminal.ts';
import { version } from './version.ts';

/** Null where the word typed is none. */
export type NamedCommand = { readonly name: Command['name'] | null };

/** Gives the exit code. */
export async function deliver(
  { name }: NamedCommand,
  answer: Answer,
  options: TypedOptions,
): Promise<number> {
  const format = options.format ?? 'text';
  const records = once(answer.records);
  const several =
    format === 'json' && records().length > 1 ? [severalVehicles(records().length)] : [];
  const diagnostics = [...answer.diagnostics, ...several];
  const output = hasErrors(diagnostics)
    ? failureOutput(name, diagnostics, options)
    : await outputOf({ ...answer, records }, options);
  const beside = hasErrors(diagnostics) ? [] : await writeBeside(answer.files ?? []);
  const written = await write(output, options.out);
  const all = [...diagnostics, ...beside, ...(written === undefined ? [] : [written])];
  const code = conclude(all, answerIsNo(answer), options);
  if (!hasErrors(all) && options.quiet !== true) writeError(toldOf(answer.files ?? []));
  return code;
}

const toldOf = (files: NonNullable<Answer['files']>): string =>
  files
    .flatMap(({ told }) => (told === undefined ? [] : [`leastcut: ${printable(told)}\n`]))
    .join('');

const severalVehicles = (count: number): Diagnostic =>
  error('usage-several-vehicles', `the input holds ${count} vehicles, and json is one record`, {
    hint: 'name one with --vehicle, or ask for --format ndjson',
  });

async function outputOf(answer: Answer, options: TypedOptions): Promise<string> {
  const { records, table, csv } = answer;
  const blocks = (): readonly Block[] =>
    answer.pages().flatMap((page, i) => (i === 0 ? page : [gap, ...page]));
  switch (options.format ?? 'text') {
    case 'json':
      return jsonOf(records());
    case 'ndjson':
      return renderNdjson(records());
    case 'csv':
      if (csv !== undefined) return csv;
      return table === undefined ? '' : (await import('../render/csv.ts')).renderCsv(table());
    case 'text':
      return answer.script ?? pageOutput(blocks(), options, answer.color);
    default:
      return pageOutput(blocks(), options, answer.color);
  }
}

const jsonOf = ([first]: readonly MachineRecord[]): string =>
  first === undefined ? '' : renderJson(first);

/** A page in the form that was asked for: as text where that is none for people. */
export async function pageOutput(
  blocks: readonly Block[],
  options: TypedOptions,
  color: Effective<ColourUse> = typedColour(options),
): Promise<string> {
  switch (options.format) {
    case 'md':
      return (await import('../render/markdown.ts')).renderMarkdown(blocks);
    case 'html':
      return (await import('../render/html.ts')).renderHtml(blocks);
    default:
      return textOutput(blocks, color, options);
  }
}

/** For a command that looks up no settings. */
const typedColour = ({ color = 'auto' }: TypedOptions): Effective<ColourUse> => ({
  value: color,
  origin: color === 'auto' ? 'built-in' : 'flag',
  where: '--color',
});

async function textOutput(
  blocks: readonly Block[],
  color: Effective<ColourUse>,
  { out, plain, ascii }: TypedOptions,
): Promise<string> {
  const stream = out === undefined ? terminalOn(STANDARD_OUTPUT) : {};
  const { colour } = colourDecision(color, stream, process.env);
  const style = await textStyle(textWidth(stream, process.env).width, colour);
  const renderPlain = plain === true ? (await import('../render/plain.ts')).renderPlain : undefined;
  const render = renderPlain ?? ((some: readonly Block[]) => renderText(some, style));
  if (!isAscii(ascii, stream)) return render(blocks);
  return asciiDrawing(render(asciiBlocks(blocks)));
}

/** A machine that asked for JSON gets its envelope also when there is no result. */
function failureOutput(
  command: NamedCommand['name'],
  diagnostics: readonly Diagnostic[],
  { format }: TypedOptions,
): string {
  const record = emptyRecord(command, { version, diagnostics });
  if (format === 'json') return renderJson(record);
  return format === 'ndjson' ? renderNdjson([record]) : '';
}

/** Each is the old or the new, never half. */
async function writeBeside(files: NonNullable<Answer['files']>): Promise<readonly Diagnostic[]> {
  if (files.length === 0) return [];
  const { writeOutput } = await import('./files/output-files.ts');
  const written = await Promise.all(files.map(({ path, text }) => writeOutput(path, text)));
  return written.flatMap((problem) => problem ?? []);
}

async function write(text: string, out: string | undefined): Promise<Diagnostic | undefined> {
  if (out === undefined) {
    await writeAnswer(text);
    return undefined;
  }
  return text === '' ? undefined : (await import('./files/output-files.ts')).writeOutput(out, text);
}
