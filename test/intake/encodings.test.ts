import { describe, expect, test } from 'vitest';
import { decode } from '../../src/intake/bytes/decode.ts';
import { encode } from './encoders.ts';
import { brief } from './helpers.ts';

const decoded = (bytes: Uint8Array, encoding?: string) =>
  decode({ name: 'f', bytes }, { encoding });
const bytesOf = (...parts: readonly (string | readonly number[])[]): Uint8Array =>
  Uint8Array.from(
    parts.flatMap((part) => (typeof part === 'string' ? [...encode(part, 'utf-8')] : [...part])),
  );

const exports = {
  German: 'Bauteil;Schichtdicke (µm)\nTür vorne;101,5\nKotflügel;99\n',
  French: 'Élément;Épaisseur (µm)\nPortière arrière;101\nCapot;99\n',
  Spanish: 'Pieza,Espesor (µm)\nCapó,101\nNiño,99\n',
  Polish: 'Element;Grubość (µm)\nBłotnik przedni;101\nPróg;99\n',
  Czech: 'Díl;Tloušťka (µm)\nDveře přední levé;99\nStřecha;98\n',
  Turkish: 'Parça;Kalınlık (µm)\nÖn kapı sol;99\nÇamurluk sağ;98\n',
  Danish: 'Panel;Måling (µm)\nDør foran venstre;99\nSkærm;98\n',
  Russian: 'Панель;Толщина, мкм\nКапот;101\nДверь передняя;99\n',
  Greek: 'Πάνελ;Πάχος (µm)\nΚαπό;101\nΠόρτα εμπρός;99\n',
  Japanese: 'パネル,膜厚\nボンネット,101\n左前ドア,99\n',
  Chinese: '面板,厚度\n引擎盖,101\n左前门,99\n',
  Korean: '부위,두께\n보닛,101\n루프,99\n',
  English: 'panel,reading (µm)\nbonnet,101\nroof,99\n',
} as const;

describe('a table in a code page of its language is read, and the page is said', () => {
  test.each([
    ['German', 'windows-1252'],
    ['German', 'macintosh'],
    ['German', 'cp850'],
    ['French', 'windows-1252'],
    ['French', 'cp850'],
    ['Spanish', 'windows-1252'],
    ['Spanish', 'macintosh'],
    ['Spanish', 'cp850'],
    ['Polish', 'windows-1250'],
    ['Czech', 'windows-1250'],
    ['Turkish', 'windows-1254'],
    ['Danish', 'windows-1252'],
    ['Russian', 'windows-1251'],
    ['Russian', 'ibm866'],
    ['Russian', 'koi8-r'],
    ['Greek', 'windows-1253'],
    ['Japanese', 'shift_jis'],
    ['Chinese', 'gb18030'],
    ['Korean', 'euc-kr'],
    ['English', 'windows-1252'],
    ['English', 'cp850'],
  ] as const)('%s in %s', (language, page) => {
    const { value } = decoded(encode(exports[language], page));
    expect(value?.source.text).toBe(exports[language]);
    expect(value?.encoding).toBe(page);
    expect(value?.evidence.join()).toContain(page);
  });
});

test.each(['utf-16le', 'utf-16be'])(
  '%s is known by its zero bytes where it has no mark',
  (name) => {
    for (const text of Object.values(exports)) {
      const { value } = decoded(encode(text, name));
      expect(value?.encoding).toBe(name);
      expect(value?.source.text).toBe(text);
      expect(value?.evidence.join()).toContain('without a byte order mark');
    }
  },
);

test('a mark before a quoted head is no part of it', () => {
  expect(decoded(encode('"panel",b\n', 'utf-8-bom')).value?.source.text).toBe('"panel",b\n');
  expect(decoded(bytesOf([0xef, 0xbb, 0xbf, 0xef, 0xbb, 0xbf], '"a"\n')).value?.source.text).toBe(
    '"a"\n',
  );
});

// CP1252.TXT of the Unicode Consortium: 0x80 is the euro sign, 0x96 the en dash, 0x97 the em dash.
test('the dashes of windows-1252 are dashes, not control characters', () => {
  const { value } = decoded(bytesOf([0x80, 0x20, 0x96, 0x20, 0x97]), 'cp1252');
  expect(value?.source.text).toBe('€ – —');
});

