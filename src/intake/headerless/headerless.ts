/**
 * Readings that no line of names stands above, where the cells themselves prove what they are:
 * rows of a known panel and film readings, a panel's name above its values, or lines
 * `bonnet: 102, 104, 99`. Anything less is not guessed at.
 */

import { givenBy, loneText, panelSaid, sayingOf } from '../beside/sayings.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import { unitNamed } from '../cells/unit.ts';
import { meansNoReading } from '../cells/words.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import { stemOfLabel } from '../header/label-numbers.ts';
import type { Layout, LayoutContext, ReadingColumn } from '../header/layout.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { numberedPanels } from '../tables/numbered-labels.ts';
import { widest } from '../tables/table.ts';
import { countingColumns } from './counting-columns.ts';

/** Readings of vehicle paint, in whichever unit: 0.5 mil to 5000 µm. */
const smallest = 0.5;
const largest = 5000;

const isFilm = (text: string): boolean => {
  const shape = numberShape(text);
  if (shape === undefined) return false;
  const value = numberOf(shape);
  return value >= smallest && value <= largest;
};

/** The layout that the rows prove, with those rows that are no part of it left to be said. */
export function headerlessLayout(
  rows: readonly Row[],
  delimiter: string,
  context: LayoutContext,
): Layout | undefined {
  return panelRows(rows, delimiter, context) ?? bareBlocks(rows, context);
}

/** Rows of a known panel and one reading, or several; beside them only what its values prove. */
function panelRows(
  rows: readonly Row[],
  delimiter: string,
  { isPanel }: LayoutContext,
): Layout | undefined {
  const own = rows.filter(({ cells }) => cells.length > 1 && cells.some((c) => isFilm(c.trim())));
  const panelAt = own[0]?.cells.findIndex((cell) => isPanel(stemOfLabel(cell.trim()))) ?? -1;
  if (panelAt === -1) return undefined;
  const labels = own.map((row) => cellText(row, panelAt));
  const width = widest(own);
  const arePoints = width === panelAt + 2 && numberedPanels(labels, isPanel);
  if (!arePoints && !labels.every((label) => isPanel(label))) return undefined;
  const columns = new Map<GaugeRole, number>([['panel', panelAt]]);
  const numbers: number[] = [];
  for (let column = 0; column < width; column += 1) {
    if (column === panelAt) continue;
    const texts = own.map((row) => cellText(row, column)).filter((text) => text !== '');
    if (texts.length === 0) continue;
    if (countsPerPanel(own, column, panelAt)) columns.set('point', column);
    else if (texts.every((text) => unitNamed(text) !== undefined)) columns.set('unit', column);
    else if (texts.every((text) => moment.test(text))) columns.set('time', column);
    else if (texts.every((text) => isFilm(text) || meansNoReading(text))) numbers.push(column);
    else return undefined;
  }
  if (numbers.length === 0 || (delimiter === ',' && mayBeDecimals(own, numbers))) return undefined;
  const counting = countingColumns(own, numbers, labels);
  const readings = numbers.filter((column) => !counting.includes(column));
  for (const column of counting) if (!columns.has('point')) columns.set('point', column);
  if (readings.length > 1 && areListNumbers(own, columns)) columns.delete('point');
  return withoutHeader('list', columns, readings);
}

/** Of one line for each panel the numbers are its places in the list, and the readings its points. */
function areListNumbers(rows: readonly Row[], columns: ReadonlyMap<GaugeRole, number>): boolean {
  const [panels, points] = (['panel', 'point'] as const).map(
    (role) => new Set(rows.map((row) => cellText(row, columns.get(role) ?? -1))),
  );
  return panels?.size === rows.length && points?.size === rows.length;
}

/** A day, a time of the day, or both; `10 32 05` is a time. */
const moment =
  /^(?:\d{4}-\d\d-\d\d|\d{1,2}[./]\d{1,2}[./]\d{2,4}|(?=\d{1,2}:))(?:[T ]?\d{1,2}:\d\d(?::\d\d(?:[.,]\d+)?)?(?:Z|[+-]\d\d:?\d\d)?)?$|^[0-2]?\d [0-5]\d [0-5]\d$/u;

/** A short column that counts 1, 2, 3 … within each panel, or over all rows. */
function countsPerPanel(rows: readonly Row[], column: number, panelAt: number): boolean {
  const last = new Map<string, number>();
  let over = 0;
  const seen = { perPanel: true, overall: true };
  for (const row of rows) {
    const text = cellText(row, column);
    if (!/^\d{1,4}$/u.test(text)) return false;
    const panel = cellText(row, panelAt);
    if (Number(text) !== (last.get(panel) ?? 0) + 1) seen.perPanel = false;
    if (Number(text) !== over + 1) seen.overall = false;
    last.set(panel, Number(text));
    over = Number(text);
  }
  return rows.length > 1 && (seen.perPanel || seen.overall);
}

