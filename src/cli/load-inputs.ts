/** The files a command names → loaded files and settings; every problem of all of them at once. */
import { type Diagnostic, error, hasErrors, type Outcome, warning } from '../base/diagnostics.ts';
import { micrometres } from '../base/units.ts';
import { correctionModel } from '../formats/data/correction-defaults.ts';
import { builtInTemplates } from '../formats/data/templates.ts';
import type { Job } from '../formats/job.ts';
import type { Shop } from '../formats/shop.ts';
import type { LoadedFile, ReadRequest } from '../tasks/read-vehicles.ts';
import { resolveSettings, type Settings } from '../tasks/settings.ts';
import type { SurveyFilesRequest } from '../tasks/survey-files.ts';
import type { World } from './command.ts';
import type { TypedOptions } from './options.ts';

export type Inputs = {
  readonly gauge: readonly LoadedFile[];
  readonly defects: LoadedFile | undefined;
  readonly job: Job | undefined;
  readonly settings: Settings;
};

export async function loadInputs(
  operands: readonly string[],
  options: TypedOptions,
  world: World,
): Promise<Outcome<Inputs>> {
  const gauge = await loadGauge(operands, world);
  const [defects, job, shop] = await Promise.all([
    loadOptional(options.defects, world),
    loadSettings(options.job, world, readJobFile),
    loadSettings(options.shop, world, readShopFile),
  ]);
  const diagnostics = [gauge, defects, job, shop].flatMap((part) => part.diagnostics);
  if (gauge.value === undefined || hasErrors(diagnostics)) return { diagnostics };
  const settings = resolveSettings({ flags: flagsOf(options), job: job.value, shop: shop.value });
  return {
    value: { gauge: gauge.value, defects: defects.value, job: job.value, settings },
    diagnostics,
  };
}

export async function loadGauge(
  operands: readonly string[],
  world: World,
): Promise<Outcome<readonly LoadedFile[]>> {
  const loaded = [];
  // In order, for a pipe can be read once.
  for (const name of operands) loaded.push(await world.load(name));
  const diagnostics = loaded.flatMap((one) => one.diagnostics);
  const files = loaded.flatMap(({ file }) => file ?? []);
  const twice = files.flatMap((file, i) => {
    const first = files.findIndex(({ sha256 }) => sha256 === file.sha256);
    return first === i ? [] : [readOnce(file, files[first] ?? file)];
  });
  const value = files.filter(
    ({ sha256 }, i) => files.findIndex((other) => other.sha256 === sha256) === i,
  );
  return { value, diagnostics: [...diagnostics, ...twice] };
}

/** The same bytes under two names are one file: its readings are not doubled. */
const readOnce = (file: LoadedFile, first: LoadedFile): Diagnostic =>
  warning('file-twice', `"${file.name}" holds the same bytes as "${first.name}": read once`, {
    at: { file: file.name },
  });

async function loadOptional(name: string | undefined, world: World): Promise<Outcome<LoadedFile>> {
  if (name === undefined) return { diagnostics: [] };
  const { file, diagnostics } = await world.load(name);
  return file === undefined ? { diagnostics } : { value: file, diagnostics };
}

type SettingsReader<T> = (file: LoadedFile, text: string) => Promise<Outcome<T>>;

async function loadSettings<T>(
  name: string | undefined,
  world: World,
  read: SettingsReader<T>,
): Promise<Outcome<T>> {
  const { value: file, diagnostics } = await loadOptional(name, world);
  if (file === undefined) return { diagnostics };
  try {
    return await read(file, new TextDecoder('utf-8', { fatal: true }).decode(file.bytes));
  } catch (problem) {
    if (!(problem instanceof TypeError)) throw problem;
    return { diagnostics: [notUtf8(file.name)] };
  }
}

const notUtf8 = (file: string): Diagnostic =>
  error('json-syntax', 'the file is not UTF-8', { at: { file }, hint: 'save it as UTF-8' });

// The readers of settings bring a validation library along, which most runs do without.
const readJobFile: SettingsReader<Job> = async ({ name }, text) =>
  (await import('../formats/job.ts')).readJob(name, text);

const readShopFile: SettingsReader<Shop> = async ({ name }, text) =>
  (await import('../formats/shop.ts')).readShop(name, text, {
    machines: correctionModel.machines.map(({ id }) => id),
    pads: correctionModel.pads.map(({ id }) => id),
    products: correctionModel.products.map(({ id }) => id),
  });

const flagsOf = ({ aim, riskPct, policy, finish, floorUm }: TypedOptions) => ({
  ...(aim === undefined ? {} : { aim }),
  ...(riskPct === undefined ? {} : { riskPct }),
  ...(policy === undefined ? {} : { policy }),
  ...(finish === undefined ? {} : { finish }),
  ...(floorUm === undefined ? {} : { floor: micrometres(floorUm) }),
});

/** What to read and how, from what was typed and what the job says. */
export const readRequest = (
  files: readonly LoadedFile[],
  options: TypedOptions,
  job: Job | undefined,
  keepUnknownPanels = false,
): ReadRequest => ({
  files,
  templates: builtInTemplates,
  templateId: options.template ?? job?.template,
  intake: options.readingUnit === undefined ? {} : { unit: options.readingUnit },
  vehicle: options.vehicle,
  keepUnknownPanels,
});

/** The same for a survey of what was read. */
export const surveyRequest = (
  { gauge, job, settings }: Inputs,
  options: TypedOptions,
): SurveyFilesRequest => ({
  ...readRequest(gauge, options, job),
  settings,
  hasJob: job !== undefined,
  identity: job?.vehicle ?? null,
  panels: options.panel ?? [],
});
