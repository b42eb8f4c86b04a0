/** Lists of words as the vocabularies write them: one text, its words parted by `|`. */

export const wordsIn = (list: string): readonly string[] =>
  list.split('|').map((word) => word.trim());

/** Each word of several lists with the meaning of its list. */
export const meaningOfWords = (
  lists: Readonly<Record<string, string>>,
): ReadonlyMap<string, string> =>
  new Map(
    Object.entries(lists).flatMap(([meaning, list]) =>
      wordsIn(list).map((word) => [word, meaning] as const),
    ),
  );
