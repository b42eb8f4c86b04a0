/**
 * A column of units that is not called one: `U`, `Mas.`, `Dim`, known by its cells.
 *
 * It stands right behind the readings, for further on it may be that of a limit. Every filled cell of it is a
 * unit of thickness, and the table has no column of units else. `U` is the place of a point across its panel
 * where it holds numbers.
 */
import { unitNamed } from '../cells/unit.ts';
import type { Layout } from '../header/layout.ts';
import { columnTexts } from '../rows/column-texts.ts';
import type { Table } from '../tables/table.ts';

export function adoptUnitColumn(table: Table): Table {
  const { layout, rows } = table;
  const column = mayHoldUnits(layout);
  const cell = layout.header[column ?? -1];
  if (column === undefined || cell === undefined) return table;
  if (!holdsUnits(rows, column, cell.text !== '')) return table;
  const columns = new Map(layout.columns);
  if (cell.role !== undefined) columns.delete(cell.role);
  columns.set('unit', column);
  const header = layout.header.with(column, { ...cell, role: 'unit' });
  const unknown = layout.unknown.filter((k) => k !== column);
  return { ...table, layout: { ...layout, header, columns, unknown } };
}

/** The column where units stand that no name calls so, if the table has no other. */
export function mayHoldUnits({ columns, header, readings }: Layout): number | undefined {
  if (columns.has('unit') || header.length === 0) return undefined;
  const column = (readings.at(-1)?.column ?? -1) + 1;
  const { text = '', role } = header[column] ?? {};
  const isNamed = text !== '' || header[column] !== undefined;
  return isNamed && (role === undefined || role === 'u') ? column : undefined;
}

/** Under no name every row has one: a `mil` in a single row may be a remark. */
function holdsUnits(rows: Table['rows'], column: number, isNamed: boolean): boolean {
  const texts = [...columnTexts(rows, column).keys()].filter((text) => text !== '' || !isNamed);
  return texts.length > 0 && texts.every((text) => unitNamed(text) !== undefined);
}
