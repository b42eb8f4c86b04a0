/**
 * `引擎盖(µm)`, `Bonnet [µm]`: the unit of the readings behind the name of each panel. It is taken off the names
 * where every one has the same and most name a panel without it, and holds as one above the column of panels does.
 * A word of statistics among them needs none.
 */

import { hasLetter } from '../../base/letters.ts';
import { splitUnit } from '../cells/unit.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import type { Table } from '../tables/table.ts';

export function takeUnitsBehindPanels(
  table: Table,
  isPanel: (label: string) => boolean,
): { readonly table: Table; readonly evidence: string } | undefined {
  const { layout, rows } = table;
  const column = layout.columns.get('panel');
  const cell = column === undefined ? undefined : layout.header[column];
  if (column === undefined || cell === undefined || cell.unit !== undefined) return undefined;
  // Told by the first row, for rows are many.
  if (splitUnit((rows[0]?.cells[column] ?? '').trim()).unit === undefined) return undefined;
  const texts = [...columnTexts(rows, column).keys()];
  const names = new Map(
    texts.filter((text) => !namesStatistic(text)).map((text) => [text, splitUnit(text)] as const),
  );
  const [first] = names.values();
  if (first?.unit === undefined) return undefined;
  const { unit, unitText } = first;
  const labels = [...names.values()].map(({ label }) => label);
  const alike = [...names.values()].every((own) => own.unit === unit);
  const known = labels.filter(isPanel).length;
  if (!alike || known * 2 < labels.length || !labels.every((text) => hasLetter(text))) {
    return undefined;
  }
  const named = rows.map((row) => {
    const label = names.get(cellText(row, column))?.label;
    return label === undefined ? row : { ...row, cells: row.cells.with(column, label) };
  });
  const ofUnit = { ...cell, unit, ...(unitText === undefined ? {} : { unitText }) };
  const header = layout.header.with(column, ofUnit);
  return {
    table: { ...table, rows: named, layout: { ...layout, header } },
    evidence: `${unitText ?? unit} behind each panel is the unit of its readings`,
  };
}
