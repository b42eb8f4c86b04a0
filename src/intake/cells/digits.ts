/**
 * Digits, marks and signs of other scripts → those of ASCII, value for value.
 *
 * A run of ten decimal digits in Unicode is in order of value (Unicode Standard, §4.6), so the zero
 * of a script tells all ten. U+066B and U+066C are kept: each has one meaning, whatever a column
 * uses besides.
 */
import { once } from '../../base/kept.ts';
import { isAsciiOnly } from '../../base/letters.ts';

const zeros: readonly number[] = [
  0xff10, // full width
  0x0660, // Arabic-Indic
  0x06f0, // Persian and Urdu
  0x0966, // Devanagari
  0x09e6, // Bengali
  0x0e50, // Thai
];

const signs: ReadonlyMap<string, string> = new Map([
  ['．', '.'],
  // The raised point of older British print.
  ['·', '.'],
  ['，', ','],
  ['－', '-'],
  ['﹣', '-'],
  ['−', '-'],
  ['‐', '-'],
  ['‑', '-'],
  ['＋', '+'],
  ['＊', '*'],
  ['％', '%'],
  ['（', '('],
  ['）', ')'],
  ['＞', '>'],
  ['＜', '<'],
]);

const foreign = once(() => /[\p{Nd}．·，－﹣−‐‑＋＊％（）＞＜]/gu);

export const plainDigits = (text: string): string =>
  isAsciiOnly(text)
    ? text
    : text.replace(foreign(), (character) => signs.get(character) ?? asciiDigit(character));

function asciiDigit(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  const zero = zeros.find((first) => code >= first && code < first + 10);
  return zero === undefined ? character : String(code - zero);
}
