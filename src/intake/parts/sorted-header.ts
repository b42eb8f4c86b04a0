/**
 * Names of columns that a spreadsheet sorted in among the rows: what stands above them are rows as well.
 *
 * Each row above has the cells of the header, a known panel and a number where its readings stand, in whatever unit the
 * rows below are in, and no point stands both above and below. Anything else above, and the file is asked about.
 */

import { stemOfLabel } from '../header/label-numbers.ts';
import type { Layout, LayoutContext } from '../header/layout.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { fitsOtherUnit, sizesOf } from '../units/size-in-units.ts';
import { isNumber } from './section-state.ts';

export const sortedHeaderSentence = (line: number): string =>
  `line ${line} names the columns amid the rows: those above it have the same columns`;

export function isSortedIn(
  rows: readonly Row[],
  header: Row,
  layout: Layout,
  { isPanel }: LayoutContext,
): boolean {
  const panelAt = layout.columns.get('panel');
  const pointAt = layout.columns.get('point');
  if (layout.kind !== 'long' || panelAt === undefined || rows[0]?.line === header.line)
    return false;
  const above = rows.filter(({ line }) => line < header.line);
  const below = rows.filter(({ line }) => line > header.line);
  const readingAt = layout.readings[0]?.column ?? -1;
  const isRow = (row: Row): boolean =>
    row.cells.length === header.cells.length &&
    isPanel(stemOfLabel(cellText(row, panelAt))) &&
    isNumber(cellText(row, readingAt));
  if (above.length === 0 || below.length === 0 || !above.every(isRow)) return false;
  const placeOf = (row: Row): string =>
    [panelAt, ...(pointAt === undefined ? [] : [pointAt])].map((k) => cellText(row, k)).join('\0');
  const places = new Set(below.map(placeOf));
  if (above.some((row) => places.has(placeOf(row)))) return false;
  const sizes = sizesOf(below.map((row) => cellText(row, readingAt)));
  const isOfOtherUnit = (row: Row): boolean =>
    sizes !== undefined &&
    (['um', 'mil'] as const).some((unit) => fitsOtherUnit(cellText(row, readingAt), unit, sizes));
  return !above.some(isOfOtherUnit);
}
