/**
 * Rows that all have fewer cells than the header names columns, where a column of something else stands between those
 * of readings: which cell is missing nobody can tell, and a temperature would be read as paint.
 */
import type { Findings } from '../findings.ts';
import { placeOf, type Table, widest } from '../tables/table.ts';

export function doubtRowsAllShort(table: Table, findings: Findings): void {
  const { layout, rows } = table;
  const [first] = rows;
  const columns = layout.readings.map(({ column }) => column);
  const [least = 0, most = 0] = [Math.min(...columns), Math.max(...columns)];
  if (first === undefined || columns.length < 2) return;
  const between = [...layout.header.keys()].some(
    (k) => k > least && k < most && !columns.includes(k) && layout.header[k]?.text !== '',
  );
  const width = between ? widest(rows) : 0;
  if (!between || most < width) return;
  findings.add('error', 'row-too-short', () => ({
    message: `no row has more than ${width} cells, and the header names ${layout.header.length} columns: which is missing nothing says`,
    at: placeOf(table, first, width - 1),
    hint: 'add the missing cells, or delete the name of the column that is not there',
  }));
}
