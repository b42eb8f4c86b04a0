/**
 * A column of readings that counts 1, 2, 3 … on each panel, beside a column of points that holds films: the two
 * names are swapped, or the rows are. As they stand a car would read 1, 2 and 3 µm.
 */

import { groupBy } from '../../base/group-by.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';

const fewestRows = 3;
/** No panel has so many points that their numbers look like films. */
const leastFilm = 20;

export function doubtSwapped({ layout, ...table }: Table, findings: Findings): void {
  const { columns, readings, kind } = layout;
  const [pointAt, panelAt] = [columns.get('point'), columns.get('panel')];
  const [reading] = readings;
  const [first] = table.rows;
  if (kind !== 'long' || pointAt === undefined || panelAt === undefined) return;
  if (reading === undefined || first === undefined || table.rows.length < fewestRows) return;
  const numberIn = (row: Row, column: number): number => {
    const shape = numberShape(cellText(row, column));
    return shape === undefined ? Number.NaN : numberOf(shape);
  };
  // Few files get beyond their first row here.
  if (numberIn(first, reading.column) !== 1 || !(numberIn(first, pointAt) >= leastFilm)) return;
  const panels = groupBy(table.rows, (row) => cellText(row, panelAt));
  const swapped = [...panels.values()].every((rows) =>
    rows.every(
      (row, k) => numberIn(row, reading.column) === k + 1 && numberIn(row, pointAt) >= leastFilm,
    ),
  );
  if (!swapped) return;
  const called = (column: number): string => layout.header[column]?.text ?? '';
  findings.add('error', 'reading-ambiguous', () => ({
    message: `"${called(reading.column)}" counts from 1 on each panel, and "${called(pointAt)}" holds what may be its readings`,
    at: placeOf({ ...table }, first, reading.column),
    hint: 'if the two are swapped, swap their names in the header',
  }));
}
