/** The bytes of an input, some at a time. */
import { createReadStream } from 'node:fs';
import type { World } from './command.ts';
import { statOrNothing } from './files/file-status.ts';

/** Small, so that the records of a few vehicles are in memory at a time; divides the sample of a long file. */
const chunkBytes = 128 * 1024;

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
