/**
 * Readings written with a power of ten and one or two digits, `1E+02`: a spreadsheet shows numbers so in
 * a narrow column, and the digits that it hides are not in the file.
 */

import type { Findings } from '../findings.ts';
import { someText } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import { placeOf, type Table } from '../tables/table.ts';

const rounded = /^\d(?:[.,]\d)?[eE]\+?0*[1-4]$/u;

export function tellLostDigits(table: Table, findings: Findings): void {
  const { layout, rows } = table;
  const columns = layout.readings.filter(({ column }) =>
    someText(rows, column, (text) => rounded.test(text)),
  );
  if (columns.length === 0) return;
  for (const row of rows) {
    for (const { column } of columns) {
      const text = cellText(row, column);
      if (!rounded.test(text)) continue;
      findings.add('warning', 'reading-doubted', () => ({
        message: `"${text}" may have lost digits: a narrow column of a spreadsheet shows numbers so`,
        at: placeOf(table, row, column),
        hint: 'make the column a plain number with one decimal, and export the file anew',
      }));
    }
  }
}
