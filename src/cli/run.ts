/** What was typed → what is meant → answer → text on a stream, and an exit code. */
import { resolve } from 'node:path';
import { type Diagnostic, error, hasErrors } from '../base/diagnostics.ts';
import { STANDARD_INPUT } from '../base/file-name.ts';
import { isTemplatePath } from '../film/template/template-name.ts';
import { asciiBlocks } from '../render/ascii.ts';
import { asciiDrawing, asciiText } from '../render/ascii-text.ts';
import { renderDiagnostic } from '../render/diagnostic-text.ts';
import { renderJson, renderNdjson } from '../render/json.ts';
import { renderText } from '../render/text.ts';
import { emptyRecord } from '../report/envelope.ts';
import { type Block, gap } from '../report/model.ts';
import type { Effective } from '../tasks/settings/setting-origin.ts';
import type { ColourUse } from '../tasks/settings/settings-layers.ts';
import { commandHelp, findCommand, parseArguments } from './arguments.ts';
import { withFields } from './chosen-fields.ts';
import {
  type Answer,
  answerIsNo,
  type Command,
  failed,
  type StreamedRun,
  type World,
} from './command.ts';
import { commands, loadCommand } from './commands.ts';
import { readEnvironment } from './environment.ts';
import { exitCodeOf, exitCodes } from './exit-code.ts';
import { createFiles, loadFile, outputProblem, writeOutput } from './files.ts';
import { rootHelp } from './help.ts';
import { offeredForm } from './offered-form.ts';
import type { OptionName, TypedOptions } from './options.ts';
import { surroundings } from './surroundings.ts';
import { asciiDecision, colourDecision, textStyle, textWidth } from './terminal.ts';
import { version } from './version.ts';

export async function run(words: readonly string[]): Promise<number> {
  const [first, ...rest] = words;
  if (first === undefined || first === '-h' || first === '--help' || first === 'help') {
    const asked = first === 'help' ? rest[0] : undefined;
    return asked === undefined ? showHelp(first !== undefined) : run([asked, '--help']);
  }
  const entry = findCommand(first);
  if (entry.value === undefined) return finish(entry.diagnostics, {});
  const command = await entry.value.load();
  const parsed = parseArguments(command, rest);
  if (parsed.value === undefined) return finish(parsed.diagnostics, {});
  if (parsed.value.kind === 'help') {
    writeHelp(parsed.value.text, process.stdout);
    return exitCodes.done;
  }
  const around = surroundings();
  const given = readEnvironment(around.environment);
  const typed = parsed.value.options;
  if (given.value === undefined) return deliver(command, failed(given.diagnostics), typed);
  const fromEnvironment = new Set(
    (Object.keys(given.value) as OptionName[]).filter((name) => typed[name] === undefined),
  );
  const { value: options = {}, diagnostics } = offeredForm(command, typed, given.value);
  return runCommand(command, parsed.value.operands, options, {
    surroundings: around,
    fromEnvironment,
    noticed: [...given.diagnostics, ...diagnostics],
  });
}

/** What stood around the run before anything was loaded. */
type Beginning = Pick<World, 'surroundings' | 'fromEnvironment'> & {
  readonly noticed: readonly Diagnostic[];
};

function showHelp(asked: boolean): number {
  writeHelp(rootHelp(), asked ? process.stdout : process.stderr);
  return asked ? exitCodes.done : exitCodes.usage;
}

const writeHelp = (text: string, stream: NodeJS.WriteStream): void => {
  stream.write(isAscii(undefined, stream) ? asciiText(text) : text);
};

