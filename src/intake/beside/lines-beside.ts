/**
 * Lines beside the rows of a table: text that is not read, text that sets two tables apart, and
 * rows of readings that the table does not reach.
 */

import { numberDeclaredBy } from '../cells/declared-numbers.ts';
import { markerLegend } from '../cells/markers.ts';
import { splitUnit, unitNamed } from '../cells/unit.ts';
import {
  dayAlone,
  namesVisit,
  saysBeforeOrAfter,
  visitsHint,
  withoutDay,
} from '../cells/visit-words.ts';
import { type Layout, type LayoutContext, layoutOf } from '../header/layout.ts';
import { headsSide, sidesHint } from '../header/side-words.ts';
import {
  isDataRow,
  isNumber,
  namesUnit,
  type Parts,
  plain,
  type Reader,
  type State,
  sameNames,
} from '../parts/section-state.ts';
import { delimiterName, delimiters } from '../rows/dialect.ts';
import { lineFrom } from '../rows/lines.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { isStatistic, namesStatistic } from '../statistics/statistic-words.ts';
import { placeOf } from '../tables/table.ts';
import { legendIn } from './panel-legend.ts';
import { filledCells, loneText, roleOfKey, type Saying } from './sayings.ts';
import { isUnitAlone } from './unit-lines.ts';

/** A line of text after the rows that nobody would take for a row of them. */
export function isAside(
  row: Row,
  before: Row | undefined,
  next: Row | undefined,
  saying: Saying | undefined,
  { titles, asideLine, layout }: State,
  { context }: Reader,
): boolean {
  const filled = filledCells(row);
  if (namesRowsBelow(filled, next, layout)) return false;
  const text = (row.cells[filled[0] ?? 0] ?? '').trim();
  // Padded amid the rows it is a row of units; below the last of them it is said of all.
  if (isUnitAlone(row) && (row.cells.length === 1 || next === undefined)) return true;
  if (context.isPanel(text) || isStatistic(text)) return false;
  if (markerLegend([text]).size > 0 || titles.has(plain(text))) return true;
  if (isLegend(row, context)) return true;
  if (next === undefined && endOfList.test(text)) return true;
  // `[Ende]`, a section of an ini file.
  if (filled.length === 1 && section.test(text) && unitNamed(text.slice(1, -1)) === undefined)
    return true;
  if (filled.length === 1) {
    const named = saying?.key ?? text.replace(/[\s\d.,]+$/u, '');
    if (context.isPanel(named) || namesStatistic(named)) return false;
    if (saying !== undefined || /\p{L}.*\s/u.test(text)) return true;
    // One word behind a blank line, or below such a text: `Regards`, `Summary`.
    const apart = before !== undefined && (before.line === asideLine || row.line > before.line + 1);
    return apart && row.cells.length === 1 && /^\p{L}[\p{L}\s.,!-]*$/u.test(text);
  }
  const role = saying === undefined ? undefined : roleOfKey(saying.key);
  return role !== undefined && role !== 'panel';
}

const section = /^\[[^\]\d]{1,40}\]$/u;

/** `1 = bonnet`, in a row of its own or several of them. */
export const isLegend = ({ cells }: Row, { isPanel }: LayoutContext): boolean =>
  legendIn(cells.join(';'), isPanel) !== undefined;

/** `End of file;4;records`, `(12 rows)`: the last line that a program writes. */
const endOfList =
  /^(?:end of (?:file|data|list|report)|eof|records?|total records|number of records|ende|dateiende|fin du fichier|fin|\(\d+ rows?\)|\d+ rows? (?:in set|selected|returned)\.?)$/iu;

/** A text where the panels stand, above a row of readings that names none: it is no remark there. */
function namesRowsBelow(filled: readonly number[], next: Row | undefined, layout: Layout): boolean {
  const panelAt = layout.columns.get('panel');
  if (panelAt === undefined || next === undefined || filled.length !== 1) return false;
  const alone = filled[0] === panelAt && cellText(next, panelAt) === '';
  return alone && isDataRow(next, layout);
}

