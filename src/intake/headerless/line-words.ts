/**
 * A line as people type it → its numbers, each with the words before it and the unit behind it:
 * `Bonnet: left 121, right 117 µm` → 121 after `Bonnet: left`, 117 in µm after `right`.
 */
import { once } from '../../base/kept.ts';
import { unitNamed } from '../cells/unit.ts';
import { setsApart } from './marks-between.ts';

/** A stretch of a line, and where it begins in it. */
export type Piece = { readonly text: string; readonly at: number };

/** The same so many signs further on. */
export function moved<Known extends Piece | undefined>(piece: Known, by: number): Known {
  return piece === undefined ? piece : { ...piece, at: piece.at + by };
}

export type NumberInLine = {
  /** What stands between the number before and this one, without the marks around it. */
  readonly words: Piece;
  readonly number: Piece;
  readonly unit: Piece | undefined;
};

export type LineWords = {
  readonly numbers: readonly NumberInLine[];
  /** What stands behind the last number, or the whole line where it has none. */
  readonly rest: Piece;
};

/** Digits with no letter, digit or sign of a name before them: `P1` and `#2` are names. */
const ofNumber = (): RegExp => /(?<![\p{L}\p{N}#_.,])[+−-]?\d+(?:[.,]\d+)*/gu;
const wordBehind = once(() => /^([ \u00a0]?[([]?)([\p{L}µμ㎛]+)[)\]]?/u);
/** `1:`, `2)`, `(3)`, `4 =` before another number is the name of a point, and `10:12` a time. */
const namesNext = /^\s?(?:[:=)\]-]|\.(?=\s))\s*(?=[+−-]?\d)/u;
const isTime = /^:\d\d(?!\d)/u;

/**
 * Undefined where a stretch of digits is neither a number nor a name: `12:30`, `3rd`, `2024-03-05`, `>2000`, `112+`; and
 * where a mark sets a number apart from the others.
 */
export function wordsOfLine(line: string): LineWords | undefined {
  const numbers: NumberInLine[] = [];
  const wordless: string[] = [];
  let from = 0;
  for (const { 0: text, index } of line.matchAll(ofNumber())) {
    if (index < from) continue;
    const end = index + text.length;
    const behind = line.slice(end);
    if (isTime.test(behind) || isDay.test(line.slice(index))) return undefined;
    if (isBound.test(line.slice(0, index))) return undefined;
    if (isMore().test(behind) || isTimes.test(behind)) return undefined;
    const isName = /^\d{1,3}$/u.test(text) && namesNext.test(behind);
    if (isName && !wasBefore.test(line.slice(from, index))) continue;
    const unit = unitBehind(behind, end);
    if (unit === undefined && /^\p{L}/u.test(behind)) return undefined;
    const between = line.slice(from, index);
    const words = bare(between, from);
    if (numbers.length > 0 && words.text === '') wordless.push(between);
    numbers.push({ words, number: { text, at: index }, unit });
    from = unit === undefined ? end : endOf(line, unit);
  }
  if (setsApart(wordless)) return undefined;
  return { numbers, rest: bare(line.slice(from), from) };
}

/** `>2000`, `~110`: beyond the range, or about; `->` and a `~` before a blank only lead on. */
const isBound = /(?:[<≤≥≈±~]|(?<![-–—=>])>)$/u;

/** `112+`: more than the gauge shows, or a mark of somebody's; `112+118` and `112 + 118` only go on. */
const isMore = once(() => /^\+(?![\d\p{L}])/u);
/** `112 x3, 115`, `112 (x3)`: a reading so many times over, or a point; before a number it is a point. */
const isTimes = /^\s?[([]?[x×]\s?\d{1,2}(?:[)\]]|\s*(?:[,;/|]|$))/iu;
/** `(was 125) 100`: the reading before, and no name of the next. */
const wasBefore = /\bwas\s*$/iu;

const isDay = /^(?:\d{4}-\d\d?-\d\d?|\d{1,2}\/\d{1,2}\/\d{2,4}|\d{1,2}\.\d{1,2}\.\d{2,4})(?!\d)/u;

const endOf = (line: string, { text, at }: Piece): number => {
  const end = at + text.length;
  return /[)\]]/u.test(line[end] ?? '') ? end + 1 : end;
};

/** Words that are units in brackets or glued to the number, and everyday ones elsewhere. */
const everyday = new Set(['in', 'my']);

function unitBehind(behind: string, end: number): Piece | undefined {
  const [, before = '', word = ''] = wordBehind().exec(behind) ?? [];
  if (word === '' || unitNamed(word) === undefined) return undefined;
  if (before.trim() === '' && before !== '' && everyday.has(word.toLowerCase())) return undefined;
  return { text: word, at: end + before.length };
}

const marksBefore = /^[\s:=\-–—>→.,;/|&~*•+([\]){}"'_]+/u;
const marksBehind = /[\s:=\-–—>→.,;/|&~*•+()[\]{}"'_]+$/u;

function bare(text: string, from: number): Piece {
  const start = marksBefore.exec(text)?.[0].length ?? 0;
  const inner = text.slice(start).replace(marksBehind, '');
  // `Bonnet (repainted)` keeps the bracket that it opened.
  const closes = inner.includes('(') && inner.lastIndexOf('(') > inner.lastIndexOf(')');
  return { text: closes ? `${inner})` : inner, at: from + start };
}
