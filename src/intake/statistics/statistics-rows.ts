/**
 * Rows of statistics among those of readings.
 *
 * A device or a spreadsheet writes them below or beside the readings. What stands next to one is
 * computed from readings and is none itself: taken as one it would count its sources twice. A word
 * that is also a name, of a person, a car or a point, is one only where the value is as well.
 */
import { mean as meanOf } from '../../base/stats/summary.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import type { Row } from '../rows/tokens.ts';
import type { GaugeRole } from '../tables/gauge-vocabulary.ts';
import { type ExcludedCell, placeOf, type Table } from '../tables/table.ts';
import {
  isStatistic,
  mayBeName,
  namesStatistic,
  plainStatistic,
  type Statistic,
  statisticBeside,
} from './statistic-words.ts';

export type StatisticsRow = { readonly row: Row; readonly statistic: Statistic };
export type WithoutStatistics = {
  readonly table: Table;
  readonly excluded: readonly ExcludedCell[];
  /** In the order of the file, to be held against the readings. */
  readonly rows: readonly StatisticsRow[];
};

/** A table without its rows of statistics; each is told, and listed among the cells left out. */
export function leaveOutStatistics(table: Table, findings: Findings): WithoutStatistics {
  const excluded: ExcludedCell[] = [];
  const found: StatisticsRow[] = [];
  const find = statisticFinder(table);
  const rows = table.rows.filter((row) => {
    const nameless = isNamelessMeans(table, row);
    const column = nameless ? (table.layout.readings[0]?.column ?? 0) : find(row);
    if (column === -1) return true;
    const text = (row.cells[column] ?? '').trim();
    const reason = nameless
      ? 'a last row of the means of the columns: they are no readings'
      : `a statistics row: ${text} is no reading`;
    const at = placeOf(table, row, column);
    const { file, line = 0, column: first = 0 } = at;
    excluded.push({ file, line, column: first, text, class: 'statistics', reason });
    found.push({ row, statistic: nameless ? 'mean' : statisticOf(text) });
    findings.add('warning', 'statistics-left-out', () => ({ message: reason, at }));
    return false;
  });
  return found.length === 0
    ? { table, excluded, rows: found }
    : { table: { ...table, rows }, excluded, rows: found };
}

export const statisticOf = (text: string): Statistic =>
  statisticBeside(text) ?? (plainStatistic(text) === 'n' ? 'count' : 'other');

/** How a column tells a word of statistics: by the text, and where that may be a name, by its row. */
type Test = {
  readonly mayBe: (text: string) => boolean;
  readonly isOne: (text: string, row: Row) => boolean;
};

/** The column of a row's word of statistics, or -1. */
function statisticFinder(table: Table): (row: Row) => number {
  const { layout } = table;
  const readings = new Set(layout.readings.map(({ column }) => column));
  const tests = new Map<number, Test>();
  for (const [role, column] of layout.columns) {
    if (!readings.has(column)) tests.set(column, testFor(role, column, table));
  }
  for (const column of layout.unknown) tests.set(column, testFor(undefined, column, table));
  for (const column of layout.header.keys()) {
    const role = layout.header[column]?.role;
    if (!readings.has(column) && !tests.has(column))
      tests.set(column, testFor(role, column, table));
  }
  // Rows of one panel stand together: a name that was looked at in the row above is not looked at again.
  const columns = [...tests].map(([column, test]) => ({ column, test, plainName: '' }));
  return (row) => {
    for (const own of columns) {
      const cell = row.cells[own.column] ?? '';
      if (cell === own.plainName) continue;
      const text = cell.trim();
      if (text === '' || isNumeral(text)) continue;
      if (!own.test.mayBe(text)) own.plainName = cell;
      else if (own.test.isOne(text, row)) return own.column;
    }
    return -1;
  };
}

function testFor(role: GaugeRole | undefined, column: number, table: Table): Test {
  if (role === 'panel') return { mayBe: besidePanels(table, column), isOne: () => true };
  if (role === 'point') return besidePoints(table);
  if (role === 'layer') return { mayBe: known(isStatisticOfLayer), isOne: () => true };
  return besideNames(table, column);
}

/** A layer-resolving instrument calls the whole film total. */
const isStatisticOfLayer = (text: string): boolean =>
  plainStatistic(text) !== 'total' && isStatistic(text);

/** Each text is judged once. */
function known(test: (text: string) => boolean): Test['mayBe'] {
  const told = new Map<string, boolean>();
  return (text) => {
    const before = told.get(text);
    if (before !== undefined) return before;
    const answer = test(text);
    told.set(text, answer);
    return answer;
  };
}

/** A panel may be called `N` or `Average door`: its rows have points of their own, each another. */
function besidePanels(table: Table, column: number): Test['mayBe'] {
  const pointAt = table.layout.columns.get('point');
  return known((text) => {
    const statistical = namesStatistic(text) || plainStatistic(text) === 'n';
    if (!statistical || pointAt === undefined) return statistical;
    const points = table.rows
      .filter(({ cells }) => (cells[column] ?? '').trim() === text)
      .map(({ cells }) => (cells[pointAt] ?? '').trim());
    const several = points.length > 1 && new Set(points).size === points.length;
    return !(several && points.every((point) => /^\d+$/u.test(point)));
  });
}

