/**
 * UTF-8 that was taken for a code page and written as UTF-8 once more: `Âµm`, `TÃ¼r`.
 *
 * The pairs this makes (a capital with an accent, then a sign) are in no language. They are turned
 * back where they give a letter or sign that stands in exports, and it is said how often. A sign
 * that was lost on the way (U+FFFD, `?`) cannot be turned back: see `lost-micro.ts`.
 */
import { decodeAs, westernPage } from './code-pages.ts';

/** The byte of a character in windows-1252, or in ISO 8859-1 where programs took the one for the other. */
const bytesOf: ReadonlyMap<string, number> = new Map(
  Array.from({ length: 0x80 }, (_, k) => 0x80 + k).flatMap((byte) => [
    [String.fromCharCode(byte), byte],
    [decodeAs(westernPage, Uint8Array.of(byte)) ?? '', byte],
  ]),
);
const characters = (from: number, to: number): string =>
  [...bytesOf]
    .filter(([, byte]) => byte >= from && byte <= to)
    .map(([character]) => character)
    .join('');
const tail = `[${characters(0x80, 0xbf)}]`;
const twice = new RegExp(
  `[${characters(0xc2, 0xdf)}]${tail}|[${characters(0xe1, 0xef)}]${tail}{2}`,
  'gu',
);
/** The same of the micro sign by the old Macintosh and the DOS pages. */
const micro = /(?:¬µ|┬╡|┬Á|Œº|╬╝)(?=m)/gu;
const worthwhile = /^[\u00a0-\u017fμ–—‘’“”…€㎛−\ufffd\ufeff]$/u;

export type Repairs = Map<string, { readonly by: string; count: number }>;

export function repairTwiceEncoded(text: string, repairs: Repairs): string {
  // The usual file is ASCII, or has its µ by itself.
  if (!/[\u00c2-\u00ef┬╬¬Œ]/u.test(text)) return text;
  return text
    .replace(twice, (pair) => mended(pair, repairs))
    .replace(micro, (pair) => count(pair, 'µ', repairs));
}

function mended(pair: string, repairs: Repairs): string {
  const bytes = Uint8Array.from(pair, (character) => bytesOf.get(character) ?? 0);
  try {
    const character = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
    return worthwhile.test(character) ? count(pair, character, repairs) : pair;
  } catch {
    return pair;
  }
}

function count(pair: string, by: string, repairs: Repairs): string {
  const before = repairs.get(pair);
  if (before === undefined) repairs.set(pair, { by, count: 1 });
  else before.count += 1;
  return by;
}

/** `"Âµ" repaired to "µ" in 3 places: it was encoded twice`. */
export const repairSentences = (repairs: Repairs): readonly string[] =>
  [...repairs].map(
    ([pair, { by, count: n }]) =>
      `"${pair}" repaired to "${by}" in ${n} ${n === 1 ? 'place' : 'places'}: it was encoded twice`,
  );
