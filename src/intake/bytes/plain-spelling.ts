/**
 * Whether a word, as a code page spells it, is one that a person would write.
 *
 * Taken in the wrong page, letters become signs inside a word, capitals inside small letters, or
 * letters of another alphabet. Such a spelling is a fault and rules the page out. A word of the
 * trade (`spelled-words.ts`) counts for it.
 */
import { type Alphabet, alphabetOfWord } from './spelled-words.ts';

/** `lone`: a letter by itself, as in `Type-Ж`: in most pages a byte there is a sign. */
export type Spelling = 'known' | 'plain' | 'lone' | 'fault';

/** Signs that stand by themselves or beside a number. */
const loneSigns = new Set('°±²³µ·–—…€£½¼¾×№§\u00a0');
/** Signs a word may end with, or start with. */
const afterWord = new Set('²³°’”»‘“…™®©\u00a0–—');
const beforeWord = new Set('°“„«‘’¿¡№§\u00a0–—');
/** Words of one letter; any other letter alone is a dash or a sign in another page. */
const oneLetterWords = new Set('àèéåøö');
const joins = /[’\u00a0–—]/u;

export function judgeSpelling(word: string): Spelling {
  let known = false;
  let lone = false;
  const parts = word.match(/[\p{L}\p{M}]+|\d+|[^\p{L}\p{M}\d]/gu) ?? [];
  for (const [k, part] of parts.entries()) {
    const [before = '', after = ''] = [parts[k - 1], parts[k + 1]];
    if ([...part].every(isAscii)) continue;
    if (alphabetOfWord(part.toLowerCase()) !== undefined) known = true;
    else if (isLone(part, before, after)) lone = true;
    else if (!isPlain(part, before, after)) return 'fault';
  }
  return known ? 'known' : lone ? 'lone' : 'plain';
}

/** Whose letters the first word of the trade in a text is written in. */
export function alphabetOf(text: string): Alphabet | undefined {
  const parts = text.match(/[\p{L}\p{M}]+/gu) ?? [];
  return parts.map((part) => alphabetOfWord(part.toLowerCase())).find((one) => one !== undefined);
}

/** A capital, or a letter of Cyrillic as in `п/п` and `л. дверь`, with no letter or digit beside it. */
const isLone = (part: string, before: string, after: string): boolean =>
  (isCapital(part) || /^\p{Script=Cyrillic}/u.test(part)) &&
  [...part].length === 1 &&
  !oneLetterWords.has(part.toLowerCase()) &&
  [before, after].every((other) => !isLetters(other) && !isDigits(other));

const isPlain = (part: string, before: string, after: string): boolean =>
  isLetters(part) ? plainLetters(part, before, after) : plainSign(part, before, after);
const isLetters = (part: string): boolean => /^[\p{L}\p{M}]/u.test(part);
const isDigits = (part: string): boolean => /^\d/u.test(part);

function plainSign(sign: string, before: string, after: string): boolean {
  const [left, right] = [isLetters(before), isLetters(after)];
  if (left && right) return joins.test(sign);
  if (left) return afterWord.has(sign);
  if (right) return beforeWord.has(sign);
  return loneSigns.has(sign) && before !== sign;
}

function plainLetters(part: string, before: string, after: string): boolean {
  if (isDigits(before) && isDigits(after)) return false;
  const letters = [...part];
  if (letters.length === 1) return oneLetterWords.has(part.toLowerCase());
  return oneAlphabet(part) && evenCase(part);
}

function oneAlphabet(word: string): boolean {
  if (/^[\p{Script=Cyrillic}]+$/u.test(word) || /^[\p{Script=Greek}]+$/u.test(word)) return true;
  // ª, º and ⁿ count as letters of the alphabet and are signs here; so is ƒ.
  if (!/^[\p{Lu}\p{Ll}]+$/u.test(word) || !/^\p{Script=Latin}+$/u.test(word)) return false;
  if (word.includes('ƒ')) return false;
  const ascii = word.replace(/[^a-z]/giu, '').length;
  const { length } = [...word];
  // `Höß`: a short name may have one plain letter only.
  return ascii * 2 >= length || length < 3 || (length === 3 && ascii === 1);
}

/** No capital inside small letters and no small letter among capitals, ß aside. */
function evenCase(word: string): boolean {
  const letters = [...word.replaceAll('ß', '')];
  for (const [k, letter] of letters.entries()) {
    const next = letters[k + 1] ?? '';
    // `TŘr`: a word has its capital first.
    if (k > 0 && isCapital(letter) && !isAscii(letter) && isSmall(next)) return false;
    if (isSmall(letter) && isCapital(next) && !(isAscii(letter) && isAscii(next))) return false;
  }
  const ascii = letters.filter(isAscii);
  const allCapitals = ascii.length >= 2 && ascii.every(isCapital);
  return !(allCapitals && letters.some((letter) => !isAscii(letter) && isSmall(letter)));
}

const isSmall = (letter: string): boolean => /^\p{Ll}/u.test(letter);
const isCapital = (letter: string): boolean => /^\p{Lu}/u.test(letter);
const isAscii = (letter: string): boolean => letter < '\u0080';
