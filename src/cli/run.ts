/** What was typed → what is meant → answer → text on a stream, and an exit code. */
import { type Diagnostic, error } from '../base/diagnostics.ts';
import { STANDARD_INPUT } from '../base/file-name.ts';
import { sampleBytes } from '../intake/bytes/limits.ts';
import { withFields } from './chosen-fields.ts';
import { chunksOf } from './chunks.ts';
import { type Answer, type Command, failed, type World } from './command.ts';
import { commands, loadCommand } from './commands.ts';
import { deliver, type NamedCommand } from './deliver.ts';
import { conclude, concludeStream, finish } from './ending.ts';
import { exitCodes } from './exit-code.ts';
import { loadedOnce } from './files/files.ts';
import { namedInputs, problemAfterwards, problemBeforehand } from './files/named-files.ts';
import { endingWith } from './files/standard-output.ts';
import { remind, showHelp, writeHelp } from './help/show-help.ts';
import { findCommand, parseArguments, shortHelp } from './options/arguments.ts';
import { doubtDate } from './options/doubt-date.ts';
import { readEnvironment } from './options/environment.ts';
import { recordFormAsked } from './options/form-asked.ts';
import { offeredForm } from './options/offered-form.ts';
import { doubtEnding } from './options/output-ending.ts';
import type { Format } from './options/output-specs.ts';
import type { OptionName, TypedOptions } from './options.ts';
import { type Surroundings, surroundings } from './surroundings.ts';

export const run = async (words: readonly string[]): Promise<number> =>
  endingWith(await runWords(words));

async function runWords(words: readonly string[]): Promise<number> {
  const [first, ...rest] = words;
  const [asked, ...more] = rest;
  if (first === 'help' && asked !== undefined) return runWords([asked, '--help', ...more]);
  if (first === undefined || first === '-h' || first === '--help' || first === 'help') {
    return showHelp(first !== undefined);
  }
  const entry = findCommand(first);
  const around = surroundings();
  if (entry.value === undefined) {
    const form = recordFormAsked({}, words, around.environment);
    return refuse({ name: null }, entry.diagnostics, form);
  }
  return runTyped(await entry.value.load(), rest, around);
}

/** A command with the words that stand behind its name. */
async function runTyped(
  command: Command,
  words: readonly string[],
  around: Surroundings,
): Promise<number> {
  const parsed = parseArguments(command, words);
  const form = () => recordFormAsked(command, words, around.environment);
  if (parsed.value === undefined) return refuse(command, parsed.diagnostics, form());
  if (parsed.value.kind === 'help') {
    await writeHelp(parsed.value.text);
    return exitCodes.done;
  }
  const given = readEnvironment(around.environment);
  const typed = withoutDash(parsed.value.options);
  if (given.value === undefined) return refuse(command, given.diagnostics, form(), typed);
  const fromEnvironment = new Set(
    (Object.keys(given.value) as OptionName[]).filter((name) => typed[name] === undefined),
  );
  const { value: options = {}, diagnostics } = offeredForm(command, typed, given.value);
  return runCommand(command, parsed.value.operands, options, {
    surroundings: around,
    fromEnvironment,
    noticed: [
      ...given.diagnostics,
      ...diagnostics,
      ...doubtEnding(command, options),
      ...doubtDate(options, around),
    ],
  });
}

/** Before any input is looked at: to standard output, as nobody has looked yet whether a file may be written over. */
function refuse(
  command: NamedCommand,
  diagnostics: readonly Diagnostic[],
  form: Format | undefined,
  { format: _format, out: _out, ...look }: TypedOptions = {},
): Promise<number> {
  return deliver(
    command,
    failed(diagnostics),
    form === undefined ? look : { ...look, format: form },
  );
}

/** `-o -` is standard output, as `-` among the inputs is standard input. */
function withoutDash(options: TypedOptions): TypedOptions {
  const { out, ...others } = options;
  return out === '-' ? others : options;
}

/** What stood around the run before anything was loaded. */
type Beginning = Pick<World, 'surroundings' | 'fromEnvironment'> & {
  readonly noticed: readonly Diagnostic[];
};

async function runCommand(
  command: Command,
  typedOperands: readonly string[],
  options: TypedOptions,
  { noticed, ...beginning }: Beginning,
): Promise<number> {
  const pipes = command.filesOf === undefined && typedOperands.length === 0;
  const operands = pipes ? pipedOperand() : typedOperands;
  if (operands === undefined) return refuseWithoutInput(command, options);
  const problem = await problemBeforehand(namedInputs(command, operands, options), options);
  if (problem !== undefined) return finish([problem], options);
  const files = loadedOnce();
  const world = worldOf(beginning, files.load);
  const ended = await runWriting(command, operands, options, { world, noticed });
  if (ended !== undefined) return ended;
  const answer =
    (await inOnePass(command, operands, options, world)) ??
    withFields(await command.run(operands, options, world), options);
  const diagnostics = [...noticed, ...answer.diagnostics];
  const overInput = await problemAfterwards(files.names(), options);
  if (overInput !== undefined) return finish([...diagnostics, overInput], options);
  return deliver(command, { ...answer, diagnostics }, options);
}

/** Nobody named an input, and nothing comes through a pipe. */
function refuseWithoutInput(command: Command, options: TypedOptions): Promise<number> {
  remind(shortHelp(command));
  const message = 'no input: name a file, or - for standard input';
  const form = command.stream === undefined ? options.format : undefined;
  return refuse(command, [error('usage-missing-input', message)], form, options);
}

function worldOf(beginning: Omit<Beginning, 'noticed'>, load: World['load']): World {
  const world: World = {
    ...beginning,
    load,
    create: async (...files) => (await import('./files/output-files.ts')).createFiles(...files),
    once: (_what, _options, make) => make(world),
    command: loadCommand,
    commands: () => Promise.all(commands.map(({ load }) => load())),
  };
  return world;
}

/** Of a run that writes while it goes, the exit code; undefined where the answer is written as a whole. */
async function runWriting(
  command: Command,
  operands: readonly string[],
  options: TypedOptions,
  { world, noticed }: { readonly world: World } & Pick<Beginning, 'noticed'>,
): Promise<number | undefined> {
  const [operand = '', second] = operands;
  if (command.byVehicle === true && options.format === 'ndjson' && second === undefined) {
    const { runByVehicle } = await import('./by-vehicle.ts');
    const run = await runByVehicle(command, operand, options, world, noticed);
    if (run !== undefined) return conclude(run.diagnostics, run.isNo, options);
  }
  if (command.stream === undefined) return undefined;
  return concludeStream(await command.stream(operands, options, world), noticed, options);
}

/** The table of a long input; undefined where another form is asked for, or it is to be read whole. */
async function inOnePass(
  command: Command,
  operands: readonly string[],
  options: TypedOptions,
  world: World,
): Promise<Answer | undefined> {
  const [operand, second] = operands;
  const isTable = command.rowsByVehicle === true && options.format === 'csv';
  if (!isTable || operand === undefined || second !== undefined) return undefined;
  const chunks = await chunksOf(operand, world.load, sampleBytes + 1);
  if (chunks === undefined) return undefined;
  const { tableByVehicle } = await import('./table-by-vehicle.ts');
  return tableByVehicle(command, { name: operand, chunks }, options, world);
}

/** Nothing named: standard input, unless it is a terminal. */
const pipedOperand = (): readonly string[] | undefined =>
  process.stdin.isTTY === true ? undefined : [STANDARD_INPUT];