async function runCommand(
  command: Command,
  typedOperands: readonly string[],
  options: TypedOptions,
  { noticed, ...beginning }: Beginning,
): Promise<number> {
  const { filesOf } = command;
  const pipes = filesOf === undefined && typedOperands.length === 0;
  const operands = pipes ? pipedOperand() : typedOperands;
  if (operands === undefined) {
    writeHelp(commandHelp(command), process.stderr);
    const message = 'no input: name a file, or - for standard input';
    return finish([error('usage-missing-input', message)], options);
  }
  const files = filesOf === undefined ? operands : filesOf(operands);
  const template = [options.template ?? ''].filter(isTemplatePath);
  const inputs = [
    ...files,
    ...template,
    options.job,
    options.shop,
    options.gauge,
    options.rates,
    options.gaugeAfter,
    options.rubric,
    ...traineeGaugeFiles(options),
    options.plan,
    options.filmRecord,
    options.gloss,
    options.defects,
    options.spots,
    options.history,
    options.asDecided,
    options.for,
    ...panelNameFiles(options),
  ];
  const named = inputs.flatMap((name) => name ?? []);
  const problem = await beforehand(named, options);
  if (problem !== undefined) return finish([problem], options);
  const world: World = {
    ...beginning,
    load: loadOnce(),
    create: createFiles,
    once: (_what, _options, make) => make(world),
    command: loadCommand,
    commands: () => Promise.all(commands.map(({ load }) => load())),
  };
  const [operand = ''] = operands;
  if (command.byVehicle === true && options.format === 'ndjson' && operands.length === 1) {
    const { runByVehicle } = await import('./by-vehicle.ts');
    const run = await runByVehicle(command, operand, options, world, noticed);
    if (run !== undefined) return conclude(run.diagnostics, run.isNo, options);
  }
  if (command.stream !== undefined) {
    const run = await command.stream(operands, options, world);
    return concludeStream(run, noticed, options);
  }
  const answer = withFields(await command.run(operands, options, world), options);
  const diagnostics = [...noticed, ...answer.diagnostics];
  return deliver(command, { ...answer, diagnostics }, options);
}

/** Nothing named: standard input, unless it is a terminal. */
const pipedOperand = (): readonly string[] | undefined =>
  process.stdin.isTTY === true ? undefined : [STANDARD_INPUT];

async function beforehand(
  inputs: readonly string[],
  options: TypedOptions,
): Promise<Diagnostic | undefined> {
  if (inputs.filter((name) => name === STANDARD_INPUT).length > 1) {
    return error('usage-option-value', 'standard input (-) can be read once, and is named twice');
  }
  if (options.fields !== undefined && options.format !== 'csv') {
    return error('usage-option-value', '--fields chooses columns of a table, and only csv is one', {
      hint: 'add --format csv',
    });
  }
  const outputs = [options.out, ...secondOutputs(options)].flatMap((name) => name ?? []);
  const [twice] = outputs.filter(
    (name, i) => outputs.findIndex((one) => isSamePath(one, name)) < i,
  );
  if (twice !== undefined) {
    return error('usage-option-value', `two outputs would be written to "${twice}"`, {
      hint: 'name a file for each',
    });
  }
  for (const name of outputs) {
    const problem = await outputProblem(name, options.force ?? false, inputs);
    if (problem !== undefined) return problem;
  }
  return undefined;
}

const traineeGaugeFiles = ({ traineeGauge = [] }: TypedOptions): readonly string[] =>
  traineeGauge.map((word) => word.slice(word.indexOf('=') + 1));

const panelNameFiles = ({ panelNames = [] }: TypedOptions): readonly string[] =>
  panelNames.filter((word) => !word.includes('='));

/** Files that a command writes beside its result. */
const secondOutputs = ({
  gaugeOut,
  decisions,
  record,
  summary,
  ratesOut,
}: TypedOptions): readonly (string | undefined)[] => [
  gaugeOut,
  decisions,
  record,
  summary,
  ratesOut,
];

const isSamePath = (a: string, b: string): boolean => resolve(a) === resolve(b);

async function deliver(command: Command, answer: Answer, options: TypedOptions): Promise<number> {
  const format = options.format ?? 'text';
  const several =
    format === 'json' && answer.records.length > 1 ? [severalVehicles(answer.records.length)] : [];
  const diagnostics = [...answer.diagnostics, ...several];
  const output = hasErrors(diagnostics)
    ? failureOutput(command.name, diagnostics, options)
    : await outputOf(answer, options);
  const beside = hasErrors(diagnostics) ? [] : await writeBeside(answer.files ?? []);
  const written = await write(output, options.out);
  const all = [...diagnostics, ...beside, ...(written === undefined ? [] : [written])];
  return conclude(all, answerIsNo(answer), options);
}

function conclude(
  diagnostics: readonly Diagnostic[],
  isNo: boolean,
  options: TypedOptions,
): number {
  const code = finish(diagnostics, options);
  return code === exitCodes.done && isNo ? exitCodes.answerIsNo : code;
}

