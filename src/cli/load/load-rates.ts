/** The rates file that is named, by whatever layer, and the settings that go with it. */
import { isAbsolute, join } from 'node:path';
import { hasErrors, type Outcome } from '../../base/diagnostics.ts';
import type { Placed } from '../../formats/json/placed.ts';
import type { RatesFile } from '../../formats/rates.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import type { World } from '../command.ts';
import { readSettingsFile } from './load-settings.ts';

/** Where it lies, as the run finds it. */
function ratesPath({ ratesFile }: Pick<Settings, 'ratesFile'>): string | undefined {
  if (ratesFile === undefined) return undefined;
  const { value, folder } = ratesFile;
  return isAbsolute(value) || folder === '' ? value : join(folder, value);
}

export async function loadWithRates(
  settings: Settings,
  world: Pick<World, 'load'>,
): Promise<Outcome<Settings>> {
  const { ratesFile } = settings;
  const path = ratesPath(settings);
  if (ratesFile === undefined || path === undefined) return { value: settings, diagnostics: [] };
  const { value: name, at, origin } = ratesFile;
  // The folder of a file that nobody named is private.
  const shown = origin === 'project' || origin === 'user' ? name : path;
  const read = await readSettingsFile(path, shown, world, readRatesFile);
  const hint = 'mend the path: it is relative to this file';
  const diagnostics = read.diagnostics.map((one) =>
    one.code === 'file-missing' && at !== undefined
      ? { ...one, message: one.message.replaceAll(path, shown), at, hint }
      : one,
  );
  if (read.value === undefined || hasErrors(diagnostics)) return { diagnostics };
  const { withRates } = await import('../../tasks/settings/rates-in-use.ts');
  const used = withRates(settings, { file: read.value, name: shown, origin });
  return { ...used, diagnostics: [...diagnostics, ...used.diagnostics] };
}

const readRatesFile = async (file: string, text: string): Promise<Outcome<Placed<RatesFile>>> =>
  (await import('../../formats/rates.ts')).readRates(file, text);
