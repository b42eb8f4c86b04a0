/**
 * What the names of columns mean: a role for each header cell, whatever synonym or unit it carries.
 */

import { closest } from '../../base/did-you-mean.ts';
import { keptWith, once, remembered } from '../../base/kept.ts';
import { withoutMarks } from '../../base/letters.ts';
import { type LabelledUnit, splitUnit } from '../cells/unit.ts';
import { wordsIn } from '../cells/word-list.ts';

/** A role's synonyms, parted by `|`; the role's own name is always one. */
export type Vocabulary<Role extends string> = Readonly<Record<Role, string>>;

export const defectVocabulary = {
  panel: 'panel name|part|body part|area|location',
  defect: 'defects|damage|fault',
  grade: 'rating|severity',
  extent: 'spread|coverage',
  depth: '',
  note: 'notes|comment|comments|remark|remarks',
} as const satisfies Vocabulary<string>;
export type DefectRole = keyof typeof defectVocabulary;

export type HeaderCell<Role extends string> = LabelledUnit & {
  readonly text: string;
  readonly role?: Role;
};

/** The same column, if its name means nothing. */
export function withoutRole<Role extends string>({
  role: _,
  ...rest
}: HeaderCell<Role>): HeaderCell<Role> {
  return rest;
}

/** Letters that no decomposition takes apart. */
const folded: Readonly<Record<string, string>> = {
  ł: 'l',
  ø: 'o',
  æ: 'ae',
  ß: 'ss',
  đ: 'd',
  ı: 'i',
};

const isPlain = /^[a-z\d]+(?: [a-z\d]+)*$/u;

/** `Film_Thickness.` → `film thickness`, `Épaisseur` → `epaisseur`: as names are compared. */
export const plainWords = (label: string): string =>
  isPlain.test(label) ? label : foldedWords(label);

const foldedWords = (label: string): string =>
  /^\s*(?:n\s*°|#)\s*$/iu.test(label) ? 'no' : foldedLabel(label);

const foldedLabel = (label: string): string =>
  withoutMarks(label.normalize('NFKD').toLowerCase())
    .replace(/[łøæßđı]/gu, (letter) => folded[letter] ?? letter)
    .replace(/[_\-./:\s°º]+/gu, ' ')
    .trim();

/** Names parted by `|`, each by its plain words; they are folded together, for one by one it takes long. */
const plainWordsIn = (list: string): readonly string[] => wordsIn(foldedWords(list));

/** Names of columns, to be asked for one in plain words. */
export type PlainNames = { readonly has: (words: string) => boolean };

/** Of a list whose names are parted by `|`; made when it is first asked. */
export function plainNames(list: string): PlainNames {
  const names = once((): ReadonlySet<string> => new Set(plainWordsIn(list)));
  return { has: (words) => names().has(words) };
}

/** The role a name stands for; few files name each by its own, and need no table of the others. */
export const roleReader =
  <Role extends string>(vocabulary: Vocabulary<Role>) =>
  (name: string): Role | undefined => {
    const words = plainWords(name);
    const role = Object.hasOwn(vocabulary, words) ? words : rolesByName(vocabulary).get(words);
    return role as Role | undefined;
  };

const rolesByName = keptWith((vocabulary: Vocabulary<string>): ReadonlyMap<string, string> => {
  const roles = new Map<string, string>();
  for (const [role, names] of Object.entries(vocabulary)) {
    for (const name of plainWordsIn(`${role}|${names}`)) roles.set(name, role);
  }
  roles.delete('');
  return roles;
});

export function headerReader<Role extends string>(
  vocabulary: Vocabulary<Role>,
): (cell: string) => HeaderCell<Role> {
  const roleOf = roleReader(vocabulary);
  return remembered((cell) => {
    const text = cell.trim();
    const split = splitHeader(text);
    const role = roleOf(split.label) ?? roleOf(text) ?? roleInBoth(split.label, roleOf);
    return { ...split, text, ...(role === undefined ? {} : { role }) };
  });
}

/** `Bauteil / Panel`: one name in two languages, where both mean the same. */
function roleInBoth<Role>(
  label: string,
  roleOf: (name: string) => Role | undefined,
): Role | undefined {
  const [role, ...others] = label.split(/\s*\/\s*/u).map(roleOf);
  return others.length > 0 && others.every((other) => other === role) ? role : undefined;
}

/** The unit may stand in the wide brackets of an East Asian keyboard. */
function splitHeader(text: string): LabelledUnit {
  const split = splitUnit(text);
  return split.unit === undefined ? { ...splitUnit(text.normalize('NFKC')) } : split;
}

/**
 * The header cell closest to one of a role's names, for a hint: to an English one (`plain`, where a vocabulary has
 * others), or, where the other names are not all English, to any that begins with the same letter.
 */
export function misspelling<Role extends string>(
  vocabulary: Vocabulary<Role>,
  role: Role,
  header: readonly HeaderCell<Role>[],
  plain: Partial<Vocabulary<Role>> = vocabulary,
): { readonly column: number; readonly name: string } | undefined {
  const own = namesOf(plain[role] ?? vocabulary[role], role);
  const all = isInPlain(header, plain) ? [] : namesOf(vocabulary[role], role);
  for (const [column, cell] of header.entries()) {
    if (cell.role !== undefined || cell.text === '') continue;
    const words = plainWords(cell.label);
    // A short word is near to some word of any language.
    const alike = words.length < 5 ? [] : all.filter((name) => name[0] === words[0]);
    const name = closest(words, [...own, ...alike]);
    if (name !== undefined) return { column, name };
  }
  return undefined;
}

const namesOf = (names: string, role: string): readonly string[] =>
  wordsIn(`${role}|${names}`).filter((name) => name.length > 2);

/** Whether a header has names that are known, and all of them are plain ones. */
function isInPlain<Role extends string>(
  header: readonly HeaderCell<Role>[],
  plain: Partial<Vocabulary<Role>>,
): boolean {
  const known = header.flatMap(({ role, label }) => {
    const names = role === undefined ? undefined : plain[role];
    return names === undefined ? [] : [wordsIn(`${role}|${names}`).includes(plainWords(label))];
  });
  return known.length > 0 && known.every((is) => is);
}
