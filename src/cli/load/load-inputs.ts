/** The files a command names → loaded files and settings; every problem of all of them at once. */
import { type Diagnostic, hasErrors, type Outcome, warning } from '../../base/diagnostics.ts';
import { saidFile } from '../../base/file-name.ts';
import type { FilmRecord } from '../../formats/film-record.ts';
import type { Job, JobVehicle } from '../../formats/job/job.ts';
import type { Placed } from '../../formats/json/placed.ts';
import type { LoadedFile, ReadRequest } from '../../tasks/read/read-request.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import type { JobLayer } from '../../tasks/settings/settings-layers.ts';
import type { SurveyFilesRequest } from '../../tasks/survey/survey-files.ts';
import type { StatedSize } from '../../tasks/template/scale-to-vehicle.ts';
import type { World } from '../command.ts';
import type { TypedOptions } from '../options.ts';
import { loadReadingChoices, type ReadingChoices } from './load-reading.ts';
import { loadSettings } from './load-settings.ts';
import { type LoadedTemplates, loadTemplates } from './load-templates.ts';
import { asTyped, type NamedFile, type Reader, readNamed, readShown } from './named-file.ts';

export type Inputs = {
  readonly gauge: readonly LoadedFile[];
  readonly reading: ReadingChoices;
  readonly defects: LoadedFile | undefined;
  readonly spots: readonly LoadedFile[];
  readonly job: Placed<Job> | undefined;
  readonly filmRecord: Placed<FilmRecord> | undefined;
  readonly templates: LoadedTemplates;
  readonly settings: Settings;
};

export async function loadInputs(
  operands: readonly string[],
  options: TypedOptions,
  world: World,
): Promise<Outcome<Inputs>> {
  const gauge = await loadFiles(operands, world);
  const [defects, spots, loaded, reading] = await Promise.all([
    loadOptional(options.defects, world),
    loadFiles(options.spots ?? [], world),
    loadSettings(options, world),
    loadReadingChoices(options, world),
  ]);
  const diagnostics = [gauge, defects, spots, loaded, reading].flatMap((part) => part.diagnostics);
  if (gauge.value === undefined || loaded.value === undefined || reading.value === undefined) {
    return { diagnostics };
  }
  const { settings, job } = loaded.value;
  const [templates, filmRecord] = await Promise.all([
    templatesInForce(settings, world),
    loadFilmRecord(options.filmRecord, job, world),
  ]);
  const all = [...diagnostics, ...templates.diagnostics, ...filmRecord.diagnostics];
  if (templates.value === undefined || hasErrors(all)) return { diagnostics: all };
  const value = {
    gauge: gauge.value,
    reading: reading.value,
    defects: defects.value,
    spots: spots.value ?? [],
    job: job?.file,
    filmRecord: filmRecord.value,
    templates: templates.value,
    settings,
  };
  return { value, diagnostics: all };
}

/** Each of several files once, whatever it holds. */
export async function loadFiles(
  operands: readonly string[],
  world: World,
): Promise<Outcome<readonly LoadedFile[]>> {
  const loaded = [];
  // In order, for a pipe can be read once.
  for (const name of operands) loaded.push(await world.load(name));
  const diagnostics = loaded.flatMap((one) => one.diagnostics);
  const files = loaded.flatMap(({ file }) => file ?? []);
  const firstLike = (file: LoadedFile): number => files.findIndex((other) => isSame(other, file));
  const twice = files.flatMap((file, i) => {
    const first = firstLike(file);
    return first === i ? [] : [readOnce(file, files[first] ?? file)];
  });
  const value = files.filter((file, i) => firstLike(file) === i);
  return { value, diagnostics: [...diagnostics, ...twice] };
}

/** A file by itself is not asked for its sum. */
const isSame = (one: LoadedFile, other: LoadedFile): boolean =>
  one === other || one.sha256 === other.sha256;

/** The same bytes under two names are one file: its readings are not doubled. */
const readOnce = (file: LoadedFile, first: LoadedFile): Diagnostic =>
  warning(
    'file-twice',
    `${saidFile(file.name)} holds the same bytes as ${saidFile(first.name)}: read once`,
    {
      at: { file: file.name },
    },
  );

