/** Settings files, named and found, with what was typed → the settings in force. */
import { dirname } from 'node:path';
import { hasErrors, type Outcome } from '../../base/diagnostics.ts';
import { micrometres } from '../../base/units.ts';
import type { Job } from '../../formats/job/job.ts';
import type { Placed } from '../../formats/json/placed.ts';
import type { Shop } from '../../formats/shop/shop.ts';
import type { Effective } from '../../tasks/settings/setting-origin.ts';
import { resolveSettings, type Settings } from '../../tasks/settings/settings.ts';
import type { JobLayer, ShopLayer, TypedSettings } from '../../tasks/settings/settings-layers.ts';
import type { World } from '../command.ts';
import { variableOf } from '../options/environment.ts';
import { type OptionName, optionSpecs, type TypedOptions } from '../options.ts';
import { asTyped, type Reader, readShown } from './named-file.ts';
import { isSameFile, type SoughtFile, seekSettingsFiles } from './settings-files.ts';

export type LoadedSettings = {
  readonly settings: Settings;
  readonly job: JobLayer | undefined;
  /** Where settings files were looked for, found or not. */
  readonly sought: readonly SoughtFile[];
};

/** Every problem of all the files at once. */
export async function loadSettings(
  options: TypedOptions,
  world: World,
): Promise<Outcome<LoadedSettings>> {
  const sought = seekSettingsFiles(world.surroundings);
  const [job, named] = await Promise.all([
    loadJob(options.job, world),
    loadNamedShop(options, world),
  ]);
  const found = await Promise.all(
    sought.filter((file) => file.found).map((file) => loadFoundShop(file, options.shop, world)),
  );
  const diagnostics = [job, named, ...found].flatMap((part) => part.diagnostics);
  if (hasErrors(diagnostics)) return { diagnostics };
  const shops = [named, ...found].flatMap(({ value }) => value ?? []);
  const typed = typedSettings(options, world);
  const settings = resolveSettings({ typed, job: job.value, shops });
  return { value: { settings, job: job.value, sought }, diagnostics };
}

/** The same for a command that is about no vehicle. */
export async function loadShopSettings(
  { job: _, ...options }: TypedOptions,
  world: World,
): Promise<Outcome<Settings>> {
  const { value, diagnostics } = await loadSettings(options, world);
  return value === undefined ? { diagnostics } : { value: value.settings, diagnostics };
}

async function loadJob(name: string | undefined, world: World): Promise<Outcome<JobLayer>> {
  if (name === undefined) return { diagnostics: [] };
  const { value, diagnostics } = await readShown(asTyped(name), world, readJobFile);
  return value === undefined
    ? { diagnostics }
    : { value: { file: value, folder: dirname(name) }, diagnostics };
}

async function loadNamedShop(options: TypedOptions, world: World): Promise<Outcome<ShopLayer>> {
  const { shop: name } = options;
  if (name === undefined) return { diagnostics: [] };
  const { value, diagnostics } = await readShown(asTyped(name), world, readShopFile);
  const named = world.fromEnvironment.has('shop') ? variableOf('shop') : 'flag';
  return value === undefined
    ? { diagnostics }
    : { value: { origin: 'shop', file: value, folder: dirname(name), named }, diagnostics };
}

/** A found file that was named as well counts as named. */
async function loadFoundShop(
  { kind, path, shown }: SoughtFile,
  named: string | undefined,
  world: World,
): Promise<Outcome<ShopLayer>> {
  if (named !== undefined && isSameFile(named, path)) return { diagnostics: [] };
  const { value, diagnostics } = await readShown({ path, shown }, world, readShopFile);
  return value === undefined
    ? { diagnostics }
    : { value: { origin: kind, file: value, folder: dirname(path), named: null }, diagnostics };
}

// The readers of settings bring a validation library along, which most runs do without.
const readJobFile: Reader<Placed<Job>> = async (name, text) =>
  (await import('../../formats/job/plain-job.ts')).readPlainJob(name, text) ??
  (await import('../../formats/job/read-job.ts')).readJob(name, text);
const readShopFile: Reader<Placed<Shop>> = async (name, text) =>
  (await import('../../formats/shop/shop.ts')).readShop(name, text);

/** What was typed, or stands in the list of a batch or in the environment, each with where it does. */
function typedSettings(options: TypedOptions, { fromEnvironment, fromList }: World): TypedSettings {
  const said = <T>(name: OptionName, value: T | undefined): Effective<T> | undefined => {
    if (value === undefined) return undefined;
    const where = fromList?.get(name);
    if (where !== undefined) return { value, origin: 'list', where };
    return fromEnvironment.has(name)
      ? { value, origin: 'environment', where: variableOf(name) }
      : { value, origin: 'flag', where: optionSpecs[name].flags.replace(/ <.*/, '') };
  };
  const { floorUm } = options;
  const all = {
    aim: said('aim', options.aim),
    riskPct: said('riskPct', options.riskPct),
    policy: said('policy', options.policy),
    finish: said('finish', options.finish),
    floor: said('floorUm', floorUm === undefined ? undefined : micrometres(floorUm)),
    template: said('template', options.template),
    gauge: said('gauge', options.gauge),
    rates: said('rates', options.rates),
    history: said('history', options.history),
    kind: said('kind', options.kind),
    readingUnit: said('readingUnit', options.readingUnit),
    nearside: said('nearside', options.nearside),
    showUnit: said('showUnit', options.showUnit),
    color: said('color', options.color),
  };
  return Object.fromEntries(
    Object.entries(all).filter(([, value]) => value !== undefined),
  ) as TypedSettings;
}
