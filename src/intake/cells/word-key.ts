/** One key for all spellings of a word: case, accents, points, blanks and hyphens apart. */
export const wordKey = (text: string): string =>
  text
    .toLowerCase()
    .replace(/ß/gu, 'ss')
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}#]/gu, '');

/** The keys of a list of words, separated by line ends or commas. */
export const wordKeys = (...lists: readonly string[]): ReadonlySet<string> =>
  new Set(lists.flatMap((list) => list.split(/[,\n]+/u).map(wordKey)).filter((key) => key !== ''));
