/** A row of units under the header: `;;µm`, `[-];[-];[µm]`. */

import { isLostMicro, unitNamed } from '../cells/unit.ts';
import type { Row } from '../rows/tokens.ts';
import type { Table } from './table.ts';

const bare = (text: string | undefined): string =>
  (text ?? '').trim().replace(/^[([]\s*|\s*[)\]]$/gu, '');
const isUnit = (text: string): boolean => unitNamed(text) !== undefined || isLostMicro(text);
/** What stands under columns that have no unit. */
const noUnit = /^(?:[-–—/.]*|n\/a|text|string|name)$/iu;
/** Signs of other units, patterns of dates: a short text without digits. */
const otherUnit = /^[^\d]{0,12}$/u;

/** The table without its row of units, and that row. */
export function takeUnitsRow(table: Table): {
  readonly table: Table;
  readonly units: Row | undefined;
} {
  const [first] = table.rows;
  if (first === undefined || table.header === undefined) return { table, units: undefined };
  const texts = first.cells.map(bare);
  const known = table.layout.readings.some(({ column }) => isUnit(texts[column] ?? ''));
  const panelAt = table.layout.columns.get('panel');
  const allUnits = texts.every(
    (text, k) => isUnit(text) || (k === panelAt ? noUnit : otherUnit).test(text),
  );
  return known && allUnits
    ? { table: { ...table, rows: table.rows.slice(1) }, units: first }
    : { table, units: undefined };
}

/** The unit that a row of units gives a column. */
export const unitTextAt = (units: Row, column: number): string => bare(units.cells[column]);
