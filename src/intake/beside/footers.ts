/**
 * Lines below the last reading that are cut into cells and are no rows: `End of export;18 records`, `Battery;76 %`,
 * `Exported;2024-03-05;10:11`.
 *
 * They stand behind a blank line, down to the end of the file. None begins with a panel, a known one or one of the
 * rows above, or with nothing; none has a number where the readings stand, nor anywhere one that may be a film.
 */

import { hasLetter } from '../../base/letters.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import { unitNamed } from '../cells/unit.ts';
import { type Layout, type LayoutContext, layoutOf } from '../header/layout.ts';
import { isDataRow, type Reader } from '../parts/section-state.ts';
import { delimiters } from '../rows/dialect.ts';
import { lineFrom } from '../rows/lines.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { aboutFile, filledCells, roleOfKey } from './sayings.ts';

/** No film reads less. */
const leastFilm = 10;
/** `roof: 111 109`: a panel and its readings in one cell. */
const readingsBehind = /^([^:=]+)[:=]\s*\d[\d\s.,;/]*(?:\s*(?:µm|um|mils?))?$/u;
/** Programs write a few lines; more are a table of their own. */
const mostLines = 20;

export function footersOf(
  rows: readonly Row[],
  layout: Layout,
  { source, context }: Pick<Reader, 'source' | 'context'>,
): ReadonlySet<Row> {
  const { isPanel } = context;
  const panelAt = layout.columns.get('panel');
  if (panelAt === undefined || rows.length < 2) return new Set();
  const ofFile = rowsAboutFile(rows, context);
  if (ofFile.length > 0) return new Set(ofFile);
  const from = rows.findLastIndex((row) => isDataRow(row, layout) && !isTimed(row, layout)) + 1;
  const below = rows.slice(from);
  const [last, first] = [rows[from - 1], below[0]];
  const isApart = last !== undefined && first !== undefined && first.line > last.line + 1;
  if (!isApart || below.length > mostLines) return new Set();
  const panels = new Set(rows.slice(0, from).map((row) => cellText(row, panelAt)));
  const isFooter = (row: Row): boolean => {
    const [column = -1] = filledCells(row);
    const text = cellText(row, column);
    const named = hasLetter(text) && !panels.has(text) && !isPanel(text);
    if (!named || namesStatistic(text) || row.cells.some(mayBeFilm)) return false;
    if (isPanel(readingsBehind.exec(text)?.[1]?.trim() ?? '')) return false;
    return !isOfOtherDialect(lineFrom(source.text, row.start), context);
  };
  return new Set(below.every(isFooterOrStatistic(isFooter)) ? below.filter(isFooter) : []);
}

/** `Serial;004417`, `Date;2026-11-03`, `Unit;µm` behind a blank line: keys of a file, down to its end. */
function rowsAboutFile(rows: readonly Row[], { isPanel }: LayoutContext): readonly Row[] {
  const isOne = (row: Row): boolean => {
    const [key = '', value, ...more] = filledCells(row).map((k) => cellText(row, k));
    if (value === undefined || more.length > 0) return false;
    const role = roleOfKey(key);
    const said = role === 'unit' || role === 'time' || role === 'operator' || aboutFile.test(key);
    return said && !isPanel(key) && !namesStatistic(key);
  };
  const from = rows.findLastIndex((row) => !isOne(row)) + 1;
  const [last, first] = [rows[from - 1], rows[from]];
  const isApart = last !== undefined && first !== undefined && first.line > last.line + 1;
  return isApart && rows.length - from <= mostLines ? rows.slice(from) : [];
}

/** A row, or the names of columns, of a table that another mark sets apart. */
const isOfOtherDialect = (line: string, context: LayoutContext): boolean =>
  delimiters.some((mark) => {
    const cells = line.split(mark).map((cell) => cell.trim());
    if (cells.length < 2) return false;
    return cells.some(context.isPanel) || layoutOf(cells, context) !== undefined;
  });

/** A mean below the rows is read as what it is. */
const isFooterOrStatistic =
  (isFooter: (row: Row) => boolean) =>
  (row: Row): boolean =>
    isFooter(row) || row.cells.some((cell) => namesStatistic(cell.trim()));

/** `10:11` begins as a number, and is none. */
const isTimed = (row: Row, { readings }: Layout): boolean =>
  readings.every(({ column }) => {
    const text = cellText(row, column);
    return text === '' || /^\d{1,2}:\d\d(?::\d\d)?$/u.test(text);
  });

function mayBeFilm(cell: string): boolean {
  const shape = numberShape(cell.trim());
  if (shape === undefined) return false;
  return (
    numberOf(shape) >= leastFilm && (shape.suffix === '' || unitNamed(shape.suffix) !== undefined)
  );
}