/** Nothing where none is named. */
export async function loadOptional(
  name: string | undefined,
  world: World,
): Promise<Outcome<LoadedFile>> {
  if (name === undefined) return { diagnostics: [] };
  const { file, diagnostics } = await world.load(name);
  return file === undefined ? { diagnostics } : { value: file, diagnostics };
}

/** What earlier visits took, as typed and as the job names it, relative to its own folder: the later of the two. */
async function loadFilmRecord(
  typed: string | undefined,
  job: JobLayer | undefined,
  world: World,
): Promise<Outcome<Placed<FilmRecord>>> {
  const none: Outcome<Placed<FilmRecord>> = { diagnostics: [] };
  const named = recordOfJob(job);
  const ofJob = named === undefined ? none : readNamed(named, world, readFilmRecordFile);
  if (typed === undefined) return ofJob;
  const [own, other] = await Promise.all([
    readShown(asTyped(typed), world, readFilmRecordFile),
    ofJob,
  ]);
  const diagnostics = [...own.diagnostics, ...other.diagnostics.filter(isNotMissing)];
  if (own.value === undefined || other.value === undefined) return { ...own, diagnostics };
  const { laterRecord } = await import('../../tasks/survey/later-record.ts');
  const later = laterRecord(own.value, other.value);
  return { ...later, diagnostics: [...diagnostics, ...later.diagnostics] };
}

/** Who names a record by hand may have moved the one of the job. */
const isNotMissing = ({ code }: Diagnostic): boolean => code !== 'file-missing';

function recordOfJob(job: JobLayer | undefined): NamedFile | undefined {
  const value = job?.file.value.filmRecord;
  if (job === undefined || value === undefined) return undefined;
  const { file, folder } = job;
  return { value, folder, origin: 'job', at: file.placeOf(['film_record']) };
}

const readFilmRecordFile: Reader<Placed<FilmRecord>> = async (file, text) =>
  (await import('../../formats/film-record.ts')).readFilmRecord(file, text);

/** The templates to choose from, and the one that is named. */
const templatesInForce = (
  { template, templates, templateRules, nearside }: Settings,
  world: World,
): Promise<Outcome<LoadedTemplates>> =>
  loadTemplates({ chosen: template, own: templates }, world, {
    rules: templateRules,
    nearside: nearside.value,
  });

/** Every template there is to choose from: the built-in ones, and those of the shop files. */
export const everyTemplate = (
  settings: Settings,
  world: World,
): Promise<Outcome<LoadedTemplates>> =>
  templatesInForce({ ...settings, template: undefined }, world);

/** What to read and how. */
export const readRequest = (
  {
    gauge,
    reading,
    settings,
    templates,
  }: Pick<Inputs, 'gauge' | 'reading' | 'settings' | 'templates'>,
  { vehicle }: TypedOptions,
): ReadRequest => {
  const { value: unit, origin } = settings.readingUnit;
  const isAsked = origin === 'flag' || origin === 'list';
  const { usual, typed, decided } = reading;
  const plausible = settings.film.measurement;
  return {
    files: gauge,
    ...templates,
    templateRules: settings.templateRules,
    intake: { ...usual, plausible, ...(unit === null || isAsked ? {} : { usualUnit: unit }) },
    typed,
    decided,
    vehicle,
    keepUnknownPanels: false,
  };
};

/** The same for a survey of what was read. */
export function surveyRequest(inputs: Inputs, options: TypedOptions): SurveyFilesRequest {
  const { job, filmRecord, settings } = inputs;
  return {
    ...readRequest(inputs, options),
    size: job === undefined ? undefined : statedSize(job),
    settings,
    job,
    filmRecord,
    panels: options.panel ?? [],
    why: options.why ?? [],
    spots: inputs.spots,
    defects: inputs.defects,
  };
}

function statedSize({ value, placeOf }: Placed<Job>): StatedSize {
  const { length, width, height }: JobVehicle = value.vehicle ?? {};
  return {
    size: {
      ...(length === undefined ? {} : { length }),
      ...(width === undefined ? {} : { width }),
      ...(height === undefined ? {} : { height }),
    },
    placeOf: (dimension) => placeOf(['vehicle', `${dimension}_m`]),
  };
}
