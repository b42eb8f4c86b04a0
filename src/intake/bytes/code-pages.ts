/**
 * The encodings an export may be in, and the names they go by.
 *
 * The platform decodes all but a few: it has no DOS pages of western and central Europe and no UTF-32, and Node 20
 * takes windows-1252 for ISO 8859-1, so that a dash or a euro sign comes out as a control character. The pages
 * stand here as tables (the Unicode Consortium's CP437.TXT, CP850.TXT, CP852.TXT and CP1252.TXT).
 */
import { once } from '../../base/kept.ts';
import type { Alphabet } from './spelled-words.ts';
import { type ByteOrder, fromUtf32 } from './utf32.ts';

export type CodePage = {
  /** As it is called in records and messages. */
  readonly name: string;
  /** Bytes to a character: one, two or four of a wide encoding, or several by what they are. */
  readonly width: 'one' | 'two' | 'four' | 'varied';
  readonly aliases: readonly string[];
  /** Whose words it was made for, where that helps to choose. */
  readonly alphabet?: Alphabet;
  /** One that is seldom met: taken only where it makes a word of that alphabet, and more than a usual page does. */
  readonly isRare?: boolean;
} & ({ readonly label: string } | { readonly upperHalf: string } | { readonly order: ByteOrder });

/** Bytes that a line end is one or several of: no character is cut where the file is. */
export const bytesToUnit = ({ width }: CodePage): 1 | 2 | 4 =>
  width === 'four' ? 4 : width === 'two' ? 2 : 1;

const latin1 = String.fromCharCode(...Array.from({ length: 0x60 }, (_, k) => 0xa0 + k));
const cp1252 = `€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ${latin1}`;
const dosLetters = 'ÇüéâäàåçêëèïîìÄÅÉæÆôöòûùÿÖÜ';
const cp437 = `${dosLetters}¢£¥₧ƒáíóúñÑªº¿⌐¬½¼¡«»░▒▓│┤╡╢╖╕╣║╗╝╜╛┐└┴┬├─┼╞╟╚╔╩╦╠═╬╧╨╤╥╙╘╒╓╫╪┘┌█▄▌▐▀αßΓπΣσµτΦΘΩδ∞φε∩≡±≥≤⌠⌡÷≈°∙·√ⁿ²■\u00a0`;
const cp850 = `${dosLetters}ø£Ø×ƒáíóúñÑªº¿®¬½¼¡«»░▒▓│┤ÁÂÀ©╣║╗╝¢¥┐└┴┬├─┼ãÃ╚╔╩╦╠═╬¤ðÐÊËÈıÍÎÏ┘┌█▄¦Ì▀ÓßÔÒõÕµþÞÚÛÙýÝ¯´\u00ad±‗¾¶§÷¸°¨·¹³²■\u00a0`;
const cp852 = `ÇüéâäůćçłëŐőîŹÄĆÉĹĺôöĽľŚśÖÜŤťŁ×čáíóúĄąŽžĘę¬źČş«»░▒▓│┤ÁÂĚŞ╣║╗╝Żż┐└┴┬├─┼Ăă╚╔╩╦╠═╬¤đĐĎËďŇÍÎě┘┌█▄ŢŮ▀ÓßÔŃńňŠšŔÚŕŰýÝţ´\u00ad˝˛ˇ˘§÷¸°¨˙űŘř■\u00a0`;

const one = (name: string, label: string, ...aliases: string[]): CodePage => ({
  name,
  width: 'one',
  label,
  aliases,
});

const rare = (page: CodePage, alphabet: Alphabet): CodePage => ({
  ...page,
  alphabet,
  isRare: true,
});

export const westernPage: CodePage = {
  name: 'windows-1252',
  width: 'one',
  upperHalf: cp1252,
  alphabet: 'western',
  aliases: ['cp1252', '1252', 'ansi', 'latin1', 'iso-8859-1', 'iso8859-1'],
};

/** In the order in which the first of several that give the same text is named. */
export const singleBytePages: readonly CodePage[] = [
  westernPage,
  { ...one('windows-1250', 'windows-1250', 'cp1250'), alphabet: 'central' },
  { ...one('windows-1254', 'windows-1254', 'cp1254', 'iso-8859-9', 'latin5'), alphabet: 'turkish' },
  { ...one('windows-1257', 'windows-1257', 'cp1257'), alphabet: 'baltic' },
  { ...one('windows-1251', 'windows-1251', 'cp1251'), alphabet: 'cyrillic' },
  { ...one('windows-1253', 'windows-1253', 'cp1253'), alphabet: 'greek' },
  { ...one('macintosh', 'macintosh', 'mac-roman', 'macroman', 'mac'), alphabet: 'western' },
  {
    name: 'cp850',
    width: 'one',
    upperHalf: cp850,
    alphabet: 'western',
    aliases: ['850', 'ibm850', 'dos', 'oem850'],
  },
  {
    name: 'cp437',
    width: 'one',
    upperHalf: cp437,
    alphabet: 'western',
    aliases: ['437', 'ibm437', 'oem437'],
  },
  { ...one('ibm866', 'ibm866', 'cp866', '866'), alphabet: 'cyrillic' },
  { ...one('koi8-r', 'koi8-r', 'koi8'), alphabet: 'cyrillic' },
  rare(one('iso-8859-2', 'iso-8859-2', 'latin2'), 'central'),
  rare(
    {
      name: 'cp852',
      width: 'one',
      upperHalf: cp852,
      aliases: ['852', 'ibm852', 'oem852'],
    },
    'central',
  ),
  rare(one('iso-8859-7', 'iso-8859-7', 'greek'), 'greek'),
  rare(one('x-mac-cyrillic', 'x-mac-cyrillic', 'mac-cyrillic'), 'cyrillic'),
  rare(one('iso-8859-5', 'iso-8859-5'), 'cyrillic'),
];

