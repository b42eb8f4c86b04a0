/**
 * Text → bytes of an older encoding, by tables typed in for the words that the corpus uses. A character
 * outside its table is a mistake of the kind that writes it.
 */
import { utf8 } from './kind.ts';

type Page = ReadonlyMap<string, readonly number[]>;

const page = (pairs: Readonly<Record<string, number>>): Page =>
  new Map(
    Object.entries(pairs).map(([character, code]) => [
      character,
      code > 0xff ? [code >> 8, code & 0xff] : [code],
    ]),
  );

function encode(text: string, table: Page): Uint8Array {
  const bytes: number[] = [];
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    const coded = code < 0x80 ? [code] : table.get(character);
    if (coded === undefined) throw new Error(`no byte for ${JSON.stringify(character)}`);
    bytes.push(...coded);
  }
  return Uint8Array.from(bytes);
}

/** U+00A0–U+00FF keep their number in Latin-1; Windows puts signs of print where it has none. */
const latin: Record<string, number> = {};
for (let code = 0xa0; code <= 0xff; code += 1) latin[String.fromCharCode(code)] = code;
/** The bytes 0x80–0x9F of Windows-1252 (Unicode Consortium, CP1252.TXT); five have no character. */
const windowsPrint: Record<string, number> = {
  '€': 0x80,
  '‚': 0x82,
  ƒ: 0x83,
  '„': 0x84,
  '…': 0x85,
  '†': 0x86,
  '‡': 0x87,
  ˆ: 0x88,
  '‰': 0x89,
  Š: 0x8a,
  '‹': 0x8b,
  Œ: 0x8c,
  Ž: 0x8e,
  '‘': 0x91,
  '’': 0x92,
  '“': 0x93,
  '”': 0x94,
  '•': 0x95,
  '–': 0x96,
  '—': 0x97,
  '˜': 0x98,
  '™': 0x99,
  š: 0x9a,
  '›': 0x9b,
  œ: 0x9c,
  ž: 0x9e,
  Ÿ: 0x9f,
};
const windows: Page = page({ ...latin, ...windowsPrint });
const windowsCharacter = new Map(
  Object.entries({ ...latin, ...windowsPrint }).map(([character, code]) => [code, character]),
);

/** Any bytes taken for Windows-1252; those without a character become the control of that number. */
export const takenForWindows1252 = (bytes: Uint8Array): string =>
  [...bytes].map((byte) => windowsCharacter.get(byte) ?? String.fromCharCode(byte)).join('');

const cyrillic: Record<string, number> = { µ: 0xb5, ё: 0xb8, Ё: 0xa8 };
for (let k = 0; k < 64; k += 1) cyrillic[String.fromCharCode(0x410 + k)] = 0xc0 + k;

export const latin1 = (text: string): Uint8Array => encode(text, page(latin));
export const windows1252 = (text: string): Uint8Array => encode(text, windows);
export const windows1251 = (text: string): Uint8Array => encode(text, page(cyrillic));
export const windows1250 = (text: string): Uint8Array =>
  encode(
    text,
    page({
      µ: 0xb5,
      ł: 0xb3,
      ó: 0xf3,
      ś: 0x9c,
      ć: 0xe6,
      ę: 0xea,
      ą: 0xb9,
      ž: 0x9e,
      č: 0xe8,
      ř: 0xf8,
      ň: 0xf2,
    }),
  );
export const windows1254 = (text: string): Uint8Array =>
  encode(text, page({ µ: 0xb5, ğ: 0xf0, ı: 0xfd, ş: 0xfe, ö: 0xf6, ü: 0xfc, ç: 0xe7 }));
export const macRoman = (text: string): Uint8Array =>
  encode(text, page({ µ: 0xb5, ü: 0x9f, ä: 0x8a, ö: 0x9a, é: 0x8e, è: 0x8f, ß: 0xa7, ' ': 0xca }));
/** The page of DOS in western Europe; its µ is the æ of Windows. */
export const dosPage = (text: string): Uint8Array =>
  encode(text, page({ µ: 0xe6, ü: 0x81, ä: 0x84, ö: 0x94, é: 0x82, è: 0x8a, ß: 0xe1 }));
export const shiftJis = (text: string): Uint8Array =>
  encode(
    text,
    page({
      パ: 0x8370,
      ネ: 0x836c,
      ル: 0x838b,
      測: 0x91aa,
      定: 0x92e8,
      点: 0x935f,
      膜: 0x968c,
      厚: 0x8cfa,
      μ: 0x83ca,
      ボ: 0x837b,
      ン: 0x8393,
      ッ: 0x8362,
      ト: 0x8367,
      ー: 0x815b,
      フ: 0x8374,
      平: 0x95bd,
      均: 0x8bcf,
    }),
  );
export const gb18030 = (text: string): Uint8Array =>
  encode(
    text,
    page({
      面: 0xc3e6,
      板: 0xb0e5,
      测: 0xb2e2,
      点: 0xb5e3,
      厚: 0xbaf1,
      度: 0xb6c8,
      μ: 0xa6cc,
      引: 0xd2fd,
      擎: 0xc7e6,
      盖: 0xb8c7,
      车: 0xb3b5,
      顶: 0xb6a5,
    }),
  );

export const utf16le = (text: string): Uint8Array => Uint8Array.from(Buffer.from(text, 'utf16le'));
export const utf16be = (text: string): Uint8Array =>
  Uint8Array.from(Buffer.from(text, 'utf16le').swap16());

/** UTF-8 taken for Windows-1252 and written as UTF-8 once more: µ becomes Âµ. */
export const encodedTwice = (text: string): string => takenForWindows1252(utf8(text));

export const joined = (...parts: readonly Uint8Array[]): Uint8Array =>
  Uint8Array.from(Buffer.concat(parts));
