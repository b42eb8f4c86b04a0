/** The hours that jobs took, by whatever layer they are named, and the settings that go with them. */
import type { Outcome } from '../../base/diagnostics.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import type { World } from '../command.ts';
import { loadShown, namedFile, toldWhereNamed } from './named-file.ts';

export async function loadWithHistory(
  settings: Settings,
  world: Pick<World, 'load'>,
): Promise<Outcome<Settings>> {
  const { history } = settings;
  if (history === undefined) return { value: settings, diagnostics: [] };
  const { value: file, diagnostics } = await loadShown(namedFile(history), world);
  if (file === undefined) return { diagnostics: diagnostics.map(toldWhereNamed(history)) };
  // The reader of tables is brought along only where there is one to read.
  const { withHistory } = await import('../../tasks/settings/work-history.ts');
  return withHistory(settings, { file, origin: history.origin });
}