/** Several bytes to a character of China, Taiwan, Japan and Korea. */
export const eastAsianPages: readonly CodePage[] = [
  {
    name: 'shift_jis',
    width: 'varied',
    label: 'shift_jis',
    aliases: ['shift-jis', 'sjis', 'cp932', 'windows-31j'],
  },
  // Kana are the same bytes here and in GB: where nothing but them is known the file is Japanese.
  { name: 'euc-jp', width: 'varied', label: 'euc-jp', aliases: ['eucjp'] },
  {
    name: 'gb18030',
    width: 'varied',
    label: 'gb18030',
    aliases: ['gbk', 'gb2312', 'cp936'],
  },
  {
    name: 'big5',
    width: 'varied',
    label: 'big5',
    aliases: ['cp950'],
  },
  {
    name: 'euc-kr',
    width: 'varied',
    label: 'euc-kr',
    aliases: ['cp949', 'uhc', 'ks-c-5601'],
  },
];

const unicode: readonly CodePage[] = [
  { name: 'utf-8', width: 'varied', label: 'utf-8', aliases: ['utf8', 'utf-8-bom'] },
  {
    name: 'utf-16le',
    width: 'two',
    label: 'utf-16le',
    aliases: ['utf-16', 'utf16', 'utf16le', 'ucs-2', 'unicode'],
  },
  {
    name: 'utf-16be',
    width: 'two',
    label: 'utf-16be',
    aliases: ['utf16be'],
  },
  { name: 'utf-32le', width: 'four', order: 'little', aliases: ['utf-32', 'utf32', 'utf32le'] },
  { name: 'utf-32be', width: 'four', order: 'big', aliases: ['utf32be'] },
  {
    name: 'iso-2022-jp',
    width: 'varied',
    label: 'iso-2022-jp',
    aliases: ['jis'],
  },
];
/** Read where they are asked for; the bytes of a short file do not prove them. */
const onRequest: readonly CodePage[] = [
  one('windows-1255', 'windows-1255', 'cp1255'),
  one('windows-1256', 'windows-1256', 'cp1256'),
  one('windows-1258', 'windows-1258', 'cp1258'),
  one('windows-874', 'windows-874', 'cp874'),
  one('iso-8859-15', 'iso-8859-15', 'latin9'),
];

const all = [...unicode, ...singleBytePages, ...eastAsianPages, ...onRequest];
const byName = once(
  (): ReadonlyMap<string, CodePage> =>
    new Map(
      all.flatMap((page) => [page.name, ...page.aliases].map((name) => [name, page] as const)),
    ),
);

/** The page of a name as people write it: `CP1252`, `Windows-1252`, `Shift_JIS`, `latin1` … */
export const pageNamed = (name: string): CodePage | undefined => {
  const plain = name.trim().toLowerCase();
  return byName().get(plain) ?? byName().get(plain.replace(/[\s_]+/gu, '-'));
};
export const pageNames: readonly string[] = all.map(({ name }) => name);

export type PageDecoder = {
  /** The next bytes as text; undefined where they are none. */
  readonly next: (bytes: Uint8Array, last: boolean) => string | undefined;
};

/** Decodes bytes as they come; a character cut in two is finished by the next bytes. */
export function pageDecoder(page: CodePage): PageDecoder {
  if ('upperHalf' in page) {
    const { upperHalf } = page;
    return { next: (bytes) => fromTable(bytes, upperHalf) };
  }
  if ('order' in page) {
    const { order } = page;
    return { next: (bytes) => fromUtf32(bytes, order) };
  }
  const decoder = new TextDecoder(page.label, { fatal: true, ignoreBOM: true });
  return {
    next: (bytes, last) => {
      try {
        return decoder.decode(bytes, { stream: !last });
      } catch {
        return undefined;
      }
    },
  };
}

export const decodeAs = (page: CodePage, bytes: Uint8Array): string | undefined =>
  pageDecoder(page).next(bytes, true);

/** The lower half of these pages is ASCII, which is nearly all of a table. */
function fromTable(bytes: Uint8Array, upperHalf: string): string {
  const ascii = new TextDecoder('utf-8', { ignoreBOM: true });
  const parts: string[] = [];
  let from = 0;
  for (let at = 0; at < bytes.length; at += 1) {
    const byte = bytes[at] ?? 0;
    if (byte < 0x80) continue;
    if (at > from) parts.push(ascii.decode(bytes.subarray(from, at)));
    parts.push(upperHalf.charAt(byte - 0x80));
    from = at + 1;
  }
  parts.push(ascii.decode(bytes.subarray(from)));
  return parts.join('');
}
