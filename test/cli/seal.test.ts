import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createSealing, readToSeal, WORD_BYTES } from '../../src/cli/seal.ts';
import { temporaryFolder } from './temporary-folder.ts';

/** The same as the machine code does, written anew from its text: words of 64 bits, lowest byte first. */
function sealByHand(bytes: Uint8Array): bigint {
  const word = (at: number): bigint =>
    Array.from({ length: 8 }, (_, k) => BigInt(bytes[at + k] ?? 0) << BigInt(8 * k)).reduce(
      (sum, part) => sum | part,
      0n,
    );
  let sum = BigInt(bytes.length);
  for (let at = 0; at === 0 || at < bytes.length; at += 8) {
    sum = BigInt.asUintN(64, (sum ^ word(at)) * 0x9e3779b97f4a7c15n);
    sum ^= sum >> 32n;
  }
  return BigInt.asIntN(64, sum);
}

function sealOfBytes(bytes: Uint8Array): bigint {
  const { pieces, sealOf } = createSealing([bytes.length]);
  const [piece] = pieces as [Buffer];
  piece.set(bytes);
  return sealOf(piece);
}

describe('a checksum of bytes', () => {
  test('is what its text says, word by word', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(sealOfBytes(bytes)).toBe(sealByHand(bytes));
      }),
    );
  });

  test('is another one for every change within a word', () => {
    const change = fc.uint8Array({ minLength: 1, maxLength: WORD_BYTES });
    fc.assert(
      fc.property(
        fc.uint8Array({ minLength: 1, maxLength: 300 }),
        fc.nat(),
        change,
        (bytes, where, by) => {
          const word = where % Math.ceil(bytes.length / WORD_BYTES);
          const changed = bytes.map((byte, at) =>
            Math.floor(at / WORD_BYTES) === word ? byte ^ (by[at % WORD_BYTES] ?? 0) : byte,
          );
          fc.pre(changed.some((byte, at) => byte !== bytes[at]));
          expect(sealOfBytes(changed)).not.toBe(sealOfBytes(bytes));
        },
      ),
    );
  });

  test('tells zeros from more zeros', () => {
    const seals = [0, 1, 7, 8, 9, 64].map((length) => sealOfBytes(new Uint8Array(length)));
    expect(new Set(seals).size).toBe(seals.length);
  });
});

describe('pieces beside one another', () => {
  test('have the checksum that each has alone', () => {
    fc.assert(
      fc.property(
        fc.array(fc.uint8Array({ maxLength: 50 }), { minLength: 1, maxLength: 5 }),
        (all) => {
          const { pieces, sealOf } = createSealing(all.map(({ length }) => length));
          all.forEach((bytes, index) => {
            pieces[index]?.set(bytes);
          });
          expect(pieces.map(sealOf)).toEqual(all.map(sealOfBytes));
        },
      ),
    );
  });

  test('begin on a multiple of the bytes of a word, and so does what follows the first words', () => {
    const { pieces, sealOf } = createSealing([3, 21]);
    expect(pieces.map(({ byteOffset }) => byteOffset % WORD_BYTES)).toEqual([0, 0]);
    const [, second] = pieces as [Buffer, Buffer];
    second.fill(7);
    expect(sealOf(second.subarray(16))).toBe(sealByHand(second.subarray(16)));
  });
});

describe('files', () => {
  test('stand there as they are, the empty one too', () => {
    const folder = temporaryFolder();
    const paths = ['one', 'none'].map((name) => join(folder, name));
    writeFileSync(paths[0] ?? '', 'bonnet');
    writeFileSync(paths[1] ?? '', '');
    const { pieces, sealOf } = readToSeal(paths);
    expect(pieces.map(String)).toEqual(['bonnet', '']);
    expect(pieces.map(sealOf)).toEqual([
      sealByHand(Buffer.from('bonnet')),
      sealByHand(Buffer.from('')),
    ]);
  });

  test('of which one is missing are an error', () => {
    expect(() => readToSeal([join(temporaryFolder(), 'none')])).toThrow('ENOENT');
  });
});