/** Between commas, `101,5` may be one reading: a part that is short or starts with 0 says so. */
function mayBeDecimals(rows: readonly Row[], columns: readonly number[]): boolean {
  return rows.some((row) =>
    columns.some((column) => {
      const text = cellText(row, column);
      return /^0\d*$/u.test(text) || (/^\d+$/u.test(text) && Number(text) < 15);
    }),
  );
}

/** Lines that name panels, and under each nothing but numbers. */
function bareBlocks(rows: readonly Row[], context: LayoutContext): Layout | undefined {
  const named = rows.findIndex((row) => panelNamedBy(row, context) !== undefined);
  const first = rows.findIndex(isBare);
  if (named === -1 || first === -1 || first < named) return undefined;
  const own = rows.filter(isPointRow);
  const width = filledWidth(own);
  const columnsOfAll = Array.from({ length: width }, (_, k) => k);
  const times = columnsOfAll.filter((k) => own.some((row) => moment.test(cellText(row, k))));
  const areTimes = (k: number): boolean =>
    own.every((row) => cellText(row, k) === '' || moment.test(cellText(row, k)));
  if (times.length > 1 || !times.every(areTimes)) return undefined;
  const all = columnsOfAll.filter((k) => !times.includes(k));
  const counted = all.length > 1 && own.every((row, k) => counts(row, own[k - 1]));
  const counting = counted ? [0] : countingColumns(own, all, blocksOf(rows, own, context));
  const columns = new Map<GaugeRole, number>([
    ...counting.slice(0, 1).map((column) => ['point', column] as const),
    ...times.map((column) => ['time', column] as const),
  ]);
  return withoutHeader(
    'blocks',
    columns,
    all.filter((column) => !counting.includes(column)),
  );
}

/**
 * `1,127.1`, `2,128.3`, `3,126.0`: between commas the first column counts the points of each panel, or all rows. Read as
 * thousands no readings would count so.
 */
export function countsBetweenCommas(rows: readonly Row[]): boolean {
  const own = rows.filter((row) => isPointRow(row) && row.cells.length > 1);
  return (
    own.length >= fewestCounted &&
    Number(cellText(own[0] ?? noRow, 0)) === 1 &&
    own.every(
      (row, k) =>
        /^[1-9]\d?$/u.test(cellText(row, 0)) &&
        /^\d{2,3}(?:\.\d+)?$/u.test(cellText(row, 1)) &&
        counts(row, own[k - 1]),
    )
  );
}
const fewestCounted = 3;
const noRow: Row = { cells: [], line: 0, start: 0, quoted: false };

/** Below which line that names a panel each row stands. */
function blocksOf(
  rows: readonly Row[],
  own: readonly Row[],
  context: LayoutContext,
): readonly string[] {
  const bare = new Set(own);
  let block = 0;
  return rows.flatMap((row) => {
    if (bare.has(row)) return [String(block)];
    if (panelNamedBy(row, context) !== undefined) block += 1;
    return [];
  });
}

/** Without the columns at the end that a spreadsheet leaves empty. */
const filledWidth = (rows: readonly Row[]): number =>
  rows.reduce(
    (most, { cells }) => Math.max(most, cells.findLastIndex((cell) => cell.trim() !== '') + 1),
    0,
  );

const counts = (row: Row, before: Row | undefined): boolean => {
  const number = Number(cellText(row, 0));
  return number === 1 || (before !== undefined && number === Number(cellText(before, 0)) + 1);
};

export const isBare = ({ cells }: Row): boolean =>
  cells.some((cell) => isFilm(cell.trim())) &&
  cells.every((cell) => {
    const text = cell.trim();
    return meansNoReading(text) || isFilm(text) || moment.test(text);
  });

/** Not `SD;2.4` below the points of a panel: some such words stand for no reading as well. */
const isPointRow = (row: Row): boolean => isBare(row) && !namesStatistic(cellText(row, 0));

/** The panel that a line names for those below it: by a key, or by a known name alone. */
export function panelNamedBy(row: Row, { isPanel }: LayoutContext): string | undefined {
  const saying = sayingOf(row);
  const given = saying === undefined ? undefined : givenBy(saying)?.panel;
  if (given !== undefined && given !== null && !isFilm(given)) return given;
  const said = saying === undefined ? undefined : panelSaid(saying, isPanel);
  if (said !== undefined) return said;
  const text = loneText(row);
  return text !== undefined && isPanel(text) ? text : undefined;
}

export function withoutHeader(
  kind: Layout['kind'],
  columns: ReadonlyMap<GaugeRole, number>,
  numbers: readonly number[],
): Layout {
  const single = numbers.length === 1;
  const readings = numbers.map(
    (column, k): ReadingColumn => ({ column, panel: null, number: single ? null : k + 1 }),
  );
  return { kind, header: [], columns, readings, series: 'reading', unknown: [], repeated: [] };
}
