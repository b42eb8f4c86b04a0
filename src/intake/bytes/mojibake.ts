/**
 * UTF-8 that was taken for a code page and written as UTF-8 once more: `Âµm`, `TÃ¼r`.
 *
 * The pairs this makes (a capital with an accent, then a sign) are in no language. They are turned
 * back where they give a letter or sign that stands in exports, and it is said how often; what was encoded
 * three times takes two turns. A micro sign that a program wrote out (`&micro;m`, `\u00b5m`, `=B5m`) is
 * turned back alike. A sign that was lost on the way (U+FFFD, `?`) cannot be: see `lost-micro.ts`.
 */
import { once } from '../../base/kept.ts';
import { decodeAs, westernPage } from './code-pages.ts';

/** The byte of a character in windows-1252, or in ISO 8859-1 where programs took the one for the other. */
const bytesOf = once(
  (): ReadonlyMap<string, number> =>
    new Map(
      Array.from({ length: 0x80 }, (_, k) => 0x80 + k).flatMap((byte) => [
        [String.fromCharCode(byte), byte],
        [decodeAs(westernPage, Uint8Array.of(byte)) ?? '', byte],
      ]),
    ),
);
const characters = (from: number, to: number): string =>
  [...bytesOf()]
    .filter(([, byte]) => byte >= from && byte <= to)
    .map(([character]) => character)
    .join('');
const twice = once(() => {
  const tail = `[${characters(0x80, 0xbf)}]`;
  return new RegExp(
    `[${characters(0xc2, 0xdf)}]${tail}|[${characters(0xe1, 0xef)}]${tail}{2}`,
    'gu',
  );
});
/** The same of the micro sign by the old Macintosh and the DOS pages. */
const micro = /(?:¬µ|┬╡|┬Á|Œº|╬╝)(?=m)/gu;
/** A micro sign written out for HTML, JSON, mail or an address; and the letter that stands for it in a western page. */
const writtenOut = (): RegExp =>
  /(?:&#(?:181|956|x0*b5|x0*3bc);|&(?:micro|mu);|\\u(?:00b5|03bc)|=C2=B5|%C2%B5|[=%]B5|(?<![\p{L}\p{N}])ì)(?=m(?![\p{L}]))/giu;
/** Text that was encoded so many times more is no slip of a program. */
const mostTurns = 3;
const worthwhile = /^[\u00a0-\u017fμ–—‘’“”…€㎛−\ufffd\ufeff]$/u;

export type Repairs = Map<string, { readonly by: string; count: number }>;

export function repairTwiceEncoded(text: string, repairs: Repairs): string {
  // The usual file is ASCII, or has its µ by itself.
  if (!/[&%=\\\x80-\uffff]/.test(text)) return text;
  if (!/[\u00c2-\u00ef┬╬¬Œ]|(?:[&%=]|\\u)[#\w%=]{2,7};?m/u.test(text)) return text;
  let turned = text;
  for (let turn = 0; turn < mostTurns; turn += 1) {
    const before = turned;
    turned = before.replace(twice(), (pair) => mended(pair, repairs));
    if (turned === before) break;
  }
  return turned
    .replace(micro, (pair) => count(pair, 'µ', repairs))
    .replace(writtenOut(), (written) => count(written, 'µ', repairs));
}

function mended(pair: string, repairs: Repairs): string {
  const bytes = Uint8Array.from(pair, (character) => bytesOf().get(character) ?? 0);
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
      `"${pair}" repaired to "${by}" in ${n} ${n === 1 ? 'place' : 'places'}: it was encoded ${/[ì&%=\\]/u.test(pair) ? 'as something else' : 'twice'}`,
  );
