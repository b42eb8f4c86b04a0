/**
 * `| Panel | A | B | C |  (mil)`: a unit behind the names of the columns, in a cell of its own that stands above
 * nothing. It is the unit of all the readings, and no column.
 */

import { roleOfKey } from '../beside/sayings.ts';
import { saysAll } from '../cells/unit.ts';
import { type Layout, type LayoutContext, layoutOf, readGaugeHeader } from '../header/layout.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';

/** The layout without that cell, its unit given to the first of the readings; undefined where there is none. */
export function unitOverNothing(
  header: Row,
  below: readonly Row[],
  context: LayoutContext,
): Layout | undefined {
  const at = header.cells.findLastIndex((cell) => cell.trim() !== '');
  const [cell] = readGaugeHeader([header.cells[at] ?? '']);
  if (at < 2 || cell?.unit === undefined) return undefined;
  if (below.length === 0 || below.some((row) => cellText(row, at) !== '')) return undefined;
  if (!isForAll(cell.label)) return undefined;
  const layout = layoutOf(header.cells.with(at, ''), context);
  const [first] = layout?.readings ?? [];
  const named = layout?.header[first?.column ?? -1];
  if (layout === undefined || first === undefined || named === undefined) return undefined;
  if (layout.header.some(({ unit }) => unit !== undefined)) return undefined;
  const { unit, unitText = '' } = cell;
  const inUnit = { ...named, unit, unitText };
  return { ...layout, header: layout.header.with(first.column, inUnit) };
}

/** Nothing but the unit, or `Unit: mil`, or that it is the unit of all. */
const isForAll = (label: string): boolean =>
  label === '' || roleOfKey(label) === 'unit' || saysAll(label);
