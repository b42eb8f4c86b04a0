import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decode } from '../../../src/intake/bytes/decode.ts';
import { openText } from '../../../src/intake/bytes/text-pieces.ts';
import { encode } from '../encoders.ts';
import { brief } from '../helpers.ts';

/** Reads the bytes in pieces that end at the given places. */
function readInPieces(bytes: Uint8Array, cuts: readonly number[]) {
  const opened = openText('f', bytes, { whole: true });
  const reader = opened.value;
  if (reader === undefined) return { text: undefined, diagnostics: opened.diagnostics };
  const ends = [...cuts.map((cut) => cut % (bytes.length + 1)).sort((a, b) => a - b), bytes.length];
  let text = '';
  let from = 0;
  for (const [k, end] of ends.entries()) {
    const read = reader.read(bytes.subarray(from, end), k === ends.length - 1);
    if (read.value === undefined) return { text: undefined, diagnostics: read.diagnostics };
    text += read.value;
    from = end;
  }
  return { text, evidence: reader.evidence() };
}

const encodings = ['utf-8', 'utf-8-bom', 'utf-16le', 'utf-16be', 'utf-16le-bom', 'utf-16be-bom'];
const trade = [
  'bonnet',
  'Tür',
  'Wert (µm)',
  '101,5',
  'Âµm',
  '"a\n\r"',
  '\r',
  '\n',
  '\r\n',
  ',',
  '',
  '漆膜',
  '𝒙',
];
const text = fc
  .array(fc.constantFrom(...trade), { minLength: 1, maxLength: 30 })
  .map((parts) => `panel,reading_um\n${parts.join('')}`);
const cuts = fc.array(fc.nat(), { maxLength: 6 });

test('however the bytes are cut, the text and what is said of it are the same', () => {
  fc.assert(
    fc.property(text, fc.constantFrom(...encodings), cuts, (written, encoding, places) => {
      const bytes = encode(written, encoding);
      const whole = decode({ name: 'f', bytes }).value;
      const pieces = readInPieces(bytes, places);
      expect(pieces.text).toBe(whole?.source.text);
      expect(whole?.evidence).toEqual(pieces.evidence);
    }),
  );
});

test('a fault has the same place however the bytes are cut', () => {
  const bytes = Uint8Array.from([...encode('Tür\r\nab', 'utf-8'), 0xfc, 0x0a, 0x62]);
  const faulty = (places: readonly number[]) => {
    const opened = openText('f', bytes.subarray(0, 6), { whole: false }).value;
    const ends = [...places, bytes.length];
    for (const [k, end] of ends.entries()) {
      const part = bytes.subarray(k === 0 ? 0 : ends[k - 1], end);
      const read = opened?.read(part, k === ends.length - 1);
      if (read?.value === undefined) return read?.diagnostics.map(brief);
    }
    return undefined;
  };
  for (let cut = 1; cut < bytes.length; cut += 1) {
    expect(faulty([cut])).toEqual(['2:3+1 error encoding-unknown']);
  }
});

const western =
  'Tür Kotflügel Épaisseur número Capó dør µm rôle señal naïve hôte sûr Grün ñandú 20 °C';
/** Words that are written in each page; some are of the trade and known, others are not. */
const wordsOf = {
  'windows-1252': `${western} – Œuvre`,
  macintosh: western,
  cp850: 'Tür Kotflügel Épaisseur número Capó µm rôle señal Grün',
  'windows-1250': 'Błotnik Dveře Łódź sárvédő Grün µm zástěra číslo –',
  'windows-1254': 'kapı çamurluk değer ışık gümüş µm –',
  'windows-1251': 'Панель дверь кот ёж хвост мкм –',
  ibm866: 'Панель дверь кот хвост мкм',
  'koi8-r': 'Панель дверь кот хвост мкм',
  'windows-1253': 'πάχος πόρτα ουρανός µm –',
  shift_jis: '膜厚 パネル 鏡面 側面 油 ドア',
  gb18030: '面板 厚度 镜面 油 后视镜',
} as const;
const pages = Object.keys(wordsOf) as (keyof typeof wordsOf)[];
const inPage = fc
  .constantFrom(...pages)
  .chain((page) =>
    fc.tuple(
      fc.constant(page),
      fc.array(fc.constantFrom(...wordsOf[page].split(' ')), { minLength: 1, maxLength: 6 }),
    ),
  );

test('with its code page named, a file is read as it was written', () => {
  fc.assert(
    fc.property(inPage, ([page, words]) => {
      const written = ['a', ...words].join('\n');
      const read = decode({ name: 'f', bytes: encode(written, page) }, { encoding: page });
      expect(read.value?.source.text).toBe(written);
    }),
  );
});

test('without, it is read as it was written, or refused with line, column and what to do', () => {
  fc.assert(
    fc.property(inPage, ([page, words]) => {
      const written = ['head', ...words].join(',1\n');
      const { value, diagnostics } = decode({ name: 'f', bytes: encode(written, page) });
      if (value !== undefined) expect(value.source.text).toBe(written);
      else {
        const [diagnostic] = diagnostics;
        expect(diagnostic?.at?.line).toBeGreaterThan(1);
        expect(diagnostic?.at?.column).toBeGreaterThan(0);
        expect(diagnostic?.hint).toMatch(/--encoding|in the encoding of the others/u);
      }
    }),
    { numRuns: 500 },
  );
});
