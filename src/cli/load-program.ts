/**
 * Loads the program from the scripts that the build made. Beside each lies what V8 compiled of it when it
 * was built: a command that runs once spends most of its time on being compiled, and so starts in about
 * half of it. V8 takes compiled code only where its version and flags are the same, and it takes that on
 * trust, so it is handed over only when it is whole and was made of this very script. Anywhere else the
 * script is compiled as ever.
 *
 * V8 makes all that is handed over into objects before it runs any of it: the commands that are run most have
 * scripts and compiled code of their own, without what only other commands need.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { Script } from 'node:vm';
import { once } from '../base/kept.ts';
import type { program } from './program.ts';

type Program = typeof program;

export type LoadedProgram = {
  readonly program: Program;
  /** Whether compiled code lay ready and V8 took it. */
  readonly isCompiled: boolean;
  /** Keeps what has been compiled until now for the next start for the same. */
  readonly keepCompiled: () => void;
};

/** What a script is for: `program` holds all. */
export const scripts = ['survey', 'plan', 'program'] as const;
export type ScriptName = (typeof scripts)[number];

/** A file that esbuild made: gives what it exports, when it is run with a way to ask for others. */
type Part = (part: (name: string) => unknown) => unknown;

export function loadProgram(folder: string, what: ScriptName = 'program'): LoadedProgram {
  const { parts, isCompiled, keepCompiled } = openScript(folder, what);
  const all = once(() => openScript(folder, 'program').parts);
  const made = new Map<string, unknown>();
  const part = (name: string): unknown => {
    if (!made.has(name)) {
      const make = parts[name] ?? all()[name];
      if (make === undefined) throw new Error(`the scripts are of different builds: no ${name}`);
      made.set(name, make(part));
    }
    return made.get(name);
  };
  const { program } = part('program.js') as { readonly program: Program };
  return { program, isCompiled, keepCompiled };
}

type OpenedScript = Pick<LoadedProgram, 'isCompiled' | 'keepCompiled'> & {
  readonly parts: Readonly<Record<string, Part>>;
};

function openScript(folder: string, name: ScriptName): OpenedScript {
  const filename = join(folder, `${name}.cjs`);
  const compiledFile = join(folder, `${name}.cache`);
  const text = readFileSync(filename);
  const cachedData = compiledFor(text, compiledFile);
  const script = new Script(text.toString('latin1'), {
    filename,
    ...(cachedData === undefined ? {} : { cachedData }),
  });
  return {
    parts: script.runInThisContext()(createRequire(filename), folder),
    isCompiled: script.cachedDataRejected === false,
    keepCompiled: () => {
      const compiled = script.createCachedData();
      writeFileSync(compiledFile, Buffer.concat([sealOf(text, compiled), compiled]));
    },
  };
}

/** V8 would copy code that does not lie on a multiple of eight. */
const SEAL_BYTES = 8;

/**
 * A checksum of each: against damage and mixed builds; whoever can write here can change the script too. A
 * hash of `node:crypto` is no better at that and takes 3 ms more to load and to make.
 */
function sealOf(text: Buffer, compiled: Buffer): Buffer {
  const seal = Buffer.alloc(SEAL_BYTES);
  seal.writeInt32LE(checksum(text), 0);
  seal.writeInt32LE(checksum(compiled), 4);
  return seal;
}

/**
 * Mixed in as MurmurHash2 mixes words of 32 bits. Each step maps different states to different ones, so
 * that a change within one word is always noticed.
 */
function checksum(bytes: Buffer): number {
  const words = new Int32Array(bytes.buffer, bytes.byteOffset, bytes.length >> 2);
  // Looked up once: half of the loop is over before V8 has made it quick, and more on a busy machine.
  const { length } = words;
  const { imul } = Math;
  let hash = bytes.length;
  for (let i = 0; i < length; i += 1) {
    hash = imul(hash ^ (words[i] as number), 0x5bd1e995);
    hash ^= hash >>> 15;
  }
  const afterWords = bytes.subarray(words.length << 2);
  return Math.imul(hash ^ afterWords.reduce((word, byte) => (word << 8) | byte, 0), 0x5bd1e995);
}

/** The compiled code in a file, if it was made of this text and is whole. */
function compiledFor(text: Buffer, path: string): Buffer | undefined {
  const sealed = contentOf(path);
  if (sealed === undefined) return undefined;
  const compiled = sealed.subarray(SEAL_BYTES);
  return sealOf(text, compiled).equals(sealed.subarray(0, SEAL_BYTES)) ? compiled : undefined;
}

function contentOf(path: string): Buffer | undefined {
  try {
    return readFileSync(path);
  } catch {
    return undefined;
  }
}
