/**
 * Settings files that are found without being named: `leastcut.json` in the working directory or above
 * it, and the user's own. They are shown relative to the working directory or to the home, so that
 * no output carries a private path.
 */
import { dirname, isAbsolute, join, relative, sep } from 'node:path';
import { realPathOrNothing, statOrNothing } from '../files/file-status.ts';
import type { Surroundings } from '../surroundings.ts';

export type SoughtFile = {
  readonly kind: 'project' | 'user';
  readonly path: string;
  /** The path as people are shown it. */
  readonly shown: string;
  readonly found: boolean;
};

const PROJECT_FILE = 'leastcut.json';
const USER_FILE = join('leastcut', 'shop.json');

/** Where it was looked, in order of precedence: at most one project file and one user file are found. */
export const seekSettingsFiles = (around: Surroundings): readonly SoughtFile[] => [
  ...seekProject(around),
  ...seekUser(around),
];

function seekProject({ workingDirectory }: Surroundings): readonly SoughtFile[] {
  if (workingDirectory === undefined) return [];
  for (let folder = workingDirectory; ; folder = dirname(folder)) {
    const path = join(folder, PROJECT_FILE);
    if (isFile(path)) {
      const shown = relative(workingDirectory, path).split(sep).join('/');
      return [{ kind: 'project', path, shown, found: true }];
    }
    if (folder === dirname(folder)) break;
  }
  const path = join(workingDirectory, PROJECT_FILE);
  return [{ kind: 'project', path, shown: `${PROJECT_FILE}, here and above`, found: false }];
}

function seekUser(around: Surroundings): readonly SoughtFile[] {
  const folder = userFolder(around);
  if (folder === undefined) return [];
  const path = join(folder.path, USER_FILE);
  const shown = `${folder.shown}/${USER_FILE.split(sep).join('/')}`;
  return [{ kind: 'user', path, shown, found: isFile(path) }];
}

type Folder = { readonly path: string; readonly shown: string };

/** XDG base directories: a relative path there is not to be heeded (XDG Base Directory 0.8). */
function userFolder({ environment, home, platform }: Surroundings): Folder | undefined {
  if (platform === 'win32') {
    const path = environment['APPDATA'] ?? '';
    return path === '' ? undefined : { path, shown: '%APPDATA%' };
  }
  const stated = environment['XDG_CONFIG_HOME'] ?? '';
  const usual = join(home, '.config');
  return isAbsolute(stated) && stated !== usual
    ? { path: stated, shown: '$XDG_CONFIG_HOME' }
    : { path: usual, shown: '~/.config' };
}

const isFile = (path: string): boolean => statOrNothing(path)?.isFile() === true;

/** Whether two names lead to the same file. */
export function isSameFile(a: string, b: string): boolean {
  const first = realPathOrNothing(a);
  return first !== undefined && first === realPathOrNothing(b);
}
