/**
 * Writing files: each is the old or the new, never half, and nothing is left beside it. A symbolic link
 * stays and leads to the new; a pipe or a device is written directly.
 */
import { randomBytes } from 'node:crypto';
import { mkdir, open, realpath, rename, unlink } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import type { World } from '../command.ts';
import { linkOrNothing, statOrNothing } from './file-status.ts';
import { removedIfEnded } from './removed-if-ended.ts';
import { readerHasGone, reasonOf } from './system-code.ts';

export async function writeOutput(out: string, text: string): Promise<Diagnostic | undefined> {
  const target = statOrNothing(out);
  try {
    if (target === undefined || target.isFile()) {
      await putInPlace(await fileBehind(out), text, target?.mode);
    } else await writeThrough(out, text);
    return undefined;
  } catch (problem) {
    return readerHasGone(problem) ? undefined : cannotWrite(out, problem);
  }
}

/** The file that a symbolic link leads to; any other name as it is. */
export async function fileBehind(name: string): Promise<string> {
  return linkOrNothing(name)?.isSymbolicLink() === true ? realpath(name) : name;
}

/** Written beside the target, flushed, then renamed over it; `mode` is that of a file that is replaced. */
async function putInPlace(path: string, text: string, mode: number | undefined): Promise<void> {
  const beside = join(dirname(path), `.leastcut-${randomBytes(6).toString('hex')}`);
  const forget = removedIfEnded(beside);
  try {
    const handle = await open(beside, 'wx');
    try {
      // Some file systems know no modes.
      if (mode !== undefined) await handle.chmod(mode).catch(() => undefined);
      await handle.writeFile(text);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(beside, path);
  } catch (problem) {
    await unlink(beside).catch(() => undefined);
    throw problem;
  } finally {
    forget();
  }
}

async function writeThrough(path: string, text: string): Promise<void> {
  const handle = await open(path, 'w');
  try {
    await handle.writeFile(text);
  } finally {
    await handle.close();
  }
}

export const cannotWrite = (out: string, problem: unknown): Diagnostic =>
  error('output-unwritable', `"${out}" cannot be written: ${reasonOf(problem)}`, {
    at: { file: out },
    hint: 'check the folder, its permissions and the room on the disk',
  });

/** New files only: when one of them is there already, or cannot be written, none is left behind. */
export const createFiles: World['create'] = async (folder, files) => {
  const there = files.filter(({ path }) => statOrNothing(path) !== undefined);
  const [first, ...others] = there;
  if (first !== undefined) return [alreadyThere(first.path, others.length)];
  const created: string[] = [];
  try {
    for (const { path, text } of files) {
      await mkdir(dirname(path), { recursive: true });
      const handle = await open(path, 'wx');
      created.push(path);
      await handle.writeFile(text).finally(() => handle.close());
    }
    return [];
  } catch (problem) {
    await Promise.all(created.map((path) => unlink(path).catch(() => undefined)));
    const hint = 'check the folder, its permissions and the room on the disk';
    const message = `nothing can be written in "${folder}": ${reasonOf(problem)}`;
    return [error('output-unwritable', message, { at: { file: folder }, hint })];
  }
};

const alreadyThere = (path: string, more: number): Diagnostic =>
  error(
    'init-exists',
    `"${path}" exists${more === 0 ? '' : `, and ${more} more of these files`}: nothing was written`,
    {
      at: { file: path },
      hint: 'name another folder, or move the file away first',
    },
  );
