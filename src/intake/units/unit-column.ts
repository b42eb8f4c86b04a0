/**
 * A column of units that is not called one: `U`, `Mas.`, `Dim`, known by its cells.
 *
 * It stands right behind the readings, for further on it may be that of a limit. Every filled cell of it is a
 * unit of thickness, and the table has no column of units else. `U` is the place of a point across its panel
 * where it holds numbers.
 */
import { unitNamed } from '../cells/unit.ts';
import { columnTexts } from '../rows/column-texts.ts';
import type { Table } from '../tables/table.ts';

export function adoptUnitColumn(table: Table): Table {
  const { layout, rows } = table;
  if (layout.columns.has('unit') || layout.header.length === 0) return table;
  const column = (layout.readings.at(-1)?.column ?? -1) + 1;
  const cell = layout.header[column];
  const free = cell !== undefined && (cell.role === undefined || cell.role === 'u');
  if (cell === undefined || !free || cell.text === '' || !holdsUnits(rows, column)) return table;
  const columns = new Map(layout.columns);
  if (cell.role !== undefined) columns.delete(cell.role);
  columns.set('unit', column);
  const header = layout.header.with(column, { ...cell, role: 'unit' });
  const unknown = layout.unknown.filter((k) => k !== column);
  return { ...table, layout: { ...layout, header, columns, unknown } };
}

function holdsUnits(rows: Table['rows'], column: number): boolean {
  const texts = [...columnTexts(rows, column).keys()].filter((text) => text !== '');
  return texts.length > 0 && texts.every((text) => unitNamed(text) !== undefined);
}