export function tellAside(row: Row, { findings, ...where }: Reader): void {
  const [column = 0] = filledCells(row);
  findings.add('warning', 'line-left-out', () => ({
    message: `"${cellText(row, column)}" is no row of readings and is not read`,
    at: placeOf(where, row, column),
  }));
}

/**
 * Lines above the rows that say nothing of them. Above names of columns it is the title that programs write, and a
 * note; above a list that somebody typed it may be a note on the car.
 */
export function tellTitles(
  { above }: Pick<Parts, 'above'>,
  header: Row | undefined,
  { findings, ...where }: Reader,
): void {
  for (const row of above) {
    const [column = 0, second] = filledCells(row);
    const line = lineFrom(where.source.text, row.start).replace(/[\s;,|]+$/u, '');
    const text = second === undefined ? cellText(row, column) : line.trim();
    if (!/[\p{L}\p{N}]/u.test(text) || isHeard(row, text, where.context)) continue;
    findings.add(header === undefined ? 'warning' : 'note', 'line-left-out', () => ({
      message: `"${text}" is no row of readings and is not read`,
      at:
        second === undefined
          ? placeOf(where, row, column)
          : where.source.placeAt(row.start + line.indexOf(text), text.length),
    }));
  }
}

/** `1 = bonnet`, `* repainted`, `8888 = invalid`: taken for what they are where the rows are read. */
const isHeard = (row: Row, text: string, context: LayoutContext): boolean =>
  isLegend(row, context) ||
  markerLegend(row.cells).size > 0 ||
  numberDeclaredBy(text) !== undefined;

const page =
  /^(?:page|seite|p[aá]gina|pag|sid[ae]|strona|blatt|sheet|страница|第?\d+頁)\b|\d+\s*(?:\/|of|von|de|di|van)\s*\d+$/iu;

/**
 * A line of text above a header that stands there again: `After polishing`, `Stage: 2`. Its rows are
 * set apart from those before, and nothing says how: as one survey they would be wrong.
 */
export function setsApart(
  row: Row,
  next: Row | undefined,
  saying: Saying | undefined,
  { header, metadata, titles }: State,
  { context }: Reader,
): boolean {
  if (next === undefined || header === undefined || filledCells(row).length > 2) return false;
  if (!sameNames(next, header) && layoutOf(next.cells, context) === undefined) return false;
  const text = loneText(row);
  if (saying === undefined || saying.value === '') {
    return text !== undefined && !page.test(text) && !titles.has(plain(text));
  }
  const role = roleOfKey(saying.key);
  if (role === 'operator' || role === 'time' || namesUnit(saying) || page.test(saying.key)) {
    return false;
  }
  return metadata.some(
    ({ key, value }) => plain(key) === plain(saying.key) && value !== saying.value,
  );
}

/** `After`, `Nach dem Polieren`, `Stage 2`, amid the rows: those below are of another survey. */
const laterStage =
  /^(?:(?:after|afterwards|nach|nachher|danach|apr[eè]s|despu[eé]s|dopo|depois|ap[oó]s|po|efter|etter|после|після)(?:\s\D.*)?|(?:stage|step|pass|round|stufe|[eé]tape|passage|etapa|fase)\s*[2-9])$/iu;

/** Whether a line between two rows of a table, or above its names, says that what follows was measured later. */
export function beginsLaterStage(
  row: Row,
  next: Row | undefined,
  { rows, tables, layout, header }: State,
  { context }: Reader,
): boolean {
  const text = visitText(row);
  if (text === undefined || next === undefined || rows.length + tables.length === 0) return false;
  if (!isDataRow(next, layout) && !sameNames(next, header)) return false;
  const said = withoutDay(text);
  return (laterStage.test(said) || namesVisit(said)) && !context.isPanel(text);
}

