/**
 * What the names of columns mean: a role for each header cell, whatever synonym or unit it carries.
 */
import { closest } from '../base/did-you-mean.ts';
import { type LabelledUnit, splitUnit } from './unit.ts';

/** A role's synonyms; the role's own name is always one. */
export type Vocabulary<Role extends string> = Readonly<Record<Role, readonly string[]>>;

export const gaugeVocabulary = {
  panel: ['panel name', 'part', 'body part', 'area', 'location'],
  point: ['points', 'spot', 'position', 'point no', 'measuring point'],
  reading: [
    'readings',
    'thickness',
    'film thickness',
    'paint thickness',
    'coating thickness',
    'dry film thickness',
    'value',
    'dft',
    'film',
    'measurement',
  ],
  repeat: ['no', 'nr', 'number', 'reading no', 'repeat no'],
  vehicle: ['car', 'vin', 'reg', 'registration', 'vehicle id', 'car id'],
  operator: ['user', 'inspector', 'trainee', 'student', 'measured by'],
  time: ['date', 'date time', 'datetime', 'timestamp', 'measured at'],
  substrate: ['material', 'metal', 'base material'],
  layer: ['coat'],
  unit: ['units'],
  u: [],
  v: [],
  note: ['notes', 'comment', 'comments', 'remark', 'remarks'],
  place: [],
  marked: ['mark'],
  curved: ['curve'],
} as const satisfies Vocabulary<string>;
export type GaugeRole = keyof typeof gaugeVocabulary;

export const defectVocabulary = {
  panel: ['panel name', 'part', 'body part', 'area', 'location'],
  defect: ['defects', 'damage', 'fault'],
  grade: ['rating', 'severity'],
  extent: ['spread', 'coverage'],
  depth: [],
  note: ['notes', 'comment', 'comments', 'remark', 'remarks'],
} as const satisfies Vocabulary<string>;
export type DefectRole = keyof typeof defectVocabulary;

export type HeaderCell<Role extends string> = LabelledUnit & {
  readonly text: string;
  readonly role?: Role;
};

/** `Film_Thickness.` → `film thickness`, as the vocabulary writes it. */
const plainWords = (label: string): string =>
  label
    .toLowerCase()
    .replace(/[_\-./:\s]+/gu, ' ')
    .trim();

export function headerReader<Role extends string>(
  vocabulary: Vocabulary<Role>,
): (cell: string) => HeaderCell<Role> {
  const roles = new Map<string, Role>();
  for (const role of Object.keys(vocabulary) as Role[]) {
    for (const name of [role, ...vocabulary[role]]) roles.set(name, role);
  }
  return (cell) => {
    const text = cell.trim();
    const split = splitUnit(text);
    const role = roles.get(plainWords(split.label)) ?? roles.get(plainWords(text));
    return { ...split, text, ...(role === undefined ? {} : { role }) };
  };
}

/** The header cell closest to one of a role's names, for a hint. */
export function misspelling<Role extends string>(
  vocabulary: Vocabulary<Role>,
  role: Role,
  header: readonly HeaderCell<Role>[],
): { readonly column: number; readonly name: string } | undefined {
  const names = [role, ...vocabulary[role]].filter((name) => name.length > 2);
  for (const [column, cell] of header.entries()) {
    if (cell.role !== undefined || cell.text === '') continue;
    const name = closest(plainWords(cell.label), names);
    if (name !== undefined) return { column, name };
  }
  return undefined;
}