function concludeStream(
  { diagnostics, exit, told }: StreamedRun,
  noticed: readonly Diagnostic[],
  options: TypedOptions,
): number {
  const code = finish([...noticed, ...diagnostics], options);
  if (options.quiet !== true) {
    process.stderr.write(told.map((text) => `leastcut: ${text}\n`).join(''));
  }
  return code === exitCodes.done ? exit : code;
}

/** A pipe can be read once: what is loaded is kept for the run. */
function loadOnce(): World['load'] {
  const loaded = new Map<string, ReturnType<World['load']>>();
  return (name) => {
    const file = loaded.get(name) ?? loadFile(name);
    loaded.set(name, file);
    return file;
  };
}

const severalVehicles = (count: number): Diagnostic =>
  error('usage-several-vehicles', `the input holds ${count} vehicles, and json is one record`, {
    hint: 'name one with --vehicle, or ask for --format ndjson',
  });

async function outputOf(answer: Answer, options: TypedOptions): Promise<string> {
  const { records, table } = answer;
  const [first] = records;
  const blocks = (): readonly Block[] =>
    answer.pages().flatMap((page, i) => (i === 0 ? page : [gap, ...page]));
  switch (options.format ?? 'text') {
    case 'json':
      return first === undefined ? '' : renderJson(first);
    case 'ndjson':
      return renderNdjson(records);
    case 'csv':
      return table === undefined ? '' : (await import('../render/csv.ts')).renderCsv(table());
    case 'md':
      return (await import('../render/markdown.ts')).renderMarkdown(blocks());
    case 'html':
      return (await import('../render/html.ts')).renderHtml(blocks());
    case 'text':
      return answer.script ?? textOutput(blocks(), answer.color ?? typedColour(options), options);
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
  const stream = out === undefined ? process.stdout : {};
  const { colour } = colourDecision(color, stream, process.env);
  const style = textStyle(textWidth(stream, process.env).width, colour);
  const renderPlain = plain === true ? (await import('../render/plain.ts')).renderPlain : undefined;
  const render = renderPlain ?? ((some: readonly Block[]) => renderText(some, style));
  if (!isAscii(ascii, stream)) return render(blocks);
  return asciiDrawing(render(asciiBlocks(blocks)));
}

const isAscii = (typed: boolean | undefined, stream: { readonly isTTY?: boolean }): boolean =>
  asciiDecision(typed, stream, process.env, process.platform).ascii;

/** A machine that asked for JSON gets its envelope also when there is no result. */
function failureOutput(
  command: string,
  diagnostics: readonly Diagnostic[],
  { format }: TypedOptions,
): string {
  const record = emptyRecord(command, { version, diagnostics });
  if (format === 'json') return renderJson(record);
  return format === 'ndjson' ? renderNdjson([record]) : '';
}

/** Each is the old or the new, never half. */
async function writeBeside(files: NonNullable<Answer['files']>): Promise<readonly Diagnostic[]> {
  const written = await Promise.all(files.map(({ path, text }) => writeOutput(path, text)));
  return written.flatMap((problem) => problem ?? []);
}

async function write(text: string, out: string | undefined): Promise<Diagnostic | undefined> {
  if (out !== undefined) return text === '' ? undefined : writeOutput(out, text);
  process.stdout.write(text);
  return undefined;
}

/** Says what there is to say on standard error, remarks in full with -v; gives the exit code. */
function finish(diagnostics: readonly Diagnostic[], options: TypedOptions): number {
  const { quiet, verbose } = options;
  const ascii = isAscii(options.ascii, process.stderr);
  const notes = diagnostics.filter(({ severity }) => severity === 'note');
  const said = diagnostics.filter(({ severity }) => {
    if (severity === 'note') return verbose === true && quiet !== true;
    return severity === 'error' || quiet !== true;
  });
  const hidden = verbose === true || quiet === true ? 0 : notes.length;
  const count =
    hidden === 0 ? '' : `leastcut: ${hidden} note${hidden === 1 ? '' : 's'}, -v shows them\n`;
  process.stderr.write(said.map((one) => renderDiagnostic(one, ascii)).join('') + count);
  return exitCodeOf(diagnostics);
}
