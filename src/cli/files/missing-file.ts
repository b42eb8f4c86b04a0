/** What may be meant by a file that is not there. Its neighbours are looked at, and none is taken for it. */
import { existsSync, readdirSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { suggest } from '../../base/did-you-mean.ts';
import { linkOrNothing } from './file-status.ts';

/** A hint: a link that leads nowhere, how it is written here, the folder that is not there either, or a name that is near. */
export function missingHint(name: string): string {
  if (linkOrNothing(name) !== undefined) return 'it is a link, and what it leads to is not there';
  const parted = name.replaceAll('\\', '/');
  if (parted !== name && existsSync(parted)) return `folders are parted by / here: "${parted}"`;
  const folder = dirname(parted);
  if (!existsSync(folder)) return `check the path: there is no folder "${folder}"`;
  const near = suggest(basename(parted), namesIn(folder));
  if (near === undefined) return 'check the path';
  return folder === '.' ? near : near.replace('"', () => `"${join(folder, '/')}`);
}

/** None where the folder may not be read. */
function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}
