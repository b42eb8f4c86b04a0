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
import { join } from 'node:path';
import { Script } from 'node:vm';
import { once } from '../base/kept.ts';
import type { program } from './program.ts';
import { createSealing, readToSeal, WORD_BYTES } from './seal.ts';

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
  const { text, cachedData } = openFiles(filename, compiledFile);
  const script = new Script(text.toString('latin1'), {
    filename,
    ...(cachedData === undefined ? {} : { cachedData }),
  });
  return {
    parts: script.runInThisContext()(process.getBuiltinModule, folder),
    isCompiled: script.cachedDataRejected === false,
    keepCompiled: () => writeFileSync(compiledFile, sealed(text, script.createCachedData())),
  };
}

/** Before the compiled code, a checksum of the script that it was made of and one of itself, a word each. */
const SEAL_BYTES = 2 * WORD_BYTES;

/** They are against damage and mixed builds: whoever can write here can change the script too. */
function sealed(script: Buffer, compiled: Buffer): Buffer {
  const { pieces, sealOf } = createSealing([script.length, compiled.length]);
  const seal = Buffer.alloc(SEAL_BYTES);
  [script, compiled].forEach((bytes, index) => {
    const piece = pieces[index] as Buffer;
    bytes.copy(piece);
    seal.writeBigInt64LE(sealOf(piece), index * WORD_BYTES);
  });
  return Buffer.concat([seal, compiled]);
}

/** A script, and its compiled code if that was made of it and is whole. */
function openFiles(filename: string, compiledFile: string): { text: Buffer; cachedData?: Buffer } {
  try {
    const { pieces, sealOf } = readToSeal([filename, compiledFile]);
    const [text, cache] = pieces as [Buffer, Buffer];
    const cachedData = cache.subarray(SEAL_BYTES);
    const isWhole =
      cache.readBigInt64LE(0) === sealOf(text) &&
      cache.readBigInt64LE(WORD_BYTES) === sealOf(cachedData);
    return isWhole ? { text, cachedData } : { text };
  } catch {
    // No compiled code, too little of it, or no room to look at it: not needed to run.
    return { text: readFileSync(filename) };
  }
}
