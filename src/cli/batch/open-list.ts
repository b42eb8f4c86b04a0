/** What was named as a list → its jobs, whatever form it has. */
import { open } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import { type Diagnostic, type Outcome, type Place, warning } from '../../base/diagnostics.ts';
import { closest } from '../../base/did-you-mean.ts';
import { STANDARD_INPUT, saidFile, shownFile } from '../../base/file-name.ts';
import { inWords } from '../../base/in-words.ts';
import type { IntakeOptions } from '../../intake/intake-options.ts';
import { columnKey, readBatchList, unknownColumn } from '../../intake/read-batch-list.ts';
import { printable } from '../../render/printable.ts';
import { type BatchEntry, batchEntries } from '../../tasks/batch/batch-jobs.ts';
import type { Command, World } from '../command.ts';
import { statOrNothing } from '../files/file-status.ts';
import { utf8Text } from '../files/utf8-text.ts';
import type { OptionName, TypedOptions } from '../options.ts';
import { type Beginning, emptyFolder, emptyList, withoutText } from './empty-list.ts';
import { folderJobs, type PassedOver, type ResultFile } from './folder-jobs.ts';
import { type JobColumns, jobColumns } from './job-columns.ts';
import { type ForAllJobs, type JobTask, jobTask, outdoneTexts } from './job-task.ts';
import { openVehicleJobs, type VehicleJob } from './vehicle-jobs.ts';

export type JobList =
  | {
      readonly kind: 'jobs';
      readonly count: number;
      readonly tasks: AsyncIterable<JobTask> | readonly JobTask[];
      /** What is told of the list itself. */
      readonly told: readonly string[];
      /** What is to be said when all were handed out. */
      readonly afterwards: () => readonly Diagnostic[];
    }
  /** Readings in a form that is read whole: a job for each vehicle in it. */
  | { readonly kind: 'whole'; readonly readings: string; readonly intake: IntakeOptions };

/** What holds for all jobs: the options that were typed, and how readings are read under them. */
type ForAll = { readonly options: TypedOptions; readonly intake: IntakeOptions };

export async function openList(
  name: string,
  command: Command,
  { options, intake }: ForAll,
  world: World,
): Promise<Outcome<JobList>> {
  const columns = jobColumns(command);
  const names = (Object.keys(options) as OptionName[]).filter(
    (one) => !world.fromEnvironment.has(one),
  );
  const forAll = (folder: string): ForAllJobs => ({
    folder: folder === '.' ? '' : folder,
    typed: options,
    typedNames: new Set(names),
  });
  const known = name === STANDARD_INPUT ? undefined : statOrNothing(name);
  if (known?.isDirectory() === true) return folderList(name, columns, forAll(name));
  const start = await beginning(name, known?.isFile() === true, world);
  if (start.value === undefined) return { diagnostics: start.diagnostics };
  const text = asText(start.value.bytes);
  if (text.trim() === '' && start.value.isAll) {
    return { diagnostics: [withoutText(name, start.value)] };
  }
  const form = formOf(text, columns);
  if (form === 'readings') return vehicleList(name, { options, intake }, world);
  const { file, diagnostics } = await world.load(name);
  if (file === undefined) return { diagnostics };
  const folder = name === STANDARD_INPUT ? '' : dirname(name);
  return fileList({ name, form, file }, columns, forAll(folder));
}

async function folderList(
  name: string,
  columns: JobColumns,
  forAll: ForAllJobs,
): Promise<Outcome<JobList>> {
  const { entries, results, passedOver } = await folderJobs(name, columns.columns);
  const diagnostics = [...resultsLeftOut(name, results), ...leftAlone(name, passedOver)];
  return entries.length === 0
    ? { diagnostics: [...diagnostics, emptyFolder(name)] }
    : { value: listOf(entries, columns, forAll), diagnostics };
}

type ListFile = {
  readonly name: string;
  readonly form: 'json' | 'table';
  readonly file: Parameters<typeof utf8Text>[0];
};

async function fileList(
  { name, form, file }: ListFile,
  columns: JobColumns,
  forAll: ForAllJobs,
): Promise<Outcome<JobList>> {
  const listed = form === 'table' ? readBatchList(file, columns) : await jsonList(file, columns);
  if (listed.value === undefined) return { diagnostics: listed.diagnostics };
  const entries = batchEntries(listed.value);
  const diagnostics = [...listed.diagnostics, ...entries.diagnostics];
  if (entries.value === undefined) return { diagnostics };
  return entries.value.length === 0
    ? { diagnostics: [...diagnostics, emptyList(name, form)] }
    : { value: listOf(entries.value, columns, forAll), diagnostics };
}

async function jsonList(file: ListFile['file'], columns: JobColumns) {
  const text = utf8Text(file);
  if (text.value === undefined) return { diagnostics: text.diagnostics };
  const { readBatchListJson } = await import('../../formats/batch-list.ts');
  const unknown = (key: string, at: Place) => unknownColumn(key, at, columns);
  return readBatchListJson(file.name, text.value, { ...columns, unknown });
}

