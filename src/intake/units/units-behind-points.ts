/**
 * `P1 (µm)`, `P2 (µm)` down the rows: the unit of the readings behind the name of each point. It is taken off the
 * names where every one has the same, µm or mil, and holds as one above their column does. A word of statistics among
 * them needs none. A first column without a name, beside columns of panels, is then that of the points.
 */

import { splitUnit } from '../cells/unit.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import type { HeaderCell } from '../header/header.ts';
import type { Layout } from '../header/layout.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import type { Table } from '../tables/table.ts';

export function takeUnitsBehindPoints(
  table: Table,
): { readonly table: Table; readonly evidence: readonly string[] } | undefined {
  const { layout, rows } = table;
  const column = pointsOf(layout);
  const cell = layout.header[column];
  if (cell === undefined || cell.unit !== undefined) return undefined;
  // Told by the first row, for rows are many.
  if (splitUnit((rows[0]?.cells[column] ?? '').trim()).unit === undefined) return undefined;
  const texts = [...columnTexts(rows, column).keys()];
  const names = new Map(
    texts.filter((text) => !namesStatistic(text)).map((text) => [text, splitUnit(text)] as const),
  );
  const own = [...names.values()];
  const [{ unit, unitText = '' } = { unit: undefined }] = own;
  const alike = own.every((one) => one.unit === unit && one.label !== '');
  if ((unit !== 'um' && unit !== 'mil') || !alike || own.length < 2) return undefined;
  const named = rows.map((row) => {
    const label = names.get(cellText(row, column))?.label;
    return label === undefined ? row : { ...row, cells: row.cells.with(column, label) };
  });
  return {
    table: { ...table, rows: named, layout: asPoints(layout, column, { ...cell, unit, unitText }) },
    evidence: [],
  };
}

/** The column of points, or the first one beside panels that no name tells. */
function pointsOf({ columns, kind, header, readings }: Layout): number {
  const isNameless = kind === 'wide' && header[0]?.text === '' && readings[0]?.column !== 0;
  return columns.get('point') ?? (isNameless ? 0 : -1);
}

const asPoints = (layout: Layout, column: number, cell: HeaderCell<GaugeRole>): Layout => ({
  ...layout,
  header: layout.header.with(column, { ...cell, role: 'point' }),
  columns: new Map(layout.columns).set('point', column),
});
