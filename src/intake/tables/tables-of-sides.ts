/** A table whose columns are called after sides → that of the whole panels, and one of each side of the others. */

import { roleOfKey } from '../beside/sayings.ts';
import { foldedText } from '../cells/doubting-words.ts';
import type { Findings } from '../findings.ts';
import type { LayoutContext, ReadingColumn } from '../header/layout-shape.ts';
import { sideOfWord } from '../header/side-words.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { placeOf, type Table } from './table.ts';

/**
 * `Left;Right;Centre` beside `Front wing`, which has no centre: on panels that are there once the columns are places, and
 * this row is of two panels.
 */
function tellHalves(
  table: Table,
  { isPanel, panelAt }: { isPanel: LayoutContext['isPanel']; panelAt: number },
  findings: Findings,
): void {
  const { readings } = table.layout;
  const places = readings.flatMap(({ column, place }) =>
    place === undefined ? [] : [{ column, place, side: sideOfWord(foldedText(place)) }],
  );
  const sides = places.filter(({ side }) => side !== undefined);
  if (new Set(sides.map(({ side }) => side)).size < 2) return;
  const others = places.filter(({ side }) => side === undefined);
  const halves = table.rows.filter((row) => {
    const name = cellText(row, panelAt);
    const areSides = sides.every(({ place }) => isPanel(`${name} ${place}`));
    const isEmpty = ({ column }: { column: number }): boolean => cellText(row, column) === '';
    return areSides && !sides.some(isEmpty) && others.every(isEmpty);
  });
  for (const row of halves) tellBoth(table, row, panelAt, findings);
}

function tellBoth(table: Table, row: Row, panelAt: number, findings: Findings): void {
  findings.add('error', 'panel-ambiguous', () => ({
    message: `"${cellText(row, panelAt)}" stands beside columns for left and right, which may be two panels or two places on one`,
    at: placeOf(table, row, panelAt),
    hint: 'name the side with the panel, in a row of its own',
  }));
}

/** The tables of whole panels, and of the panels of either side. */
export function tablesOfSides(
  table: Table,
  { isPanel, mayBePanel }: LayoutContext,
  findings: Findings,
): readonly Table[] {
  const { layout, rows } = table;
  const panelAt = layout.columns.get('panel');
  const sides = [...new Set(layout.readings.flatMap(({ side }) => side?.text ?? []))];
  if (panelAt === undefined) return [table];
  if (sides.length === 0) {
    tellHalves(table, { isPanel, panelAt }, findings);
    return [table];
  }
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
    tellBoth(table, unknown, panelAt, findings);
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
