/** Words in a column of states that say neither that a reading counts nor that it does not. */

import { stateMeansDeleted } from '../cells/words.ts';
import type { Findings } from '../findings.ts';
import { placeOf, type Table } from '../tables/table.ts';

/** What the column says is lost on the reader: that is told, with the first such word. */
export function tellUnknownStates(tables: readonly Table[], findings: Findings): void {
  for (const table of tables) {
    const column = table.layout.columns.get('status');
    if (column === undefined) continue;
    const row = table.rows.find(({ cells }) => {
      const text = (cells[column] ?? '').trim();
      return text !== '' && stateMeansDeleted(text) === undefined;
    });
    if (row === undefined) continue;
    const heading = table.layout.header[column]?.text ?? '';
    const word = (row.cells[column] ?? '').trim();
    findings.add('warning', 'column-unknown', () => ({
      message: `column "${heading}" is not read: "${word}" says nothing of whether a reading counts`,
      at: placeOf(table, row, column),
      hint: 'if it parts the readings, before and after a polish say, give each part a file',
    }));
  }
}