describe('a page that is seldom met is read where it makes more words of the trade than a usual one', () => {
  const withoutMicro = (text: string): string => text.replace('µm', 'um');
  test.each([
    ['Polish', 'iso-8859-2'],
    ['Czech', 'iso-8859-2'],
    ['Russian', 'x-mac-cyrillic'],
    ['Russian', 'iso-8859-5'],
  ] as const)('%s in %s', (language, page) => {
    const text = withoutMicro(exports[language]);
    const { value } = decoded(encode(text, page));
    expect(value?.source.text).toBe(text);
    expect(value?.encoding).toBe(page);
  });

  // CP852.TXT of the Unicode Consortium: ć, ś, ł, ę, ó.
  test('Polish in cp852', () => {
    const bytes = bytesOf(
      'Cz',
      [0xa9, 0x98, 0x86],
      ';Grubo',
      [0x98, 0x86],
      ' (um)\nB',
      [0x88],
      'otnik;101\n',
    );
    expect(decoded(bytes).value?.source.text).toBe('Część;Grubość (um)\nBłotnik;101\n');
  });

  test('and is not taken where a usual one makes as many', () => {
    // 0xB8 is ё in windows-1251 and Є on the Macintosh; мкм is the same in both.
    const { value } = decoded(bytesOf([0xb8, 0xe6], ';', [0xec, 0xea, 0xec], '\n'));
    expect(value?.source.text).toBe('ёж;мкм\n');
  });
});

describe('UTF-32 is read behind its mark', () => {
  const text = 'Teil;Wert (µm)\r\nDach 𝔄;1\r\n';
  const words = Uint32Array.from([0xfeff, ...[...text].map((c) => c.codePointAt(0) ?? 0)]);
  const big = Uint8Array.from(
    [...words].flatMap((code) => [code >>> 24, code >>> 16, code >>> 8, code]),
  );
  test.each([
    ['utf-32be', big],
    ['utf-32le', Uint8Array.from([...words].flatMap((c) => [c, c >>> 8, c >>> 16, c >>> 24]))],
  ])('%s', (name, bytes) => {
    const { value } = decoded(bytes);
    expect(value?.encoding).toBe(name);
    expect(value?.source.text).toBe(text.replaceAll('\r\n', '\n'));
    expect(decoded(bytes, 'utf-32').value?.encoding).toBe(name);
  });

  test('and refused where four bytes are no character', () => {
    const broken = Uint8Array.from([...big.subarray(0, 24), 0x7f, 0, 0, 0]);
    expect(decoded(broken).diagnostics[0]?.code).toBe('encoding-unknown');
    expect(decoded(big.subarray(0, 27)).diagnostics[0]?.code).toBe('encoding-unknown');
  });
});

// ISO-2022-JP (RFC 1468): ESC $ B begins kanji, ESC ( B ends them; 厚 is 0x387C, 部 0x4974, 位 0x304C.
test('kanji between escape sequences are ISO-2022-JP; an escape sign alone is a sign like others', () => {
  const [kanji, ascii] = [
    [0x1b, 0x24, 0x42],
    [0x1b, 0x28, 0x42],
  ];
  const bytes = bytesOf(kanji, [0x49, 0x74, 0x30, 0x4c], ascii, ',', kanji, [0x38, 0x7c], ascii);
  expect(decoded(bytes).value).toMatchObject({
    encoding: 'iso-2022-jp',
    source: { text: '部位,厚' },
  });
  expect(decoded(bytesOf('a\u001b[1mb')).value?.encoding).toBe('utf-8');
  expect(decoded(bytesOf('a', kanji, 'b')).value?.encoding).toBe('utf-8');
});

// CP437.TXT and CP850.TXT of the Unicode Consortium.
test('the DOS pages have the micro sign at 0xE6 and differ at 0x9B', () => {
  expect(decoded(bytesOf([0xe6, 0x81, 0xe1, 0x9b, 0x9d]), 'cp850').value?.source.text).toBe(
    'µüßøØ',
  );
  expect(decoded(bytesOf([0xe6, 0x81, 0xe1, 0x9b, 0x9d]), 'cp437').value?.source.text).toBe(
    'µüß¢¥',
  );
});

test('a byte that is another letter in another page is refused with both readings', () => {
  const { value, diagnostics } = decoded(bytesOf('panel,reading_um\nFoo', [0xe8], ',101\n'));
  expect(value).toBeUndefined();
  expect(diagnostics.map(brief)).toEqual(['2:4+1 error encoding-unknown']);
  expect(diagnostics[0]?.message).toContain('"Fooè" in windows-1252, "Fooč" in windows-1250');
  expect(diagnostics[0]?.hint).toContain('--encoding windows-1252 or --encoding windows-1250');
});

test('the same bytes are read in the page that is named', () => {
  const bytes = bytesOf('panel,reading_um\nFoo', [0xe8], ',101\n');
  expect(decoded(bytes, 'Windows-1250').value?.source.text).toContain('Fooč');
  expect(decoded(bytes, 'latin1').value?.source.text).toContain('Fooè');
  expect(decoded(bytes, 'utf-8').diagnostics.map(brief)).toEqual(['2:4+1 error encoding-unknown']);
});

