/** A row of units under the header: `;;µm`, `[-];[-];[µm]`, or `(µm);;;`, one unit for all. */

import { roleOfKey } from '../beside/sayings.ts';
import { isLostMicro, unitNamed } from '../cells/unit.ts';
import type { Row } from '../rows/tokens.ts';
import type { Table } from '../tables/table.ts';

const bare = (text: string | undefined): string =>
  (text ?? '').trim().replace(/^[([]\s*|\s*[)\]]$/gu, '');
const isUnit = (text: string): boolean => unitNamed(text) !== undefined || isLostMicro(text);
/** What stands under columns that have no unit. */
const noUnit = /^(?:[-–—/.]*|n\/a|text|string|name)$/iu;
/** Signs of other units, patterns of dates: a short text without digits. */
const otherUnit = /^[^\d]{0,12}$/u;

/** The table without its row of units, and that row: the first under the header, or the last of all. */
export function takeUnitsRow(table: Table): {
  readonly table: Table;
  readonly units: Row | undefined;
} {
  const { rows, header } = table;
  const [first] = rows;
  if (first === undefined || header === undefined) return { table, units: undefined };
  if (isUnitsRow(first, table)) return { table: { ...table, rows: rows.slice(1) }, units: first };
  const last = rows.at(-1);
  return last !== undefined && rows.length > 1 && closesWithUnits(last, table)
    ? { table: { ...table, rows: rows.slice(0, -1) }, units: last }
    : { table, units: undefined };
}

function isUnitsRow({ cells }: Row, { layout }: Table): boolean {
  const texts = cells.map(bare);
  const known = layout.readings.some(({ column }) => isUnit(texts[column] ?? ''));
  const panelAt = layout.columns.get('panel');
  if (loneUnit(texts) !== undefined) return true;
  return (
    known &&
    texts.every(
      (text, k) =>
        isUnit(text) ||
        (k === panelAt ? noUnit.test(text) || roleOfKey(text) === 'unit' : otherUnit.test(text)),
    )
  );
}

/** `Unit;µm;µm;µm`: below the readings each of them has its unit, and a word says what the row is. */
function closesWithUnits({ cells }: Row, { layout }: Table): boolean {
  const texts = cells.map(bare);
  const at = new Set(layout.readings.map(({ column }) => column));
  const named = texts.filter((text, k) => !at.has(k) && text !== '');
  return (
    named.length > 0 &&
    [...at].every((column) => isUnit(texts[column] ?? '')) &&
    named.every((text) => roleOfKey(text) === 'unit')
  );
}

/** The unit of a row that holds nothing else, whichever column it stands in: it is said of all readings. */
function loneUnit(texts: readonly string[]): string | undefined {
  const [only, ...others] = texts.filter((text) => text !== '');
  return only !== undefined && others.length === 0 && isUnit(only) ? only : undefined;
}

/** The unit that a row of units gives a column, and where it stands. */
export function unitTextAt(
  { cells }: Row,
  column: number,
): { readonly text: string; readonly column: number } {
  const texts = cells.map(bare);
  const lone = loneUnit(texts);
  return lone === undefined
    ? { text: texts[column] ?? '', column }
    : { text: lone, column: texts.indexOf(lone) };
}
