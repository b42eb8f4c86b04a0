/**
 * A row without a point among rows that name theirs: `Bonnet;;120` below `Bonnet;1;112`. It may be one more reading, or
 * a limit, a usual value, the film of another year; what is a mean, its value says. It is read, and told.
 */
import type { Findings } from '../findings.ts';
import type { Grid } from '../readings/number-grid.ts';
import { placeOf } from '../tables/table.ts';

/** Of more rows without a point than this share the points are those that a merged cell stands for, or nothing. */
const SELDOM = 1 / 3;

export function tellRowsWithoutPoint(grids: readonly Grid[], findings: Findings): void {
  const cells = grids.flatMap(({ rows }) => rows.flat()).flatMap((cell) => cell ?? []);
  const own = cells.filter(({ isPointless, point }) => isPointless && point === '');
  const [first] = own;
  if (first === undefined || own.length > cells.length * SELDOM) return;
  if (findings.list().some(({ code }) => code === 'statistics-unnamed')) return;
  const more = own.length === 1 ? '' : `; so it is with ${own.length - 1} more`;
  findings.add('warning', 'reading-doubted', () => ({
    message: `the row names no point, as others do, and its number is read as a further reading${more}`,
    at: placeOf(first.table, first.row, first.column),
    hint: 'if it is a limit, a usual or an earlier value, take it out; else number the point',
  }));
}