test('an encoding that is not known, or contradicts the mark of the file, is refused', () => {
  expect(decoded(bytesOf('a'), 'ebcdic').diagnostics[0]?.hint).toContain('windows-1252');
  const marked = decoded(encode('a', 'utf-8-bom'), 'windows-1252');
  expect(marked.diagnostics[0]?.message).toContain('byte order mark of utf-8');
  expect(decoded(encode('aµ', 'utf-16be-bom'), 'utf-16').value?.source.text).toBe('aµ');
});

test('letters of notes and comments decide nothing: they do not stop the file', () => {
  const bytes = bytesOf(
    '# f',
    [0xe8, 0x8a, 0x9d],
    '\npanel,note,reading_um\nroof,fo',
    [0xe8],
    'o,1\n',
  );
  const { value } = decoded(bytes);
  expect(value?.evidence[0]).toContain('comments and notes');
  expect(value?.source.text).toContain('roof,foèo,1');
});

test('a note in a page that the names of panels do not fit leaves the names as they are', () => {
  const bytes = bytesOf('Bauteil;Bemerkung;Wert\nT', [0xfc], 'r;foo', [0xfc, 0x81], ';1\n');
  const { value } = decoded(bytes);
  expect(value?.source.text).toContain('\nTür;');
  expect(value?.evidence[0]).toContain('comments and notes');
});

describe('bytes of two encodings in one file are refused where the second begins', () => {
  test.each([
    ['UTF-8, then windows-1252', bytesOf('Teil;Wert (µm)\nT', [0xfc], 'r;1\n'), '2:2+1'],
    ['windows-1252, then UTF-8', bytesOf('Teil;Wert (', [0xb5], 'm)\nTür;1\n'), '1:12+1'],
    [
      'windows-1252, then DOS',
      bytesOf('Teil (', [0xb5], 'm)\nT', [0xfc], 'r;1\nT', [0x81], 'r;2\n'),
      '3:2+1',
    ],
  ])('%s', (_, bytes, place) => {
    const { value, diagnostics } = decoded(bytes);
    expect(value).toBeUndefined();
    expect(diagnostics.map(brief)).toEqual([`${place} error encoding-unknown`]);
    expect(diagnostics[0]?.message).toContain('the file is in two encodings');
  });
});

test('a file cut off within a letter is told so', () => {
  const { diagnostics } = decoded(bytesOf('Türe;1\nT', [0xc3]));
  expect(diagnostics.map(brief)).toEqual(['2:2+1 error encoding-unknown']);
  expect(diagnostics[0]?.message).toContain('the file ends within it');
});

describe('letters that were encoded twice are turned back, and counted', () => {
  test.each(['German', 'French', 'Danish', 'Spanish', 'Polish', 'English'] as const)(
    '%s',
    (language) => {
      const asLatin1 = [...encode(exports[language], 'utf-8')].map((byte) =>
        String.fromCharCode(byte),
      );
      const { value } = decoded(encode(asLatin1.join(''), 'utf-8'));
      expect(value?.source.text).toBe(exports[language]);
      expect(value?.evidence).toContain('"Âµ" repaired to "µ" in 1 place: it was encoded twice');
    },
  );
});

test.each(['¬µm', '┬╡m', '┬Ám', '╬╝m', 'Î¼m'])('%s is µm, encoded twice', (text) => {
  expect(decoded(encode(`x (${text})`, 'utf-8')).value?.source.text).toMatch(/^x \([µμ]m\)$/u);
});

test('a name with an accent before a sign is left as it is', () => {
  for (const text of ['CAFÉ®', 'Â', 'À ½', 'Ä –']) {
    expect(decoded(encode(text, 'utf-8')).value).toMatchObject({ source: { text }, evidence: [] });
  }
});

test.each([
  ['windows-1251', 'Деталь;№ точки;Толщина, мкм\nКапот;1;101\n'],
  ['windows-1251', '№ п/п;Деталь;Толщина, мкм\n1;Капот;101\n'],
  ['cp850', 'Prüfer: Höß\nBauteil;Punkt;µm\nTür;1;101\n'],
  ['windows-1252', 'Prüfer: Höß\nBauteil;Punkt;µm\nTür;1;101\n'],
] as const)(
  'a sign or a short name that is ordinary in %s is no second encoding: %j',
  (page, text) => {
    const { value } = decoded(encode(text, page));
    expect(value?.encoding).toBe(page);
    expect(value?.source.text).toBe(text);
  },
);