/** `n` is a count where the value is one, `max` a statistic unless a reading of some panel is larger. */
function besidePoints(table: Table): Test {
  const isBeaten = beatenPoints(table);
  return {
    mayBe: known((text) => plainStatistic(text) === 'n' || isStatistic(text)),
    isOne: (text, row) =>
      plainStatistic(text) === 'n' ? valuesOf(table, row).every(isSmallCount) : !isBeaten(text),
  };
}
const isSmallCount = (value: number): boolean => Number.isInteger(value) && value < 20;

/** Whether a reading of the same panel is larger than a point called `max`, or less than a `min`. */
function beatenPoints(table: Table): (text: string) => boolean {
  const panelAt = table.layout.columns.get('panel') ?? -1;
  const pointAt = table.layout.columns.get('point') ?? -1;
  const pointOf = ({ cells }: Row): string => (cells[pointAt] ?? '').trim();
  let bounds: Map<string, { least: number; most: number }> | undefined;
  const readBounds = () => {
    const found = new Map<string, { least: number; most: number }>();
    for (const row of table.rows) {
      if (isStatistic(pointOf(row)) || plainStatistic(pointOf(row)) === 'n') continue;
      const panel = row.cells[panelAt] ?? '';
      const bound = found.get(panel) ?? { least: Infinity, most: -Infinity };
      for (const value of valuesOf(table, row)) {
        bound.least = Math.min(bound.least, value);
        bound.most = Math.max(bound.most, value);
      }
      found.set(panel, bound);
    }
    return found;
  };
  const told = new Map<string, boolean>();
  return (text) => {
    const statistic = statisticOf(text);
    if (statistic !== 'least' && statistic !== 'most') return false;
    const before = told.get(text);
    if (before !== undefined) return before;
    bounds ??= readBounds();
    const beaten = table.rows.some((row) => {
      const bound = bounds?.get(row.cells[panelAt] ?? '');
      if (pointOf(row) !== text || bound === undefined) return false;
      return valuesOf(table, row).some((value) =>
        statistic === 'most' ? bound.most > value : bound.least < value,
      );
    });
    told.set(text, beaten);
    return beaten;
  };
}

/**
 * A last row apart from the others, without a name, that holds the mean of every column: that all
 * agree to the last digit is no chance.
 */
function isNamelessMeans({ layout, rows }: Table, row: Row): boolean {
  const before = rows.at(-2);
  if (row !== rows.at(-1) || before === undefined || row.line === before.line + 1) return false;
  const columns = layout.readings.map(({ column }) => column);
  if (columns.length < 2 || rows.length < 3) return false;
  const above = rows.slice(0, -1);
  return columns.every((column) => {
    const shape = numberShape((row.cells[column] ?? '').trim());
    const values = above
      .flatMap(({ cells }) => numberShape((cells[column] ?? '').trim()) ?? [])
      .map(numberOf);
    if (shape === undefined || values.length === 0) return false;
    const slack = 10 ** -shape.fraction.length / 2 + 1e-9;
    return Math.abs(numberOf(shape) - meanOf(values)) <= slack;
  });
}

/**
 * Max and Mini are a person and a car, unless their column also has a word of statistics that is no
 * name, and the value beside them is not the largest or the least.
 */
function besideNames(table: Table, column: number): Test {
  const mayBe = known(isStatistic);
  let sure: boolean | undefined;
  const isSure = (): boolean =>
    table.rows.some((row) => {
      const text = (row.cells[column] ?? '').trim();
      return text !== '' && !isNumeral(text) && mayBe(text) && !mayBeName(text);
    });
  const isOne = (text: string, row: Row): boolean => {
    if (!mayBeName(text)) return true;
    sure ??= isSure();
    return sure && isExtreme(table, row, text);
  };
  return { mayBe, isOne };
}

/** Whether a row holds the largest, or the least, of the values in its columns. */
function isExtreme(table: Table, row: Row, text: string): boolean {
  const statistic = statisticOf(text);
  if (statistic !== 'least' && statistic !== 'most') return true;
  const own = valuesOf(table, row);
  const sign = statistic === 'most' ? 1 : -1;
  let bound = Number.NEGATIVE_INFINITY;
  for (const other of table.rows) {
    if (other === row) continue;
    for (const value of valuesOf(table, other)) bound = Math.max(bound, sign * value);
  }
  return own.some((value) => sign * value === bound);
}

export const valuesOf = ({ layout }: Table, { cells }: Row): readonly number[] =>
  layout.readings.flatMap(({ column }) => {
    const shape = numberShape((cells[column] ?? '').trim());
    return shape === undefined ? [] : [numberOf(shape)];
  });

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
/** Numbers, dates and times start with a digit; of the words of statistics only `1-2 avg` does. */
const isNumeral = (text: string): boolean =>
  isDigit(text.charCodeAt(0)) && (text.length < 3 || !/^\d[\d\s–-]*\s\D/u.test(text));
