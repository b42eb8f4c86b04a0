/** Columns that stand for another role than their name says, held against what their cells hold. */

import { roleOfKey } from '../beside/sayings.ts';
import type { Findings } from '../findings.ts';
import { isBorrowedPanel } from '../header/borrowed-roles.ts';
import { cellText } from '../rows/row.ts';
import { isStatistic } from '../statistics/statistic-words.ts';
import { placeOf, type Table } from '../tables/table.ts';

/** Refuses a column whose cells are not what its borrowed role would have them. */
export function checkBorrowed(
  table: Table,
  isPanel: (label: string) => boolean,
  findings: Findings,
): void {
  const { layout, rows } = table;
  const panelAt = layout.columns.get('panel');
  const label = layout.header[panelAt ?? -1]?.label ?? '';
  if (panelAt !== undefined && isBorrowedPanel(label)) {
    tellFirst(table, panelAt, (text) => !isPanel(text), findings, {
      why: (text) => `"${text}" in the column "${label}" is no known panel`,
      hint: 'call the column that names the panels "panel"',
    });
  }
  const corner = layout.header[0];
  if (layout.kind !== 'wide' || corner?.role !== 'point' || roleOfKey(corner.label) !== 'panel')
    return;
  if (rows.length === 0) return;
  tellFirst(table, 0, (text) => !/\d/u.test(text) || isPanel(text), findings, {
    why: (text) => `"${text}" is no number of a row, and the other columns are panels already`,
    hint: 'name each panel once: in a column of its own, or in the first cell of its row',
  });
}

function tellFirst(
  table: Table,
  column: number,
  isWrong: (text: string) => boolean,
  findings: Findings,
  { why, hint }: { readonly why: (text: string) => string; readonly hint: string },
): void {
  const row = table.rows.find((one) => {
    const text = cellText(one, column);
    return text !== '' && !isStatistic(text) && isWrong(text);
  });
  if (row === undefined) return;
  findings.add('error', 'column-missing', () => ({
    message: why(cellText(row, column)),
    at: placeOf(table, row, column),
    hint,
  }));
}
