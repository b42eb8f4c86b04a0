/**
 * Tables that stand side by side under one row of names: `Panel;Point;µm;;Panel;Point;µm`.
 *
 * The names must be the same in each, and each must be a table by itself. What stands before the first
 * panel is said of all of them, perhaps: then nothing is taken apart.
 */

import { type LayoutContext, layoutOf } from '../header/layout.ts';
import { namesInSpans, type Span, spansOf } from '../header/spans.ts';
import type { Row } from '../rows/tokens.ts';
import type { Table } from '../tables/table.ts';

/** The tables from left to right; the one table where it is no more than one. */
export function apartTables(table: Table, context: LayoutContext): readonly Table[] {
  const { header, layout } = table;
  const panels = [...layout.header.keys()].filter((k) => layout.header[k]?.role === 'panel');
  if (header === undefined || panels.length < 2 || panels[0] !== 0) return [table];
  const spans = spansOf(panels, layout.header.length);
  const names = namesInSpans(layout.header, panels);
  if (names.some((own) => own !== names[0])) return [table];
  const tables = spans.flatMap((span): readonly Table[] => {
    const own = within(header, span);
    const alone = layoutOf(own.cells, {
      ...context,
      given: () => new Map([[span.from, 'panel']]),
    });
    if (alone === undefined || alone.repeated.length > 0) return [];
    const rows = table.rows
      .map((row) => within(row, span))
      .filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
    return [{ ...table, header: own, layout: alone, rows }];
  });
  return tables.length === spans.length ? tables.filter(({ rows }) => rows.length > 0) : [table];
}

/** The row with the cells of the others empty; where its own stand is read off the text. */
const within = (row: Row, { from, to }: Span): Row => ({
  ...row,
  quoted: true,
  cells: row.cells.map((cell, k) => (k >= from && k < to ? cell : '')),
});
