/**
 * Words of statistics, in the languages of the headers: `Mean`, `std. dev.`, `Mittelwert`,
 * `average of 2`, `bonnet mean`, and which statistic each names.
 */

import { once, remembered } from '../../base/kept.ts';
import { isAsciiOnly, withoutMarks } from '../../base/letters.ts';
import { splitUnit } from '../cells/unit.ts';
import { wordsIn } from '../cells/word-list.ts';
import {
  behindNames,
  besideNames,
  onlyAlone,
  type Statistic,
  type StatisticWords,
} from './statistic-vocabulary.ts';

type Words = {
  readonly kinds: ReadonlyMap<string, Statistic>;
  readonly numbered: () => RegExp;
  /** Whether the words of a name begin, or end, with one that is no name. */
  readonly isBeside: (words: readonly string[]) => boolean;
};
let words: Words | undefined;

const allWords = (group: StatisticWords): readonly string[] =>
  Object.values(group).flatMap(wordsIn);

function wordsOfStatistics(): Words {
  if (words !== undefined) return words;
  const kinds = new Map<string, Statistic>();
  for (const group of [besideNames, behindNames, onlyAlone]) {
    for (const [kind, list] of Object.entries(group) as [Statistic, string][]) {
      for (const word of wordsIn(plainName(list))) kinds.set(word, kind);
    }
  }
  const before = new Set(allWords(besideNames));
  const after = new Set([...before, ...allWords(behindNames)]);
  words = {
    kinds,
    // `mean of 5`, `avg 1-2`, `mean (n=5)`, `1-2 avg`: never with `min`, which may be minutes.
    numbered: once(() => {
      const name = [...before].join('|');
      return new RegExp(
        `^(?:(${name})(?: of)?(?: n)? \\d+(?: \\d+)?|\\d+(?: \\d+)? (${name}))$`,
        'u',
      );
    }),
    isBeside: (parts) =>
      parts.some(
        (_, k) =>
          k > 0 && (before.has(parts.slice(0, k).join(' ')) || after.has(parts.slice(k).join(' '))),
      ),
  };
  return words;
}

/** `Mean (µm)` → `Mean`. */
function withoutUnit(text: string): string {
  const { label, unit } = splitUnit(text);
  return unit === undefined || label === '' ? text : label;
}

/** `Std. Dev.` → `std dev`, `x̄` → `⌀`, `Σ` → `sum` and not the small σ, as the words are compared. */
const plainName = (text: string): string =>
  (isAsciiOnly(text) ? text.toLowerCase() : plainLetters(text))
    .replace(/\./gu, '')
    .replace(/[_:=()[\]/\s–-]+/gu, ' ')
    .trim();

const plainLetters = (text: string): string =>
  withoutMarks(
    text
      .normalize('NFKD')
      .replace(/[Σ∑]/gu, 'sum')
      .toLowerCase()
      .replace(/x\u0304/gu, '⌀'),
  ).replace(/ß/gu, 'ss');

/** The same of a text that may carry a unit; the words themselves have none. */
export const plainStatistic = remembered((text) => plainName(withoutUnit(text)));

/** The statistic a cell names by one word and nothing more. */
export const statisticNamed = remembered((text): Statistic | undefined => {
  const plain = plainStatistic(text);
  const { kinds, numbered } = wordsOfStatistics();
  const kind = kinds.get(plain);
  if (kind !== undefined) return kind;
  const match = /\d/u.test(plain) ? numbered().exec(plain) : null;
  return match === null ? undefined : kinds.get(match[1] ?? match[2] ?? '');
});

/** Whether a cell is a word of statistics and nothing more. */
export const isStatistic = (text: string): boolean => statisticNamed(text) !== undefined;

/** Whether a name of a panel is, or carries, a word of statistics. */
export const namesStatistic = remembered((text): boolean => {
  const plain = plainStatistic(text);
  return (
    isStatistic(text) ||
    (wordsOfStatistics().isBeside(plain.split(' ')) && !avantGauche.test(plain))
  );
});
/** `Porte AVG` is the front left door of a French car. */
const avantGauche = /^(?:porte|portiere|aile) avg$/u;

/** The statistic in `bonnet mean` or `Mittelwert Dach`. */
function statisticBeside(text: string): Statistic | undefined {
  const alone = statisticNamed(text);
  if (alone !== undefined) return alone;
  const parts = plainStatistic(text).split(' ');
  const { kinds } = wordsOfStatistics();
  return kinds.get(parts.at(-1) ?? '') ?? kinds.get(parts[0] ?? '');
}

/** Which one a text names; `other` where it is a word of statistics that is not computed here. */
export const statisticOf = (text: string): Statistic =>
  statisticBeside(text) ?? (plainStatistic(text) === 'n' ? 'count' : 'other');

/** Max, Min, Mini, Media: words of statistics that are also names of people and cars. */
export const mayBeName = (text: string): boolean => {
  const plain = plainStatistic(text);
  return /^[a-z]{1,7}$/u.test(plain) && !allWords(besideNames).includes(plain);
};
