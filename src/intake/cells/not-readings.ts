/**
 * Cells that say in words or signs that there is no reading, and why.
 *
 * The reasons: *missing* (nothing was measured), *over-range* (more than the gauge can show),
 * *not-film* (less than it can show), *error* (the gauge or a spreadsheet failed), *deleted* (the
 * user took it back). None of them is a number, least of all zero. A word that is in no list is not
 * taken for one of them.
 */

import { isErrorCode } from './error-codes.ts';
import {
  deletedWords,
  errorWords,
  missingWords,
  overRangeWords,
  underRangeWords,
  unmeasuredWords,
} from './no-reading-words.ts';
import { numberShape } from './numbers.ts';
import { unitNamed } from './unit.ts';
import { wordKey } from './word-key.ts';

export type NoReadingClass = 'missing' | 'over-range' | 'error' | 'deleted' | 'not-film';
export type NotReading = { readonly class: NoReadingClass; readonly reason: string };

type Meaning = { readonly class: NoReadingClass; readonly says: string };

const noReading: Meaning = { class: 'missing', says: 'marks no reading' };
const overRange: Meaning = { class: 'over-range', says: 'means over-range' };
const underRange: Meaning = { class: 'not-film', says: 'means under-range' };
const unmeasured: Meaning = { class: 'missing', says: 'names a place that was not measured' };
const errorCode: Meaning = { class: 'error', says: 'is an error code of the gauge' };
const gaugeError: Meaning = { class: 'error', says: 'is an error of the gauge' };

const signs: readonly (readonly [RegExp, Meaning])[] = [
  [/^(?:[-‒–—―_.·…/\\\s＿ーｰ─━]*|[-–—]+[.,][-–—]+|\?+|\\N)$/u, noReading],
  [
    /^#¿?(?:N\/A|N\/D|N\/B|NV|NUM|NULL|NAME|NOM|NOMBRE|REF|BEZUG|DIV\/0|VALUE|WERT|VALEUR|VALORE?|WAARDE|ZAHL|GETAL|SPILL|CALC)[!?]{0,2}$/iu,
    { class: 'error', says: 'is an error of a spreadsheet' },
  ],
  [
    /^[+-]?\d?[.,]?\d*#(?:INF|IND|QNAN|SNAN|NAN|IO)\d*$/iu,
    { class: 'error', says: 'is a number that a program could not compute' },
  ],
  [/^\+?1\.79769313486\d*e\+?308$/iu, overRange],
  [/^#{2,}$/u, { class: 'error', says: 'is a spreadsheet column too narrow for its number' }],
  [/^\*{2,}$/u, { class: 'error', says: 'is no number that its column could show' }],
  [/^(?:e|er|err|error|fehler|erreur|errore|fout|fallo|erro)[\s.:#_-]*\d{1,4}$/iu, errorCode],
  [/^(?:\++|>{2,}|\+?inf(?:inity)?|\+?∞)$/iu, overRange],
  [/^(?:<{2,}|-inf(?:inity)?|-∞)$/iu, underRange],
  [/^x{2,}$/iu, { class: 'deleted', says: 'is crossed out' }],
  [/^~~.*~~$|^<(s|del|strike)>.*<\/\1>$|\u0336/iu, { class: 'deleted', says: 'is struck out' }],
];

/** Why a cell gives no reading, or undefined if it may give one. */
export function notReading(text: string): NotReading | undefined {
  if (text === '') return { class: 'missing', reason: 'empty cell' };
  if (text.length > 60 || /^\d[\d.,]*$/u.test(text)) return undefined;
  const meaning = meaningOf(text) ?? meaningOf(withoutUnit(text));
  return meaning && { class: meaning.class, reason: `"${text}" ${meaning.says}` };
}

const meaningOf = (text: string): Meaning | undefined =>
  signs.find(([form]) => form.test(text))?.[1] ??
  limit(text) ??
  byWord(wordKey(text), text) ??
  (isErrorCode(text) ? errorCode : undefined);

/** `>2000` and `< 5 µm`: the end of a range, which is no reading. */
function limit(text: string): Meaning | undefined {
  const [, sign = '', number = ''] = /^([<>≤≥])[=<>]?\s*(.+)$/u.exec(text) ?? [];
  if (numberShape(number) === undefined) return undefined;
  return sign === '<' || sign === '≤' ? underRange : overRange;
}

function byWord(key: string, text: string): Meaning | undefined {
  if (missingWords.has(key)) return noReading;
  if (overRangeWords.has(key)) return overRange;
  if (underRangeWords.has(key)) return underRange;
  if (unmeasuredWords.has(key)) return unmeasured;
  if (errorWords.has(key)) return gaugeError;
  return namesDeletion(text) ? { class: 'deleted', says: 'means deleted' } : undefined;
}

/** Whether a word says why a place was not measured: beside a reading it is no plain "nothing to say". */
export const namesUnmeasured = (text: string): boolean => unmeasuredWords.has(wordKey(text));

/** Whether a word or sign says that a reading was taken back. */
export const namesDeletion = (text: string): boolean =>
  deletedWords.has(wordKey(text)) || /^[✗✘☒×]$/u.test(text);

/** `OL µm` and `--- µm`: a display keeps the unit where the number should be. */
function withoutUnit(text: string): string {
  const [, before = '', last = ''] = /^(\D*\S)\s+(\S+)$/u.exec(text) ?? [];
  return unitNamed(last) === undefined ? text : before;
}
