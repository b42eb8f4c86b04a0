/** Damage to the bytes of a file: what transfers, editors and hands do to it, and worse. */
import type { Random } from '../intake/corpus/random.ts';

type Mutation = (bytes: Buffer, random: Random, other: Buffer) => Buffer;

const cut = (bytes: Buffer, random: Random, longest: number): readonly [number, number] => {
  const from = random.int(0, bytes.length);
  return [from, Math.min(bytes.length, from + random.int(0, longest))];
};
const put = (bytes: Buffer, at: number, until: number, piece: Uint8Array): Buffer =>
  Buffer.concat([bytes.subarray(0, at), piece, bytes.subarray(until)]);

const strangers = [
  '"',
  '""',
  '\n',
  '\r',
  '\0',
  ',',
  ';',
  '\t',
  '|',
  '#',
  'sep=;\n',
  '\ufeff',
  '\u001a',
  'µ',
  '\ufffd',
  '∞',
  'NaN',
  '1e999',
  '-',
  '1.234',
  '1,234',
  '9.9E37',
  '>2000',
  '01-May',
  "'",
  '\u202e',
  '\u00a0',
  '=',
  '__proto__',
  'mil',
  'Mean',
  '٣',
  '０',
  'panel,point,reading_um\n',
];

/** Lines are parted as Latin-1, so that no byte is lost. */
const byLines =
  (change: (lines: string[], random: Random) => string[]): Mutation =>
  (bytes, random) =>
    Buffer.from(change(bytes.toString('latin1').split('\n'), random).join('\n'), 'latin1');

const swapCells = byLines((lines, random) => {
  const at = random.int(0, lines.length - 1);
  const mark = random.pick([',', ';', '\t', '|']);
  const cells = (lines[at] ?? '').split(mark);
  return lines.map((line, i) => (i === at ? random.shuffled(cells).join(mark) : line));
});

const damageNumber: Mutation = (bytes, random) => {
  const text = bytes.toString('latin1');
  const numbers = [...text.matchAll(/\d+([.,]\d+)?/g)];
  if (numbers.length === 0) return bytes;
  const one = random.pick(numbers);
  const damage = random.pick([
    (n: string) => n.replace('.', ','),
    (n: string) => n.replace(/[.,]/, ''),
    (n: string) => `${n}.${n}`,
    (n: string) => `-${n}`,
    (n: string) => `${n}E${random.int(-400, 400)}`,
    (n: string) => n.repeat(random.int(1, 40)),
    (n: string) => `${n} mil`,
    (n: string) => `<${n}`,
    () => '',
    () => '0',
  ]);
  return Buffer.from(
    text.slice(0, one.index) + damage(one[0]) + text.slice(one.index + one[0].length),
    'latin1',
  );
};

const mutations: readonly Mutation[] = [
  (bytes, random) => {
    const copy = Buffer.from(bytes);
    if (copy.length > 0) copy[random.int(0, copy.length - 1)] = random.int(0, 255);
    return copy;
  },
  (bytes, random) => {
    const [from, to] = cut(bytes, random, random.chance(0.2) ? bytes.length : 12);
    return put(bytes, from, to, Buffer.alloc(0));
  },
  (bytes, random) => {
    const [from, to] = cut(bytes, random, 200);
    return put(
      bytes,
      to,
      to,
      Buffer.concat(Array.from({ length: random.int(1, 4) }, () => bytes.subarray(from, to))),
    );
  },
  (bytes, random) => {
    const at = random.int(0, bytes.length);
    return put(bytes, at, at, Buffer.from(random.pick(strangers)));
  },
  (bytes, random, other) =>
    Buffer.concat([
      bytes.subarray(0, random.int(0, bytes.length)),
      other.subarray(random.int(0, other.length)),
    ]),
  (bytes, random) => {
    const [from, to] = [
      random.pick([',', ';', '\t', '|', '.', '\n']),
      random.pick([',', ';', '\t', '|', '.', '\r']),
    ];
    return Buffer.from(bytes.toString('latin1').replaceAll(from, to), 'latin1');
  },
  byLines((lines, random) => random.shuffled(lines)),
  byLines((lines, random) => lines.filter(() => !random.chance(0.1))),
  swapCells,
  damageNumber,
  damageNumber,
];

export function mutated(bytes: Uint8Array, other: Uint8Array, random: Random): Uint8Array {
  let changed = Buffer.from(bytes);
  const rounds = random.int(1, 4);
  for (let k = 0; k < rounds; k += 1)
    changed = Buffer.from(random.pick(mutations)(changed, random, Buffer.from(other)));
  return Uint8Array.from(changed);
}
