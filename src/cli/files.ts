/** Reading named files and standard input; writing an output so that it is the old or the new, never half. */
import { createHash, randomBytes } from 'node:crypto';
import { createReadStream, fstatSync } from 'node:fs';
import { mkdir, open, rename, stat, unlink, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { type Diagnostic, error } from '../base/diagnostics.ts';
import { STANDARD_INPUT, saidFile } from '../base/file-name.ts';
import type { World } from './command.ts';

/** Bytes without a line end after which a file is no text in lines, whatever the limit on rows. */
const longestLine = 8 * 1024 * 1024;
/** Bytes of one file: all of it is held in memory. */
const largestFile = 256 * 1024 * 1024;

export const loadFile: World['load'] = async (name) => {
  try {
    const chunks: Uint8Array[] = [];
    const hash = createHash('sha256');
    const lines = { ended: 0, sinceEnd: 0 };
    let size = 0;
    for await (const chunk of bytesOf(name)) {
      size += chunk.length;
      followLines(lines, chunk);
      if (lines.sinceEnd > longestLine) return { diagnostics: [endless(name, lines.ended + 1)] };
      if (size > largestFile) return { diagnostics: [tooLarge(name)] };
      hash.update(chunk);
      chunks.push(chunk);
    }
    const bytes = Buffer.concat(chunks, size);
    return { file: { name, bytes, sha256: hash.digest('hex') }, diagnostics: [] };
  } catch (problem) {
    return { diagnostics: [unreadable(name, codeOf(problem))] };
  }
};

/** A file or standard input as it comes; left early, it is closed and the rest is never read. */
const bytesOf = (name: string): AsyncIterable<Uint8Array> =>
  name === STANDARD_INPUT ? process.stdin : createReadStream(name, { highWaterMark: 1024 * 1024 });

/** Line ends so far, and bytes since the last: in every encoding that is read, one holds 0x0A or 0x0D. */
function followLines(lines: { ended: number; sinceEnd: number }, chunk: Uint8Array): void {
  const last = Math.max(chunk.lastIndexOf(0x0a), chunk.lastIndexOf(0x0d));
  if (last === -1) lines.sinceEnd += chunk.length;
  else {
    lines.sinceEnd = chunk.length - last - 1;
    lines.ended += countOf(chunk, chunk.includes(0x0a) ? 0x0a : 0x0d);
  }
}

function countOf(chunk: Uint8Array, byte: number): number {
  let count = 0;
  for (let at = chunk.indexOf(byte); at !== -1; at = chunk.indexOf(byte, at + 1)) count += 1;
  return count;
}

const endless = (name: string, line: number): Diagnostic =>
  error('row-too-long', `the line goes on for more than ${longestLine >> 20} MB`, {
    at: { file: name, line, column: 1, length: 1 },
    hint: 'a table has a line for each row: did the file lose its line ends, or is it no text?',
  });

const tooLarge = (name: string): Diagnostic =>
  error('file-unreadable', `${saidFile(name)} is larger than ${largestFile >> 20} MB`, {
    at: { file: name },
    hint: 'cut it into files of some vehicles each',
  });

const codeOf = (problem: unknown): string =>
  problem instanceof Error && 'code' in problem ? String(problem.code) : String(problem);

const unreadable = (name: string, code: string): Diagnostic =>
  code === 'ENOENT'
    ? error('file-missing', `there is no file "${name}"`, {
        at: { file: name },
        hint: 'check the path',
      })
    : error('file-unreadable', `${saidFile(name)} cannot be read (${code})`, {
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
    const source = input === STANDARD_INPUT ? statOfStandardInput() : await statOrNothing(input);
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
