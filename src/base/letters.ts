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

/** Its letters and digits alone. */
export const lettersOf = (text: string): string =>
  text.replace(isAsciiOnly(text) ? /[^A-Za-z\d]+/g : /[^\p{L}\p{N}]+/gu, '');
