import { once } from '../../base/kept.ts';

/** One key for all spellings of a word: case, accents, points, blanks and hyphens apart. */
export const wordKey = (text: string): string =>
  text
    .toLowerCase()
    .replace(/ß/gu, 'ss')
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}#]/gu, '');

/** A list of words to ask for keys. */
export type WordKeys = { readonly has: (key: string) => boolean };

/** The keys of a list of words, separated by line ends or commas; made when the first is asked for. */
export function wordKeys(...lists: readonly string[]): WordKeys {
  const keys = once(
    () =>
      new Set(
        lists.flatMap((list) => list.split(/[,\n]+/u).map(wordKey)).filter((key) => key !== ''),
      ),
  );
  return { has: (key) => keys().has(key) };
}
