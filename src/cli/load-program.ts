/**
 * Loads the program that the build made into one script. Beside it lies what V8 compiled of it when it
 * was built: a command that runs once spends most of its time on being compiled, and so starts in about
 * half of it. V8 takes compiled code only where its version and flags are the same, and it takes that on
 * trust, so it is handed over only when it is whole and was made of this very script. Anywhere else the
 * script is compiled as ever.
 */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { Script } from 'node:vm';
import type { program } from './program.ts';

type Program = typeof program;

export type LoadedProgram = {
  readonly program: Program;
  /** Whether compiled code lay ready and V8 took it. */
  readonly isCompiled: boolean;
  /** Keeps what has been compiled until now for the next start. */
  readonly keepCompiled: () => void;
};

export function loadProgram(folder: string): LoadedProgram {
  const filename = join(folder, 'program.cjs');
  const cache = join(folder, 'program.cache');
  const text = readFileSync(filename);
  const cachedData = compiledFor(text, cache);
  const script = new Script(text.toString('latin1'), {
    filename,
    ...(cachedData === undefined ? {} : { cachedData }),
  });
  const module: { exports: { program?: Program } } = { exports: {} };
  script.runInThisContext()(module, createRequire(filename), folder);
  const { program } = module.exports;
  if (program === undefined) throw new Error(`${filename} holds no program`);
  return {
    program,
    isCompiled: script.cachedDataRejected === false,
    keepCompiled: () => {
      const compiled = script.createCachedData();
      writeFileSync(cache, Buffer.concat([sealOf(text, compiled), compiled]));
    },
  };
}

const SEAL_BYTES = 32;

/** SHA-256 of both: against damage and mixed builds; whoever can write here can change the script too. */
const sealOf = (text: Buffer, compiled: Buffer): Buffer =>
  createHash('sha256').update(text).update(compiled).digest();

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
