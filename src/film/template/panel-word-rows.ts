/** Words for panels as the lists of each language write them: a row says what its words mean. */
import { remembered } from '../../base/kept.ts';
import { withoutMarks } from '../../base/letters.ts';
import type { End, Part, Sense, Side } from './panel-sense.ts';

/** A part, where one is, or both; `filler` says nothing. */
type Meaning =
  | Part
  | End
  | Side
  | DoorUser
  | 'filler'
  | `${Part} ${End | DoorUser}`
  | `${End} ${Side}`
  | `${Part} ${End} ${Side}`;

type DoorUser = 'driver' | 'passenger';

/**
 * What words mean, one thing or either of two; then the words, parted by commas. `as one` where a
 * phrase means this alone, whatever its words mean apart.
 */
export type WordRow = readonly [
  meaning: Meaning | readonly Meaning[],
  words: string,
  phrase?: 'as one',
];

/** Every word of some rows with its senses, in all its spellings. */
export const wordSenses = (
  rows: readonly WordRow[],
): readonly (readonly [string, readonly Sense[]])[] =>
  rows.flatMap(([meaning, words, phrase]) => {
    const senses = (typeof meaning === 'string' ? [meaning] : meaning)
      .map(senseOf)
      .map((sense) => (phrase === undefined ? sense : { ...sense, asOne: true as const }));
    return words
      .split(', ')
      .flatMap(plainSpellings)
      .map((word) => [word, senses] as const);
  });

/** Most languages say the same few things. */
const senseOf = remembered(
  (meaning): Sense => Object.assign({}, ...meaning.split(' ').map(saidBy)),
);

function saidBy(name: string): Sense {
  if (name === 'filler') return {};
  if (name === 'front' || name === 'rear') return { end: name };
  if (name === 'left' || name === 'right') return { side: name };
  if (name === 'driver' || name === 'passenger') return { kerb: name };
  return { part: name as Part };
}

/** As written, and as a keyboard without the letters writes it: `tür`, `tuer` and `tur`. */
export function plainSpellings(word: string): readonly string[] {
  if (/^[a-z ]*$/.test(word)) return [word];
  const unsharp = word.replaceAll('ß', 'ss');
  const twoLetters = unsharp.replace(/[äöü]/gu, (letter) => `${bare(letter)}e`);
  return [...new Set([word, unsharp, twoLetters, bare(unsharp)])];
}

const bare = (text: string): string => withoutMarks(text.normalize('NFD'));
