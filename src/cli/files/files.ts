/** Reading named files and standard input. */
import { closeSync, createReadStream, openSync, readSync } from 'node:fs';
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { STANDARD_INPUT, saidFile } from '../../base/file-name.ts';
import { once } from '../../base/kept.ts';
import type { LoadedFile } from '../../tasks/read/read-request.ts';
import type { World } from '../command.ts';
import { sha256Of } from './checksum.ts';
import { statOrNothing } from './file-status.ts';
import { missingHint } from './missing-file.ts';
import { reasonOf, systemCodeOf } from './system-code.ts';

/** Bytes without a line end after which a file is no text in lines, whatever the limit on rows. */
const longestLine = 8 * 1024 * 1024;
/** Bytes of one file: all of it is held in memory. */
const largestFile = 256 * 1024 * 1024;

export const loadFile: World['load'] = async (name) => {
  try {
    const chunks: Uint8Array[] = [];
    const lines = { ended: 0, sinceEnd: 0 };
    let size = 0;
    for await (const chunk of bytesOf(name)) {
      size += chunk.length;
      followLines(lines, chunk);
      if (lines.sinceEnd > longestLine) return { diagnostics: [endless(name, lines.ended + 1)] };
      if (size > largestFile) return { diagnostics: [tooLarge(name)] };
      chunks.push(chunk);
    }
    return { file: fileOf(name, Buffer.concat(chunks, size)), diagnostics: [] };
  } catch (problem) {
    return { diagnostics: [unreadable(name, problem)] };
  }
};

/** Its sum is for records, and to tell files apart: a page of one file never asks for it. */
function fileOf(name: string, bytes: Uint8Array): LoadedFile {
  const sum = once(() => sha256Of(bytes));
  return {
    name,
    bytes,
    get sha256() {
      return sum();
    },
  };
}

/** Bytes that are read at a time. */
const partBytes = 1024 * 1024;

/** A file or standard input as it comes; left early, it is closed and the rest is never read. */
function bytesOf(name: string): AsyncIterable<Uint8Array> | Iterable<Uint8Array> {
  if (name === STANDARD_INPUT) return process.stdin;
  const stat = statOrNothing(name);
  return stat?.isFile() === true
    ? partsOf(name, stat.size)
    : createReadStream(name, { highWaterMark: partBytes });
}

/** Of a file on a disk, which nobody waits for: Node's stream of it takes longer to load than this to read. */
function* partsOf(name: string, size: number): Iterable<Uint8Array> {
  const file = openSync(name, 'r');
  try {
    for (;;) {
      const part = Buffer.allocUnsafe(Math.min(partBytes, Math.max(size, 64 * 1024)));
      const read = readSync(file, part);
      if (read === 0) return;
      yield part.subarray(0, read);
    }
  } finally {
    closeSync(file);
  }
}

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

function unreadable(name: string, problem: unknown): Diagnostic {
  const at = { file: name };
  const code = systemCodeOf(problem);
  if (code === 'ENOENT') {
    const hint = missingHint(name);
    return error('file-missing', `there is no file "${name}"`, { at, hint });
  }
  return error('file-unreadable', `${saidFile(name)} cannot be read: ${reasonOf(problem)}`, {
    at,
    hint: hints.get(code) ?? 'check the path and the disk',
  });
}
const hints: ReadonlyMap<string, string> = new Map([
  ['EISDIR', 'name a file, not a folder'],
  ['EACCES', 'check its permissions'],
  ['EPERM', 'check its permissions'],
]);

/** A pipe can be read once: what is loaded is kept for the run. */
export function loadedOnce(): Pick<World, 'load'> & { readonly names: () => readonly string[] } {
  const loaded = new Map<string, ReturnType<World['load']>>();
  return {
    load: (name) => {
      const file = loaded.get(name) ?? loadFile(name);
      loaded.set(name, file);
      return file;
    },
    names: () => [...loaded.keys()],
  };
}
