/**
 * Columns of sides beside panels that have none in their names: `Front door;Left`, `Door;L;F`. Name and sides
 * together are the panel, where every such name is one that is known; else the doubt stays
 * (`side-columns.ts`).
 */
import { foldedText } from '../cells/doubting-words.ts';
import type { Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { plainWords } from './header.ts';
import type { Table } from './table.ts';

const words = (text: string): ReadonlySet<string> => new Set(text.split('|'));
/** Of columns that tell left from right, and of those that tell front from rear. */
const leftOrRight = words(
  'side|sides|hand|l r|r l|lh rh|left right|seite|links rechts|li re|cote|lado|lato|zijde|kant|strona|sida|side l r|сторона',
);
const frontOrRear = words(
  'f r|front rear|end|axle|v h|vorne hinten|vo hi|av ar|achse|position f r',
);

const sideWords: ReadonlyMap<string, string> = new Map(
  (
    [
      ['left', 'l|lh|lhs|left|links|li|gauche|g|izquierda|izq|sinistra|sx|linker|lewa|vanster'],
      ['right', 'r|rh|rhs|right|rechts|re|droite|d|derecha|der|destra|dx|prawa|hoger'],
    ] as const
  ).flatMap(([side, list]) => list.split('|').map((word) => [word, side] as const)),
);
const endWords: ReadonlyMap<string, string> = new Map(
  (
    [
      ['front', 'f|front|v|vorne|vorn|vo|av|avant'],
      ['rear', 'r|rear|back|h|hinten|hi|ar|arriere'],
    ] as const
  ).flatMap(([end, list]) => list.split('|').map((word) => [word, end] as const)),
);

/** The side that a cell of such a column names. */
export const sideIn = (label: string, text: string): string | undefined =>
  leftOrRight.has(plainWords(label)) ? sideWords.get(foldedText(text.trim())) : undefined;

/** The side that a panel's own name says in a word that means nothing else. */
export const sideNamed = (name: string): string | undefined =>
  foldedText(name)
    .split(/[^\p{L}]+/u)
    .filter(({ length }) => length > 3)
    .map((word) => sideWords.get(word))
    .find((side) => side !== undefined);

/** What a cell under such a heading says: `left`, `rear`; '' where it is blank or another word. */
const wordsOf = (label: string): ReadonlyMap<string, string> | undefined =>
  leftOrRight.has(plainWords(label))
    ? sideWords
    : frontOrRear.has(plainWords(label))
      ? endWords
      : undefined;

export function joinSides(
  table: Table,
  isPanel: (label: string) => boolean,
): { readonly table: Table; readonly evidence: string } | undefined {
  const { layout } = table;
  const panelAt = layout.columns.get('panel');
  const found = layout.unknown.flatMap((column) => {
    const said = wordsOf(layout.header[column]?.label ?? '');
    return said === undefined ? [] : [{ column, said }];
  });
  if (panelAt === undefined || found.length === 0) return undefined;
  const nameIn = ({ cells }: Row): string => {
    const sides = found.map(({ column, said }) =>
      said.get(foldedText((cells[column] ?? '').trim())),
    );
    return [...sides.toReversed(), (cells[panelAt] ?? '').trim()]
      .filter((part) => part !== undefined && part !== '')
      .join(' ');
  };
  const isReading = ({ cells }: Row): boolean => !namesStatistic((cells[panelAt] ?? '').trim());
  const own = table.rows.filter(isReading);
  // Under a merged name the side may change; a name that has its side needs none.
  const isWhole = (name: string): boolean => name !== '' && sideNamed(name) === undefined;
  if (!own.every(({ cells }) => isWhole((cells[panelAt] ?? '').trim()))) return undefined;
  if (![...new Set(own.map(nameIn))].every(isPanel)) return undefined;
  const rows = table.rows.map((row) =>
    isReading(row) ? { ...row, cells: row.cells.with(panelAt, nameIn(row)), quoted: true } : row,
  );
  const columns = new Set(found.map(({ column }) => column));
  const unknown = layout.unknown.filter((column) => !columns.has(column));
  const called = [...columns]
    .map((column) => `"${layout.header[column]?.text ?? ''}"`)
    .join(' and ');
  return {
    table: { ...table, rows, layout: { ...layout, unknown } },
    evidence: `${called} and the panel’s name together say which panel a row is of`,
  };
}
