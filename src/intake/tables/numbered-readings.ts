/** What the numbers of several columns of readings count: points of a panel, or repeats of a point. */

import type { SettledTable } from '../readings/readings.ts';
import { cellText } from '../rows/row.ts';
import type { Table } from './table.ts';

/** Whether a table with numbered columns has several rows of one panel, and no point to tell them by. */
export function pointsInRows({ layout, rows, given }: Table): boolean {
  const { columns, kind, series } = layout;
  if (kind !== 'repeats' || series === 'point' || columns.has('point') || given.point !== null)
    return false;
  const [panelAt = -1, vehicleAt = -1, layerAt = -1] = (['panel', 'vehicle', 'layer'] as const).map(
    (role) => columns.get(role),
  );
  const seen = new Set<string>();
  return rows.some((row) => {
    const key = [vehicleAt, panelAt, layerAt].map((k) => cellText(row, k)).join('\0');
    const again = seen.has(key);
    seen.add(key);
    return again;
  });
}

function hasRowsAgain({ layout, rows }: Table): boolean {
  const panelAt = layout.columns.get('panel') ?? -1;
  const vehicleAt = layout.columns.get('vehicle') ?? -1;
  const names = rows.map(
    ({ cells }) => `${cells[vehicleAt] ?? ''}\0${(cells[panelAt] ?? '').trim()}`,
  );
  return new Set(names).size < names.length;
}

/** Whether the columns are the points of the panel that their row names, each called after its place. */
export const placesArePoints = (table: Table): boolean =>
  table.layout.readings.some(({ place }) => place !== undefined) &&
  !table.layout.columns.has('point') &&
  table.given.point === null &&
  !hasRowsAgain(table);

/** What numbered columns were taken for. */
export function numberedSentence({ table, rowsArePoints }: SettledTable): readonly string[] {
  const { kind, series, columns, readings } = table.layout;
  if (readings.length < 2 || (kind === 'wide' && series !== 'point')) return [];
  const what = `${readings.length} columns of readings are`;
  if (series === 'point') return [`${what} points, as their names say`];
  if (columns.has('point') || table.given.point !== null)
    return [`${what} repeats of the row’s point`];
  if (placesArePoints(table)) return [`${what} points, each called after its place`];
  return [
    rowsArePoints
      ? `several rows name one panel: each row is a point, and ${what} repeats there`
      : hasRowsAgain(table)
        ? `${what} further points of the row’s panel, counted on where it has several rows`
        : `each panel has one row: ${what} points 1 to ${readings.length}`,
  ];
}
