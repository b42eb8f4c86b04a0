/** The rates file that is named, by whatever layer, and the settings that go with it. */
import { hasErrors, type Outcome } from '../../base/diagnostics.ts';
import type { Placed } from '../../formats/json/placed.ts';
import type { RatesFile } from '../../formats/rates.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import type { World } from '../command.ts';
import { namedFile, type Reader, readNamed } from './named-file.ts';

export async function loadWithRates(
  settings: Settings,
  world: Pick<World, 'load'>,
): Promise<Outcome<Settings>> {
  const { ratesFile } = settings;
  if (ratesFile === undefined) return { value: settings, diagnostics: [] };
  const { value: file, diagnostics } = await readNamed(ratesFile, world, readRatesFile);
  if (file === undefined || hasErrors(diagnostics)) return { diagnostics };
  const { withRates } = await import('../../tasks/settings/rates-in-use.ts');
  const name = namedFile(ratesFile).shown;
  const used = withRates(settings, { file, name, origin: ratesFile.origin });
  return { ...used, diagnostics: [...diagnostics, ...used.diagnostics] };
}

const readRatesFile: Reader<Placed<RatesFile>> = async (file, text) =>
  (await import('../../formats/rates.ts')).readRates(file, text);
