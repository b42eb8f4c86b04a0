import { once } from '../../base/kept.ts';
import { wordsOf } from '../../base/letters.ts';
import type { End, KerbWord, Part, Sense, Side } from './panel-sense.ts';
import {
  endOfPart,
  englishWords,
  type Vocabulary,
  vocabulary,
  vocabularyFor,
} from './panel-vocabulary.ts';

/** What a label says when one sense is chosen for each of its words. */
export type LabelMeaning = {
  readonly part?: Part;
  readonly end?: End;
  readonly side?: Side;
  /** A word that means left or right only once the country is known. */
  readonly kerb?: KerbWord;
  readonly sideWord?: true;
  /** The side comes from a single letter: beside a kerb word, `r` is rear (`o/s/r`). */
  readonly sideLetter?: true;
  readonly weak?: true;
};

const longestPhrase = 4;
/** Longer labels are prose, not panel names. */
const mostWords = 12;

const knownWords = once(
  (): ReadonlySet<string> =>
    new Set([...vocabulary().keys()].flatMap((key) => (key.includes(' ') ? key.split(' ') : key))),
);
/**
 * Words that may be written without a gap (`frontleftdoor`, `Vordertür`): not single letters or
 * fillers, nor the short words of other languages, of which any word could be made; a word in a script
 * without gaps may be one letter.
 */
const gapless = /^[\u3040-\u30ff\u3400-\u9fff\uac00-\ud7af]+$/;
const gluedWords = once(() =>
  [...vocabulary().keys()]
    .filter((key) => !key.includes(' ') && key !== 'the')
    .filter((key) => key.length > (gapless.test(key) ? 0 : englishWords.has(key) ? 1 : 3))
    .sort((a, b) => b.length - a.length),
);

export const isKnownWord = (word: string): boolean =>
  englishWords.has(word) || knownWords().has(word);

/**
 * The words of a label, in lower case: Unicode NFKC, split at anything but letters and digits, then
 * at capitals (`doorFrontLeft`) and between known words (`lfdoor`) where the whole is not a word.
 */
export function labelWords(label: string): readonly string[] {
  return wordsOf(label.normalize('NFKC').replace(/['’]s?\b/gu, '')).flatMap(wordsOfRun);
}

function wordsOfRun(run: string): readonly string[] {
  const whole = run.toLowerCase();
  const known = knownForm(whole);
  if (known !== undefined) return [known];
  // A capital at most, where the word begins: no hump.
  if (run.slice(1) === whole.slice(1)) return unglue(whole) ?? [whole];
  const humps = run
    .split(/(?<=[\p{Ll}\p{N}])(?=\p{Lu})|(?<=\p{Lu})(?=\p{Lu}\p{Ll})/u)
    .map((hump) => hump.toLowerCase());
  const words = humps.map(knownForm);
  if (humps.length > 1 && words.every((word) => word !== undefined)) return words;
  return unglue(whole) ?? (humps.length > 1 ? humps : [whole]);
}

/** English first, of which no plural is a word of another language. */
function knownForm(word: string): string | undefined {
  if (englishWords.has(word)) return word;
  const singular = word.endsWith('s') ? word.slice(0, -1) : '';
  if (singular.length > 2 && englishWords.has(singular)) return singular;
  if (knownWords().has(word)) return word;
  return singular.length > 2 && knownWords().has(singular) ? singular : undefined;
}

function unglue(run: string): readonly string[] | undefined {
  if (run.length > 40) return undefined;
  for (const word of gluedWords()) {
    if (!run.startsWith(word)) continue;
    if (run.length === word.length) return [word];
    const rest = unglue(run.slice(word.length));
    if (rest !== undefined) return [word, ...rest];
  }
  return undefined;
}

/** Every meaning the words can have together; none when a word is unknown or two contradict. */
export function meanings(words: readonly string[]): readonly LabelMeaning[] {
  if (words.length === 0 || words.length > mostWords) return [];
  return combine(words, 0, {}, vocabularyFor(words)).flatMap(settle);
}

function combine(
  words: readonly string[],
  from: number,
  soFar: LabelMeaning,
  known: Vocabulary,
): readonly LabelMeaning[] {
  if (from === words.length) return [soFar];
  return phrasesAt(words, from, known).flatMap(({ length, phrase, senses }) =>
    senses.flatMap((sense) => {
      const merged = merge(soFar, sense, phrase.length === 1);
      return merged === undefined ? [] : combine(words, from + length, merged, known);
    }),
  );
}

type Phrase = {
  readonly length: number;
  readonly phrase: string;
  readonly senses: readonly Sense[];
};

/** The known phrases that begin here; of one that means something as a whole, no part of it. */
function phrasesAt(words: readonly string[], from: number, known: Vocabulary): readonly Phrase[] {
  const all = Array.from({ length: Math.min(longestPhrase, words.length - from) }, (_, i) => {
    const phrase = words.slice(from, from + i + 1).join(' ');
    return { length: i + 1, phrase, senses: known.get(phrase) ?? [] };
  });
  const asOne = all.filter(({ senses }) => senses.some((sense) => sense.asOne));
  return asOne.length > 0 ? asOne : all;
}

/** Both together, or none when they contradict; a single letter must add something new. */
function merge(meaning: LabelMeaning, sense: Sense, letter: boolean): LabelMeaning | undefined {
  const part = mergePart(meaning.part, sense.part);
  if (part === null) return undefined;
  for (const key of ['end', 'side', 'kerb'] as const) {
    const before = meaning[key];
    const added = sense[key];
    if (before !== undefined && added !== undefined && (before !== added || letter))
      return undefined;
  }
  const sideLetter = meaning.sideLetter ?? (letter && sense.side !== undefined);
  if (sideLetter && (meaning.kerb ?? sense.kerb) !== undefined) return undefined;
  return {
    ...meaning,
    ...sense,
    ...(part === undefined ? {} : { part }),
    ...(sideLetter ? { sideLetter } : {}),
  };
}

/** Null when one thing cannot be both. `boot / tailgate` is one thing, whichever the vehicle has. */
function mergePart(a: Part | undefined, b: Part | undefined): Part | undefined | null {
  if (a === undefined || b === undefined || a === b) return a ?? b;
  const both = new Set<Part>([a, b]);
  both.delete('boot');
  both.delete('tailgate');
  both.delete('closure');
  return both.size === 0 ? 'closure' : null;
}

/** The rear wing is the quarter, a front quarter is the wing, and most parts are at one end only. */
function settle(meaning: LabelMeaning): readonly LabelMeaning[] {
  if (meaning.sideWord && meaning.side === undefined && meaning.kerb === undefined) return [];
  const { end } = meaning;
  let { part } = meaning;
  if (part === undefined) return [meaning];
  if (part === 'wing' && end === 'rear') part = 'quarter';
  else if (part === 'quarter' && end === 'front') part = 'wing';
  // The doors across the back are one panel of both leaves; with a side it is a door of the side.
  if (part === 'rear-doors' && (meaning.side ?? meaning.kerb) !== undefined) return [];
  const home = endOfPart.get(part) ?? end;
  if (end !== undefined && end !== home) return [];
  return [{ ...meaning, part, ...(home === undefined ? {} : { end: home }) }];
}
