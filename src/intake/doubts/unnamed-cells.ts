/**
 * Words and marks in a column whose heading is empty: `deleted`, `x`, `?`, `mil`. No name says what they
 * mean, so the reading beside them is kept, and told. One and the same text in every row parts none from the
 * others; numbers in such a column are asked about elsewhere (`layout-questions.ts`).
 */

import { numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import { placeOf, type Table } from '../tables/table.ts';

export function tellUnnamedCells(table: Table, findings: Findings): void {
  for (const column of unnamedColumns(table)) {
    if (columnTexts(table.rows, column).size < 2) continue;
    for (const row of table.rows) {
      const text = cellText(row, column);
      if (text === '' || numberShape(text) !== undefined) continue;
      findings.add('warning', 'reading-doubted', () => ({
        message: `the reading is kept, and "${text}" beside it, under no name, may say otherwise`,
        at: placeOf(table, row, column),
        hint: 'if it does not count, take the row out; else name the column: note',
      }));
    }
  }
}

function unnamedColumns({ layout }: Table): readonly number[] {
  const read = new Set([...layout.columns.values(), ...layout.readings.map((one) => one.column)]);
  return [...layout.header.entries()].flatMap(([column, { text, unit, role }]) =>
    text === '' && unit === undefined && role === undefined && !read.has(column) ? [column] : [],
  );
}
