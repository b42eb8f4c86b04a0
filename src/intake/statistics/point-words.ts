/** Words of statistics in a column that names or counts the points: `n`, `max`, `Mean`. */
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import type { Table } from '../tables/table.ts';
import { columnValues, valuesOf } from './row-values.ts';
import { isStatistic, plainStatistic, statisticOf } from './statistic-words.ts';
import { known, type WordTest } from './word-test.ts';

/**
 * In a column that names or counts the points: `n` is a count where the value is one, `max` a statistic
 * unless a reading of its column, on the same panel, is larger.
 */
export function besideNumbers(column: number, table: Table): WordTest {
  const isBeaten = beatenWords(column, table);
  return {
    mayBe: known((text) => plainStatistic(text) === 'n' || isStatistic(text)),
    isOne: (text, row) =>
      plainStatistic(text) === 'n' ? valuesOf(table, row).every(isSmallCount) : !isBeaten(text),
  };
}
const isSmallCount = (value: number): boolean => Number.isInteger(value) && value < 20;

type Bound = { least: number; most: number };

/** Whether a reading is larger than the value called `max` in its column, or less than a `min`. */
function beatenWords(wordAt: number, table: Table): (text: string) => boolean {
  const panelAt = table.layout.columns.get('panel') ?? -1;
  const wordOf = (row: Row): string => cellText(row, wordAt);
  const keyOf = (row: Row, column: number): string => `${column}\0${cellText(row, panelAt)}`;
  let bounds: Map<string, Bound> | undefined;
  const readBounds = () => {
    const found = new Map<string, Bound>();
    for (const row of table.rows) {
      if (isStatistic(wordOf(row)) || plainStatistic(wordOf(row)) === 'n') continue;
      for (const { column, value } of columnValues(table, row)) {
        const key = keyOf(row, column);
        const bound = found.get(key) ?? { least: Infinity, most: -Infinity };
        bound.least = Math.min(bound.least, value);
        bound.most = Math.max(bound.most, value);
        found.set(key, bound);
      }
    }
    return found;
  };
  const told = new Map<string, boolean>();
  return (text) => {
    const statistic = statisticOf(text);
    if (statistic !== 'least' && statistic !== 'most') return false;
    const before = told.get(text);
    if (before !== undefined) return before;
    const all = bounds ?? readBounds();
    bounds = all;
    const beaten = table.rows.some(
      (row) =>
        wordOf(row) === text &&
        columnValues(table, row).some(({ column, value }) => {
          const bound = all.get(keyOf(row, column));
          if (bound === undefined) return false;
          return statistic === 'most' ? bound.most > value : bound.least < value;
        }),
    );
    told.set(text, beaten);
    return beaten;
  };
}
