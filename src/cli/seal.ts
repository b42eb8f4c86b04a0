/**
 * Files that are read beside one another, and a checksum of each that is quick in a process that has just begun. V8
 * interprets a loop of ours at first: over the 2.6 MB of a script and its compiled code it took 4 ms. WebAssembly is
 * machine code from its first word on: .6 ms, and .4 to make it and its memory. `node:crypto` takes 3 ms to load;
 * `node:zlib`, whose `crc32` some versions lack, 1.5.
 */
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';

/** V8 would copy compiled code that does not lie on a multiple of so many bytes. */
export const WORD_BYTES = 8;

const PAGE_BYTES = 65_536;

/**
 * Words of 64 bits, each mixed in so that different states stay different: a change within one word is always
 * noticed, any other but once in 2⁶⁴.
 *
 *     (module (import "" "" (memory 1))
 *       (func (export "") (param $at i32) (param $end i32) (param $sum i64) (result i64)
 *         (loop $next
 *           (local.set $sum (i64.mul (i64.xor (local.get $sum) (i64.load (local.get $at))) (i64.const K)))
 *           (local.set $sum (i64.xor (local.get $sum) (i64.shr_u (local.get $sum) (i64.const 32))))
 *           (br_if $next (i32.lt_u (local.tee $at (i32.add (local.get $at) (i32.const 8))) (local.get $end))))
 *         (local.get $sum)))
 *
 * K is 2⁶⁴ over the golden ratio, 0x9e3779b97f4a7c15 (Knuth, The Art of Computer Programming, volume 3, 6.4).
 */
const MIX =
  'AGFzbQEAAAABCAFgA39/fgF+AgYBAAACAAEDAgEABwQBAAAACjMBMQADQCACIAApAwCFQpX4qfqXt96bnn9+IgIgAkIgiIUhAiAAQQhqIgAgAUkNAAsgAgs=';

/** Of WebAssembly, what is used here: it is no part of the types of Node. */
type Memory = { readonly buffer: ArrayBuffer };
type Mix = (at: number, end: number, sum: bigint) => bigint;
type WebAssembly = {
  readonly Memory: new (size: { readonly initial: number }) => Memory;
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Instance: new (
    module: object,
    imports: Readonly<Record<string, Readonly<Record<string, Memory>>>>,
  ) => { readonly exports: { readonly '': Mix } };
};

export type Sealing = {
  /** As many pieces as were asked for, each of its size. */
  readonly pieces: readonly Buffer[];
  /** The checksum of what now stands in a piece, or in what is left of it from a multiple of `WORD_BYTES` on. */
  readonly sealOf: (piece: Buffer) => bigint;
};

/** Room for pieces of some sizes in bytes. Throws where the system gives no memory, or Node no WebAssembly. */
export function createSealing(sizes: readonly number[]): Sealing {
  const { Memory, Module, Instance } = (globalThis as unknown as { WebAssembly: WebAssembly })
    .WebAssembly;
  const starts = [0];
  for (const size of sizes) starts.push((starts.at(-1) as number) + wholeWords(size) + WORD_BYTES);
  const memory = new Memory({ initial: Math.ceil((starts.at(-1) as number) / PAGE_BYTES) });
  const { exports } = new Instance(new Module(Buffer.from(MIX, 'base64')), { '': { '': memory } });
  return {
    pieces: sizes.map((size, index) => Buffer.from(memory.buffer, starts[index], size)),
    sealOf: ({ byteOffset, length }) =>
      exports[''](byteOffset, byteOffset + wholeWords(length), BigInt(length)),
  };
}

const wholeWords = (bytes: number): number => Math.ceil(bytes / WORD_BYTES) * WORD_BYTES;

/** Files whole, as they are now. Throws what the system says where one cannot be read. */
export function readToSeal(paths: readonly string[]): Sealing {
  const opened = paths.map((path) => openSync(path, 'r'));
  try {
    const sealing = createSealing(opened.map((file) => fstatSync(file).size));
    sealing.pieces.forEach((piece, index) => {
      const read = readSync(opened[index] as number, piece, 0, piece.length, 0);
      if (read !== piece.length) throw new Error(`${paths[index]} changed while it was read`);
    });
    return sealing;
  } finally {
    for (const file of opened) closeSync(file);
  }
}
