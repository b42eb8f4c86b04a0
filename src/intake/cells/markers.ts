/**
 * What stands behind a number besides its unit: `102 (deleted)`, `102D`, `102 *`.
 *
 * A word says itself what it means. A sign does not: whether `*` marks a reading left out or one of
 * interest only the file can say, in a line such as `* = deleted`; without one the cell is refused.
 */
import { once } from '../../base/kept.ts';
import { namesDeletion, notReading } from './not-readings.ts';
import { isRemark } from './remark-words.ts';
import { isLostMicro, unitNamed } from './unit.ts';
import { wordKey, wordKeys } from './word-key.ts';

export type Tail = {
  /** The part that stands where a unit would; empty if there is none. */
  readonly unitText: string;
  readonly marker: string;
};

/** A unit and a remark; what is longer is a text that happens to start with a number. */
const longestTail = 60;

const isUnit = (text: string): boolean =>
  text === '' || unitNamed(text) !== undefined || isLostMicro(text);

/** The unit and the marker in what follows the digits of a number. */
export function splitTail(tail: string): Tail {
  if (tail === '' || isUnit(tail)) return { unitText: tail, marker: '' };
  if (tail.length > longestTail) return { unitText: '', marker: tail };
  const [, before = '', marker = tail] = /^(\S*)\s*([([].*[)\]])$/u.exec(tail) ??
    /^([\p{L}µμ㎛.]*)\s*([*†‡§#!?°~]+)$/u.exec(tail) ??
    /^(\S+)\s+(.+)$/u.exec(tail) ?? [undefined, '', tail];
  return isUnit(before) ? { unitText: before, marker } : { unitText: '', marker: tail };
}

/** Whether a marker is a sign that only the file itself can explain. */
export const isSign = (marker: string): boolean => /^[*†‡§#!?°~]+$/u.test(marker);

export type MarkerMeaning = 'kept' | 'deleted' | 'error' | 'over-range';

const sound = wordKeys(
  'ok, okay, pass, passed, good, valid, i.O., gut, gültig, valide, válido, valido',
);
/** These may judge the film as well as the reading: a film can be too high, a panel can fail. */
const verdicts = wordKeys(
  'fail, failed, failure, bad, high, hi, low, lo, over, range, fault, lost, broken, kaputt, defekt, cassé',
);

/** What a marker says in words, undefined where it does not. */
export function markerMeaning(marker: string): MarkerMeaning | undefined {
  const inside = withoutBrackets(marker);
  const key = wordKey(inside);
  if (sound.has(key) || isRemark(inside)) return 'kept';
  if (namesDeletion(inside) || key === 'd') return 'deleted';
  const told = verdicts.has(key) ? undefined : notReading(inside)?.class;
  return told === 'error' || told === 'over-range' ? told : undefined;
}

const withoutBrackets = (marker: string): string => marker.replace(/^[([]\s*|\s*[)\]]$/gu, '');

/** What was seen of the paint, where a marker says that and no more. */
export function remarkIn(marker: string): string | undefined {
  const inside = withoutBrackets(marker);
  return inside !== '' && isRemark(inside) ? inside : undefined;
}

/** What signs behind numbers mean, as the file itself explains them. */
export type MarkerLegend = ReadonlyMap<string, 'deleted' | 'kept'>;

const legendLine = once(
  () =>
    /^[#/\s"]*([*†‡§!?°~]{1,3})\s*(?:[=:–-]|means|bedeutet|signifie|significa|betekent)?\s*(\p{L}.*?)["\s.]*$/iu,
);
/** `values in brackets are discarded`, `tra parentesi = scartati`, `[ ] = mesure supprimée`. */
const bracketLine = once(
  () =>
    /(brackets?|parenthes[ei]s|klammern?|parenthèses|crochets|paréntesis|corchetes|parentesi(?: quadre)?|haakjes|nawiasach|скобках|括弧|括号|(?:\(|\[)\s*(?:…|\.{2,3}|[xn]{1,3}|\d{1,4})?\s*[)\]])\s*(?:[=:–-]|are|is|means?|sind|ist|bedeutet|sont|signifie|son|significa|sono|zijn|betekent)\s*(\p{L}.*?)["\s.]*$/iu,
);
/** One of them, or part of a word for them: few lines have any, and the form takes long to be compiled. */
const ofBrackets =
  /[([]|bracket|parent|parént|klammer|crochet|corchete|haakje|nawiasach|скобках|括/iu;
/** The signs by which a legend keeps what brackets around a number mean. */
export type Brackets = '()' | '[]';
export const bracketsOf = (text: string): Brackets => (text.startsWith('[') ? '[]' : '()');

/** Which brackets a legend speaks of: some words mean those of either shape. */
function bracketsNamed(word: string, line: string): readonly Brackets[] {
  if (/^\[|crochets|corchetes|quadre/iu.test(word) || square().test(line)) return ['[]'];
  return /^\(|parenth|paréntesis|parentesi/iu.test(word) ? ['()'] : ['()', '[]'];
}
const square = once(
  () => /(?<!\p{L})(?:square|eckigen?|vierkante|kwadratowych|квадратных)(?!\p{L})/iu,
);
const negated = /\b(?:not|nicht|non|no|ne|niet|pas)\b/iu;
const counted = once(
  () =>
    /(?:valid|includ|kept|count|used|averag|gültig|gezählt|inclu|compt|válid|contad|contat|geldig|geteld)/iu,
);

const ofSigns = /[*†‡§!?°~]/u;
/** Whether some line of a text may be such a legend: of most texts none may. */
export const mayExplainMarkers = (text: string): boolean =>
  ofSigns.test(text) || ofBrackets.test(text);

/** Lines such as `* = deleted` among the texts around a table; one that says neither is no legend. */
export function markerLegend(lines: Iterable<string>): MarkerLegend {
  const legend = new Map<string, 'deleted' | 'kept'>();
  for (const line of lines) {
    const [, brackets = '', said] =
      (ofBrackets.test(line) ? bracketLine().exec(line.slice(0, 200)) : null) ?? [];
    const bracketed = said === undefined ? undefined : meaningOfLegend(said);
    if (bracketed !== undefined) {
      for (const sign of bracketsNamed(brackets, line)) legend.set(sign, bracketed);
    }
    if (!ofSigns.test(line)) continue;
    const [, sign, words = ''] = legendLine().exec(line.slice(0, 200)) ?? [];
    const meaning = sign === undefined ? undefined : meaningOfLegend(words);
    if (sign !== undefined && meaning !== undefined) legend.set(sign, meaning);
  }
  return legend;
}

/** `rejected, do not use` says one thing twice. */
const notToUse = once(
  () =>
    /\b(?:do not (?:use|count)|don['’]t (?:use|count)|not (?:to be )?(?:used|counted|included)|nicht (?:verwenden|benutzen|verwendet|gewertet|werten|gezählt)|ne pas (?:utiliser|compter)|non (?:comptée?s?|retenue?s?|utilisée?s?)|no (?:usar|contar|contad[ao]s?|incluid[ao]s?)|non (?:usare|contare|contat[aeio]|usat[aeio])|niet (?:gebruiken|meetellen|meegeteld|gebruikt))(?!\p{L})/iu,
);

/** Whether words of a legend say that something does not count. */
export const saysDeleted = (said: string): boolean => meaningOfLegend(said) === 'deleted';

function meaningOfLegend(said: string): 'deleted' | 'kept' | undefined {
  const words = said.replace(notToUse(), ' ');
  const not = negated.test(words);
  const deletion =
    words !== said ||
    words.split(/[\s,;]+/u).some((word) => wordKey(word).length > 1 && namesDeletion(word));
  if (deletion) return not ? undefined : 'deleted';
  if (counted().test(words)) return not ? 'deleted' : 'kept';
  // What was seen of the paint there says nothing against the reading.
  return !not && isRemark(words.trim()) ? 'kept' : undefined;
}
