/**
 * Columns of sides beside panels that have none in their names: `Front door;Left`, `Door;L;F`. Name and sides
 * together are the panel, where every such name is one that is known; else the doubt stays
 * (`side-columns.ts`).
 */

import { foldedText } from '../cells/doubting-words.ts';
import { meaningOfWords } from '../cells/word-list.ts';
import { plainNames, plainWords } from '../header/header.ts';
import { sideWords } from '../header/side-words.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import type { Table } from './table.ts';

/** Of columns that tell left from right, and of those that tell front from rear. */
const leftOrRight = plainNames(
  'side|sides|hand|l r|r l|lh rh|left right|seite|links rechts|li re|cote|lado|lato|zijde|kant|strona|sida|side l r|сторона',
);
const frontOrRear = plainNames(
  'f r|front rear|end|axle|v h|vorne hinten|vo hi|av ar|achse|position f r',
);

const endWords = meaningOfWords({
  front: 'f|front|v|vorne|vorn|vo|av|avant',
  rear: 'r|rear|back|h|hinten|hi|ar|arriere',
});

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
  const labels = mergedLabels(table.rows, panelAt);
  const nameIn = (row: Row): string => {
    const sides = found.map(({ column, said }) => said.get(foldedText(cellText(row, column))));
    return [...sides.toReversed(), labels.get(row) ?? '']
      .filter((part) => part !== undefined && part !== '')
      .join(' ');
  };
  const isReading = (row: Row): boolean => !namesStatistic(labels.get(row) ?? '');
  const own = table.rows.filter(isReading);
  // Under a merged name the side may change; a name that has its side needs none.
  const isWhole = (name: string): boolean => name !== '' && sideNamed(name) === undefined;
  if (!own.every((row) => isWhole(labels.get(row) ?? ''))) return undefined;
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

/** The name of each row; where every panel is named on the first of its rows of two sides, for the second as well. */
function mergedLabels(rows: readonly Row[], panelAt: number): ReadonlyMap<Row, string> {
  const own = rows.map((row) => cellText(row, panelAt));
  const isMerged =
    own[0] !== '' &&
    own.filter((text) => text === '').length * 2 >= own.length &&
    own.every((text, k) => text !== '' || k === 0 || own[k - 1] !== '' || own[k - 2] !== '');
  let last = '';
  return new Map(
    rows.map((row, k) => {
      const text = own[k] ?? '';
      last = text === '' ? last : text;
      return [row, isMerged ? last : text];
    }),
  );
}