function listOf(entries: readonly BatchEntry[], columns: JobColumns, forAll: ForAllJobs): JobList {
  const tasks = entries.map((entry, i) => jobTask(entry, i + 1, columns, forAll));
  const told = outdoneTexts(tasks, forAll.typed).map(printable);
  return { kind: 'jobs', count: tasks.length, tasks, told, afterwards: () => [] };
}

/** Bytes that tell a list from readings. */
const headBytes = 64 * 1024;

/** What comes through a pipe is loaded, for it comes once. */
async function beginning(name: string, isFile: boolean, world: World): Promise<Outcome<Beginning>> {
  const handle = isFile ? await open(name).catch(() => undefined) : undefined;
  if (handle === undefined) {
    const { file, diagnostics } = await world.load(name);
    if (file === undefined) return { diagnostics };
    const bytes = file.bytes.subarray(0, headBytes);
    return { value: { bytes, isAll: bytes.length === file.bytes.length }, diagnostics };
  }
  try {
    const { buffer, bytesRead } = await handle.read(new Uint8Array(headBytes), 0, headBytes, 0);
    const bytes = buffer.subarray(0, bytesRead);
    return { value: { bytes, isAll: bytesRead < headBytes }, diagnostics: [] };
  } finally {
    await handle.close();
  }
}

/** Good enough to look for words in, whatever the encoding. */
const asText = (bytes: Uint8Array): string =>
  new TextDecoder('latin1')
    .decode(bytes)
    .replaceAll('\0', '')
    .replace(/^(?:ï»¿|ÿþ|þÿ)/, '');

/** A list of jobs names them and their readings in its head, or one of them, be it misspelt, and no panel. */
function formOf(start: string, { columns, needed }: JobColumns): 'json' | 'table' | 'readings' {
  if (/^\s*[[{]/.test(start)) return 'json';
  const heads = start
    .split(/\r\n?|\n/, 6)
    .map((line) => line.split(/[,;\t|]/).map((cell) => columnKey(cell.replaceAll('"', ''))));
  const isMeant = (cells: readonly string[]): boolean =>
    cells.length > 1 &&
    cells.some((cell) => closest(cell, needed) !== undefined) &&
    cells.filter((cell) => closest(cell, columns) !== undefined).length > 1 &&
    !cells.some((cell) => !columns.includes(cell) && /^(?:panel|reading(?:_|\b(?!s)))/.test(cell));
  const isList = (cells: readonly string[]): boolean =>
    needed.every((name) => cells.includes(name)) || isMeant(cells);
  return heads.some(isList) ? 'table' : 'readings';
}

async function vehicleList(
  name: string,
  { options, intake }: ForAll,
  world: World,
): Promise<Outcome<JobList>> {
  const vehicles = await openVehicleJobs(name, intake, world.load);
  if (vehicles === undefined) {
    return { value: { kind: 'whole', readings: name, intake }, diagnostics: [] };
  }
  const { count, jobs, afterwards } = vehicles;
  const tasks = vehicleTasks(name, options, jobs);
  return { value: { kind: 'jobs', count, tasks, told: [], afterwards }, diagnostics: [] };
}

async function* vehicleTasks(
  name: string,
  options: TypedOptions,
  jobs: AsyncIterable<VehicleJob>,
): AsyncIterable<JobTask> {
  let seq = 0;
  for await (const { vehicle, part } of jobs) {
    seq += 1;
    yield { seq, id: vehicle, operands: [name], options, problems: [], part };
  }
}

/** All of them in one, each by its name: a job of the user's own may be among them. */
function resultsLeftOut(folder: string, results: readonly ResultFile[]): readonly Diagnostic[] {
  const [first, ...more] = results;
  if (first === undefined) return [];
  const hint = 'keep results in another folder than the jobs';
  const named = results.map(({ path, called }) => `${shownFile(basename(path))} (${called})`);
  return more.length === 0
    ? [
        warning(
          'batch-result',
          `${saidFile(first.path)} is no job: it is ${first.called}, a result of ours`,
          { at: { file: first.path }, hint },
        ),
      ]
    : [
        warning(
          'batch-result',
          `${results.length} files are no jobs but results of ours: ${inWords(named)}`,
          { at: { file: folder }, hint },
        ),
      ];
}

function leftAlone(folder: string, { folders, files, unused }: PassedOver): readonly Diagnostic[] {
  const passedOver = [...folders.map((name) => `${name}/`), ...files];
  const told = (names: readonly string[], message: string, hint: string): readonly Diagnostic[] =>
    names.length === 0
      ? []
      : [warning('batch-left-alone', message, { at: { file: folder }, hint })];
  return [
    ...told(
      passedOver,
      `no job is made of ${inWords(passedOver.map(shownFile))}: a job is a file of readings (csv, tsv, txt) in the folder itself`,
      'export readings as CSV; give a folder within as a batch of its own',
    ),
    ...told(
      unused,
      `no job uses ${inWords(unused.map(shownFile))}: what belongs to a job is found by the name of its readings`,
      'beside coupe.csv it is coupe.job.json, coupe.defects.csv, coupe.spots.csv, coupe.gauge.json',
    ),
  ];
}