/** `Visit 2`, `Visit 2, 2026-11-20`: a line of text, and perhaps its day in a cell of its own. */
function visitText(row: Row): string | undefined {
  const [first = 0, second, third] = filledCells(row);
  if (second === undefined) return loneText(row);
  const isDay = third === undefined && dayAlone(cellText(row, second)) !== undefined;
  return isDay ? cellText(row, first) : undefined;
}

/** The day of a row that holds nothing else, but where a column of times may hold it for the rows below. */
export function dayOfRows(row: Row, { layout }: State): string | undefined {
  const [only = 0, more] = filledCells(row);
  return more === undefined && only !== layout.columns.get('time')
    ? dayAlone(cellText(row, only))
    : undefined;
}

/** Whether rows of the same vehicle stand above, of another day or of none that was said. */
export function beginsLaterDay(
  day: string,
  { rows, tables, metadata, given, layout }: State,
): boolean {
  if (layout.columns.has('vehicle')) return false;
  const isBelow = rows.length > 0 || tables.some((one) => one.given.vehicle === given.vehicle);
  return isBelow && !metadata.some(({ value }) => value.includes(day));
}

export function tellApart(row: Row, { findings, ...where }: Reader): void {
  const [column = 0] = filledCells(row);
  const text = cellText(row, column);
  const isVisit = saysBeforeOrAfter(text) || namesVisit(text) || dayAlone(text) !== undefined;
  findings.add('error', 'tables-apart', () => ({
    message: `"${text}" sets the rows below apart from those above, and not by vehicle or panel`,
    at: placeOf(where, row, column),
    hint: isVisit
      ? visitsHint
      : headsSide(text)
        ? sidesHint
        : 'put the tables in files of their own, or delete the one that is not wanted',
  }));
}

/** A row of readings above the names of the columns, perhaps of another dialect, is not passed over. */
export function tellRowAbove(
  row: Row,
  layout: Layout,
  { source, context, findings }: Reader,
): boolean {
  const line = lineFrom(source.text, row.start);
  const namesPanel = (cell: string) =>
    context.isPanel(cell) || context.isPanel(splitUnit(cell).label);
  const isRow = [...delimiters, /\s{2,}/u].some((delimiter) => {
    const cells = line.split(delimiter).map((cell) => cell.replace(/^\s*"|"\s*$/gu, '').trim());
    return cells.length > 1 && cells.some(isNumber) && cells.some(namesPanel);
  });
  if (!isRow && !fillsReadings(row, layout)) return false;
  findings.add('error', 'row-above-header', () => ({
    message: 'a row of readings stands above the names of the columns that were found',
    at: source.placeAt(row.start, line.length),
    hint: 'give each table its header, and all of them one delimiter; or use --header-line',
  }));
  return true;
}

/** `3;109;121;192` above `Point;bonnet;roof;boot`: numbers in most columns of readings, and no count of them. */
function fillsReadings({ cells }: Row, { readings }: Layout): boolean {
  const texts = readings.map(({ column }) => (cells[column] ?? '').trim()).filter((t) => t !== '');
  const counts = texts.every((text, k) => Number(text) === Number(texts[0]) + k);
  return (
    texts.length > 1 && texts.length * 2 >= readings.length && texts.every(isNumber) && !counts
  );
}

/** A header in the middle of the file that another delimiter splits. */
export function tellOtherDialect(
  row: Row,
  { source, delimiter, context, findings }: Reader,
): boolean {
  const line = lineFrom(source.text, row.start);
  const other = delimiters.find(
    (mark) =>
      mark !== delimiter &&
      line.includes(mark) &&
      layoutOf(line.split(mark), context) !== undefined,
  );
  if (other === undefined) return false;
  findings.add('error', 'delimiter-ambiguous', () => ({
    message: `a table separated by another mark starts here: ${delimiterName[other]}`,
    at: source.placeAt(row.start, line.length),
    hint: 'put each table in a file of its own, or separate all of them alike',
  }));
  return true;
}
