/**
 * A long input of many vehicles, read through once before a word is written.
 *
 * The first pass reads every row and keeps none: it proves that the rows stand vehicle by vehicle and
 * hold no error, and takes the checksum. A file that fails it in any way (a vehicle that comes again,
 * another layout, a cell gone wrong) is no long input: it is read whole, which tells what is wrong, or
 * puts rows in order that are scattered. Standard input, which comes once, is held as its bytes.
 */
import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { type Diagnostic, error } from '../base/diagnostics.ts';
import type { GaugePiece } from '../intake/bytes/decode.ts';
import { sampleBytes } from '../intake/bytes/limits.ts';
import { createLongPieces } from '../intake/long-pieces.ts';
import type { IntakeDecisions, IntakeOptions } from '../intake/read-gauge-file.ts';
import { createLongFile } from '../intake/read-long-file.ts';
import type { World } from './command.ts';
import { statOrNothing } from './files/file-status.ts';

export type LongInput = {
  readonly sha256: string;
  /** Whole vehicles in the order of the file; nothing comes after a piece that is undefined. */
  readonly pieces: () => AsyncIterable<GaugePiece | undefined>;
};

/** Small, so that the records of a few vehicles are in memory at a time; divides the sample. */
const chunkBytes = 128 * 1024;
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
  const file = createLongFile(name, options);
  for await (const chunk of chunks()) {
    hash.update(chunk);
    if (file.push(chunk, false).value === undefined) return undefined;
  }
  const decisions = file.push(nothing, true).value === undefined ? undefined : file.decisions();
  if (decisions === undefined) return undefined;
  const sha256 = hash.digest('hex');
  return { sha256, pieces: () => piecesOf(name, options, chunks, { sha256, decisions }) };
}

export type Chunks = () => AsyncIterable<Uint8Array> | Iterable<Uint8Array>;

/** The bytes of an input, as often as they are asked for; undefined where it has fewer than `least`. */
export async function chunksOf(
  name: string,
  load: World['load'],
  least: number,
): Promise<Chunks | undefined> {
  const known = statOrNothing(name);
  if (known?.isFile() === true) {
    if (known.size < least) return undefined;
    return () => createReadStream(name, { highWaterMark: chunkBytes });
  }
  const { file } = await load(name);
  return file === undefined || file.bytes.length < least ? undefined : () => cut(file.bytes);
}

function* cut(bytes: Uint8Array): Iterable<Uint8Array> {
  for (let at = 0; at < bytes.length; at += chunkBytes) yield bytes.subarray(at, at + chunkBytes);
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
