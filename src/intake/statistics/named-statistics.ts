/**
 * Which rows of a table have a word of statistics: below or beside the readings stands what a device or
 * a spreadsheet computed from them. A word that is also a name, of a person, a car or a point, is one
 * only where the value is as well.
 */

import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import { someText } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import type { Table } from '../tables/table.ts';
import { besideNumbers } from './point-words.ts';
import { valuesOf } from './row-values.ts';
import {
  isStatistic,
  mayBeName,
  namesStatistic,
  plainStatistic,
  statisticOf,
} from './statistic-words.ts';
import { known, type WordTest } from './word-test.ts';

/** The column of a row's word of statistics, or -1. */
export function statisticFinder(table: Table): (row: Row) => number {
  const { layout } = table;
  const readings = new Set(layout.readings.map(({ column }) => column));
  const tests = new Map<number, WordTest>();
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
  const columns = [...tests].flatMap(([column, test]) => {
    const mayBe = (text: string): boolean => text !== '' && !isNumeral(text) && test.mayBe(text);
    return someText(table.rows, column, mayBe) ? [{ column, test, plainName: '' }] : [];
  });
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

function testFor(role: GaugeRole | undefined, column: number, table: Table): WordTest {
  if (role === 'panel') return { mayBe: besidePanels(table, column), isOne: () => true };
  if (role === 'point' || role === 'repeat') return besideNumbers(column, table);
  // People and cars stand under names of columns.
  if (role === 'time' && table.header === undefined)
    return { mayBe: known(isStatistic), isOne: () => true };
  if (role === 'layer') return { mayBe: known(isStatisticOfLayer), isOne: () => true };
  return besideNames(table, column);
}

/** A layer-resolving instrument calls the whole film total. */
const isStatisticOfLayer = (text: string): boolean =>
  plainStatistic(text) !== 'total' && isStatistic(text);

/** A panel may be called `N` or `Average door`: its rows have points of their own, each another. */
function besidePanels(table: Table, column: number): WordTest['mayBe'] {
  const pointAt = table.layout.columns.get('point');
  return known((text) => {
    const statistical = namesStatistic(text) || plainStatistic(text) === 'n';
    if (!statistical || pointAt === undefined) return statistical;
    const points = table.rows
      .filter((row) => cellText(row, column) === text)
      .map((row) => cellText(row, pointAt));
    const several = points.length > 1 && new Set(points).size === points.length;
    return !(several && points.every((point) => /^\d+$/u.test(point)));
  });
}

/**
 * Max and Mini are a person and a car, unless their column also has a word of statistics that is no
 * name, and the value beside them is not the largest or the least.
 */
function besideNames(table: Table, column: number): WordTest {
  const mayBe = known(isStatistic);
  let sure: boolean | undefined;
  const isSure = (): boolean =>
    table.rows.some((row) => {
      const text = cellText(row, column);
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

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
/** Numbers, dates and times start with a digit; of the words of statistics only `1-2 avg` does. */
const isNumeral = (text: string): boolean =>
  isDigit(text.charCodeAt(0)) && (text.length < 3 || !/^\d[\d\s–-]*\s\D/u.test(text));
