/**
 * A file that may have been cut off in its last reading: no line end stands behind it, it is the last cell of
 * its row, and it has fewer decimals than every other reading, which all have as many. A weak sign, for many
 * files end so: the reading is kept, and told.
 */
import { numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { placeOf, type Table } from '../tables/table.ts';

/** So many other readings are enough to know how many decimals the file writes. */
const fewest = 3;

export function tellCutEnd(tables: readonly Table[], findings: Findings): void {
  const table = tables.at(-1);
  const row = table?.rows.at(-1);
  if (table === undefined || row === undefined) return;
  const text = row.cells.at(-1) ?? '';
  const column = row.cells.length - 1;
  if (text === '' || !table.source.text.endsWith(text)) return;
  if (!table.layout.readings.some((one) => one.column === column)) return;
  const decimals = decimalsOf(text);
  const others = table.layout.readings
    .flatMap((one) => [...columnTexts(table.rows, one.column)])
    .flatMap(([other, { count }]) => {
      const digits = other === text ? undefined : decimalsOf(other);
      return digits === undefined ? [] : [{ digits, count }];
    });
  const [first] = others;
  const count = others.reduce((sum, one) => sum + one.count, 0);
  if (first === undefined || decimals === undefined || count < fewest) return;
  if (decimals >= first.digits || others.some(({ digits }) => digits !== first.digits)) return;
  findings.add('warning', 'reading-doubted', () => ({
    message: `the file ends within this line, and "${text}" has fewer decimals than every other reading: it may be cut off`,
    at: placeOf(table, row, column),
    hint: 'if the export is complete, nothing is to do; else export it again',
  }));
}

const decimalsOf = (text: string): number | undefined => numberShape(text.trim())?.fraction.length;
