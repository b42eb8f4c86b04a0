/**
 * A long input of many vehicles, read through once before a word is written.
 *
 * The first pass reads every row and keeps none: it proves that the rows stand vehicle by vehicle and
 * hold no error, and takes the checksum. A file that fails it in any way (a vehicle that comes again,
 * another layout, a cell gone wrong) is no long input: it is read whole, which tells what is wrong, or
 * puts rows in order that are scattered. Standard input, which comes once, is held as its bytes.
 */
import { createHash } from 'node:crypto';
import { type Diagnostic, error } from '../base/diagnostics.ts';
import type { GaugePiece } from '../intake/bytes/decode.ts';
import { sampleBytes } from '../intake/bytes/limits.ts';
import { createLongPieces } from '../intake/long-pieces.ts';
import type { IntakeDecisions, IntakeOptions } from '../intake/read-gauge-file.ts';
import { createLongFile, type LongPart } from '../intake/read-long-file.ts';
import { type Chunks, chunksOf } from './chunks.ts';
import type { World } from './command.ts';

export type LongInput = {
  readonly sha256: string;
  /** Whole vehicles in the order of the file; nothing comes after a piece that is undefined. */
  readonly pieces: () => AsyncIterable<GaugePiece | undefined>;
};

const nothing = new Uint8Array();

/** Undefined where the input is short, or is to be read whole. */
export async function openLongInput(
  name: string,
  options: IntakeOptions,
  load: World['load'],
): Promise<LongInput | undefined> {
  const chunks = await chunksOf(name, load, sampleBytes + 1);
  if (chunks === undefined) return undefined;
  const hash = createHash('sha256');
  let decisions: IntakeDecisions | undefined;
  for await (const part of partsOf(name, options, chunks, (bytes) => hash.update(bytes))) {
    if (part === undefined) return undefined;
    decisions ??= part.decisions;
  }
  if (decisions === undefined) return undefined;
  const first = { sha256: hash.digest('hex'), decisions };
  return { sha256: first.sha256, pieces: () => piecesOf(name, options, chunks, first) };
}

/**
 * A long input read once: whole vehicles in the order of the file, as they were read. Nothing comes after a part that
 * is undefined: the input is to be read whole.
 */
export async function* partsOf(
  name: string,
  options: IntakeOptions,
  chunks: Chunks,
  see: (bytes: Uint8Array) => void = () => {},
): AsyncIterable<LongPart | undefined> {
  const file = createLongFile(name, options);
  for await (const chunk of chunks()) {
    see(chunk);
    const read = file.push(chunk, false).value;
    if (read === undefined) return yield undefined;
    yield* read;
  }
  yield* file.push(nothing, true).value ?? [undefined];
}

/** The second pass; a file that is no longer the one of the first ends in undefined. */
async function* piecesOf(
  name: string,
  options: IntakeOptions,
  chunks: Chunks,
  first: { readonly sha256: string; readonly decisions: IntakeDecisions },
): AsyncIterable<GaugePiece | undefined> {
  const hash = createHash('sha256');
  const pieces = createLongPieces(name, options);
  let decided: IntakeDecisions | undefined;
  const next = (bytes: Uint8Array, last: boolean): readonly GaugePiece[] =>
    (pieces.push(bytes, last).value?.pieces ?? []).map((piece) => {
      const own = { ...piece, decided };
      decided = first.decisions;
      return own;
    });
  for await (const chunk of chunks()) {
    hash.update(chunk);
    yield* next(chunk, false);
  }
  if (hash.digest('hex') === first.sha256) yield* next(nothing, true);
  else yield undefined;
}

export const changedFile = (name: string): Diagnostic =>
  error('file-unreadable', `"${name}" changed while it was read`, {
    at: { file: name },
    hint: 'wait until it is complete, then run again',
  });
