/** The hours that jobs took, by whatever layer they are named, and the settings that go with them. */
import { isAbsolute, join } from 'node:path';
import type { Outcome } from '../../base/diagnostics.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import type { World } from '../command.ts';

export async function loadWithHistory(
  settings: Settings,
  world: Pick<World, 'load'>,
): Promise<Outcome<Settings>> {
  const { history } = settings;
  if (history === undefined) return { value: settings, diagnostics: [] };
  const { value: name, folder, at, origin } = history;
  const path = isAbsolute(name) || folder === '' ? name : join(folder, name);
  const { file, diagnostics } = await world.load(path);
  // The folder of a file that nobody named is private.
  const shown = origin === 'project' || origin === 'user' ? name : path;
  if (file === undefined) {
    const hint = 'mend the path: it is relative to this file';
    const told = diagnostics.map((one) => ({
      ...one,
      message: one.message.replaceAll(path, shown),
      ...(at === undefined ? {} : { at, hint }),
    }));
    return { diagnostics: told };
  }
  // The reader of tables is brought along only where there is one to read.
  const { withHistory } = await import('../../tasks/settings/work-history.ts');
  const { value, diagnostics: found } = withHistory(settings, {
    file: { name: shown, bytes: file.bytes },
    origin,
  });
  return value === undefined
    ? { diagnostics: [...diagnostics, ...found] }
    : { value, diagnostics: [...diagnostics, ...found] };
}
