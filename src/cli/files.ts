/** Reading named files and standard input; writing an output so that it is the old or the new, never half. */
import { createHash, randomBytes } from 'node:crypto';
import { fstatSync } from 'node:fs';
import { mkdir, open, readFile, rename, stat, unlink, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { type Diagnostic, error } from '../base/diagnostics.ts';
import type { LoadedFile } from '../tasks/read-vehicles.ts';
import type { World } from './command.ts';

/** Name of standard input in places and records. */
export const STDIN_NAME = '-';

export const loadFile: World['load'] = async (name) => {
  try {
    const bytes = name === STDIN_NAME ? await readStandardInput() : await readFile(name);
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    return { file: { name, bytes, sha256 } satisfies LoadedFile, diagnostics: [] };
  } catch (problem) {
    return { diagnostics: [unreadable(name, codeOf(problem))] };
  }
};

async function readStandardInput(): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk as Uint8Array);
  return Buffer.concat(chunks);
}

const codeOf = (problem: unknown): string =>
  problem instanceof Error && 'code' in problem ? String(problem.code) : String(problem);

const unreadable = (name: string, code: string): Diagnostic =>
  code === 'ENOENT'
    ? error('file-missing', `there is no file "${name}"`, {
        at: { file: name },
        hint: 'check the path',
      })
    : error('file-unreadable', `"${name}" cannot be read (${code})`, {
        at: { file: name },
        hint: code === 'EISDIR' ? 'name a file, not a folder' : 'check its permissions',
      });

/** Why the output may not be written there, or nothing. */
export async function outputProblem(
  out: string,
  force: boolean,
  inputs: readonly string[],
): Promise<Diagnostic | undefined> {
  const target = await statOrNothing(out);
  if (target === undefined) return undefined;
  for (const input of inputs) {
    const source = input === STDIN_NAME ? statOfStandardInput() : await statOrNothing(input);
    if (source !== undefined && source.ino === target.ino && source.dev === target.dev) {
      return error('output-is-input', `"${out}" is one of the inputs`, {
        at: { file: out },
        hint: 'an input is never changed: name another file',
      });
    }
  }
  if (target.isDirectory()) {
    return error('output-unwritable', `"${out}" is a folder`, { at: { file: out } });
  }
  return target.isFile() && !force
    ? error('output-exists', `"${out}" exists`, { at: { file: out }, hint: '--force replaces it' })
    : undefined;
}

const statOrNothing = async (name: string) => stat(name).catch(() => undefined);

/** A file may stand behind standard input; where that is closed, nothing does. */
function statOfStandardInput() {
  try {
    return fstatSync(0);
  } catch {
    return undefined;
  }
}

/** Written beside the target, flushed, then renamed over it. Pipes and devices are written directly. */
export async function writeOutput(out: string, text: string): Promise<Diagnostic | undefined> {
  const target = await statOrNothing(out);
  const direct = target !== undefined && !target.isFile();
  const beside = join(dirname(out), `.${basename(out)}.${randomBytes(6).toString('hex')}`);
  try {
    const handle = await open(direct ? out : beside, direct ? 'w' : 'wx', target?.mode ?? 0o666);
    try {
      await handle.writeFile(text);
      if (!direct) await handle.sync();
    } finally {
      await handle.close();
    }
    if (!direct) await rename(beside, out);
    return undefined;
  } catch (problem) {
    if (!direct) await unlink(beside).catch(() => undefined);
    return error('output-unwritable', `"${out}" cannot be written (${codeOf(problem)})`, {
      at: { file: out },
      hint: 'check the folder, its permissions and the room on the disk',
    });
  }
}

/** New files only: when one of them is there already, or cannot be written, none is left behind. */
export const createFiles: World['create'] = async (folder, files) => {
  const stats = await Promise.all(files.map(({ path }) => statOrNothing(path)));
  const there = files.filter((_, i) => stats[i] !== undefined);
  if (there.length > 0) return there.map(({ path }) => alreadyThere(path));
  const created: string[] = [];
  try {
    for (const { path, text } of files) {
      await mkdir(dirname(path), { recursive: true });
      await writeFile(path, text, { flag: 'wx' });
      created.push(path);
    }
    return [];
  } catch (problem) {
    await Promise.all(created.map((path) => unlink(path).catch(() => undefined)));
    const hint = 'check the folder, its permissions and the room on the disk';
    const message = `nothing can be written in "${folder}" (${codeOf(problem)})`;
    return [error('output-unwritable', message, { at: { file: folder }, hint })];
  }
};

const alreadyThere = (path: string): Diagnostic =>
  error('init-exists', `"${path}" exists: nothing was written`, {
    at: { file: path },
    hint: 'name another folder, or move the file away first',
  });
