/** A table whose columns are called after sides → that of the whole panels, and one of each side of the others. */

import { roleOfKey } from '../beside/sayings.ts';
import type { Findings } from '../findings.ts';
import type { LayoutContext, ReadingColumn } from '../header/layout-shape.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { placeOf, type Table } from './table.ts';

/** The tables of whole panels, and of the panels of either side. */
export function tablesOfSides(
  table: Table,
  { isPanel, mayBePanel }: LayoutContext,
  findings: Findings,
): readonly Table[] {
  const { layout, rows } = table;
  const panelAt = layout.columns.get('panel');
  const sides = [...new Set(layout.readings.flatMap(({ side }) => side?.text ?? []))];
  if (panelAt === undefined || sides.length === 0) return [table];
  const nameOf = (row: Row): string => cellText(row, panelAt);
  // `Rear door` is a whole panel on a van, and half of two on a saloon.
  const isHalf = (name: string): boolean => sides.every((side) => isPanel(`${name} ${side}`));
  const isWhole = (row: Row): boolean => {
    const name = nameOf(row);
    return namesStatistic(name) || (isPanel(name) && !isHalf(name));
  };
  const isUnits = (row: Row): boolean => roleOfKey(nameOf(row)) === 'unit';
  const halves = rows.filter((row) => !isWhole(row) && !isUnits(row));
  const unknown = halves.find(
    (row) => !sides.every((side) => mayBePanel(`${nameOf(row)} ${side}`)),
  );
  if (unknown !== undefined) {
    findings.add('error', 'panel-ambiguous', () => ({
      message: `"${nameOf(unknown)}" stands beside columns for left and right, which may be two panels or two places on one`,
      at: placeOf(table, unknown, panelAt),
      hint: 'name the side with the panel, in a row of its own',
    }));
    return [table];
  }
  const wholes = rows.filter(isWhole);
  const whole = { ...table, rows: wholes.length === 0 ? [] : [...wholes, ...rows.filter(isUnits)] };
  const ofSides = sides.map((side): Table => {
    const own = layout.readings.filter((one) => one.side?.text === side);
    const readings = own.map(({ column, side: said }, k): ReadingColumn => {
      const number = own.length === 1 ? null : k + 1;
      const place = said?.rest ?? '';
      return { column, panel: null, number, ...(place === '' ? {} : { place }) };
    });
    const kind = own.length === 1 ? 'long' : 'repeats';
    const named = halves.map((row) => ({
      ...row,
      cells: row.cells.with(panelAt, `${nameOf(row)} ${side}`),
      quoted: true,
    }));
    return {
      ...table,
      layout: { ...layout, kind, readings },
      rows: [...named, ...rows.filter(isUnits)],
    };
  });
  return [whole, ...ofSides].filter((one) => one.rows.length > 0);
}
