/**
 * Letters and digits of any script. A class such as `\p{L}` takes V8 a third of a millisecond to make, which is
 * much where a whole file is read in twenty; most texts are ASCII, and are answered without.
 */
const ASCII = /^[\0-\x7f]*$/;
export const isAsciiOnly = (text: string): boolean => ASCII.test(text);

/** Whether a text holds a letter. */
export const hasLetter = (text: string): boolean =>
  /[A-Za-z]/.test(text) || (!isAsciiOnly(text) && /\p{L}/u.test(text));

/** Whether a text holds a digit, or another sign for a number. */
export const hasNumber = (text: string): boolean =>
  /\d/.test(text) || (!isAsciiOnly(text) && /\p{N}/u.test(text));

/** Whether a text holds a decimal digit. */
export const hasDigit = (text: string): boolean =>
  /\d/.test(text) || (!isAsciiOnly(text) && /\p{Nd}/u.test(text));

/** Runs of letters, of the marks on them, and of digits. */
export const wordsOf = (text: string): readonly string[] =>
  text.match(isAsciiOnly(text) ? /[A-Za-z\d]+/g : /[\p{L}\p{M}\p{N}]+/gu) ?? [];

/** Those of European letters, and of kana. */
const usualMarks = /[\u0300-\u036f\u3099\u309a]/g;
/** None of these characters is another mark: European, Hebrew, Arabic, Chinese, Japanese and Korean ones, and signs. */
const beyondUsual =
  /[^\0-\u0482\u048a-\u0590\u05d0-\u05ea\u0620-\u064a\u1100-\u11ff\u1e00-\u1fff\u2000-\u20cf\u2100-\u2bff\u3000-\u3029\u3030-\ua66e\uac00-\ud7ff]/;

/** Without the marks on its letters, of a text in which they stand by themselves (NFD, NFKD). */
export function withoutMarks(parted: string): string {
  const plain = parted.replace(usualMarks, '');
  return beyondUsual.test(plain) ? plain.replace(/\p{M}/gu, '') : plain;
}

/** Its letters and digits alone. */
export const lettersOf = (text: string): string =>
  text.replace(isAsciiOnly(text) ? /[^A-Za-z\d]+/g : /[^\p{L}\p{N}]+/gu, '');
