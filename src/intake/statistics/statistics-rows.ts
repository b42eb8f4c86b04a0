/**
 * Rows of statistics among those of readings.
 *
 * What stands next to a word of statistics is computed from readings and is none itself: taken as one
 * it would count its sources twice. The same goes for a row without such a word whose values prove it.
 */

import { numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { type ExcludedCell, ofNoPanel, placeOf, type Table } from '../tables/table.ts';
import { statisticFinder } from './named-statistics.ts';
import type { Statistic } from './statistic-vocabulary.ts';
import { statisticOf } from './statistic-words.ts';
import { statisticsByValue } from './statistics-by-value.ts';

export type StatisticsRow = {
  readonly row: Row;
  readonly statistic: Statistic;
  /** Where its word stands. */
  readonly column: number;
};
export type WithoutStatistics = {
  readonly table: Table;
  readonly excluded: readonly ExcludedCell[];
  /** In the order of the file, to be held against the readings. */
  readonly rows: readonly StatisticsRow[];
};

type LeftOut = {
  readonly column: number;
  readonly statistic: Statistic;
  readonly why?: string;
};

/** A table without its rows of statistics; each is told, and listed among the cells left out. */
export function leaveOutStatistics(
  table: Table,
  isPanel: (label: string) => boolean,
  findings: Findings,
): WithoutStatistics {
  const find = statisticFinder(table);
  const named = new Map<Row, LeftOut>();
  for (const row of table.rows) {
    const column = find(row);
    if (column !== -1) named.set(row, { column, statistic: statisticOf(cellText(row, column)) });
  }
  const byValue = statisticsByValue(table, (row) => named.has(row), isPanel, findings);
  tellNamelessBelow(table, named, findings);
  if (named.size + byValue.size === 0) return { table, excluded: [], rows: [] };
  const readingsGive = readingsBehind(table, (row) => named.has(row) || byValue.has(row), isPanel);
  const excluded: ExcludedCell[] = [];
  const found: StatisticsRow[] = [];
  const rows = table.rows.filter((row) => {
    const own: LeftOut | undefined = named.get(row) ?? byValue.get(row);
    if (own === undefined) return true;
    const { column, statistic } = own;
    const text = cellText(row, column);
    const reason = own.why ?? `a statistics row: ${text} is no reading`;
    const at = placeOf(table, row, column);
    const { file, line = 0, column: first = 0 } = at;
    excluded.push({
      ...{ file, line, column: first, text },
      ...{ class: 'statistics', reason, ...ofNoPanel },
    });
    found.push({ row, statistic, column });
    const severity = named.has(row) && readingsGive(row, column) ? 'note' : 'warning';
    findings.add(severity, 'statistics-left-out', () => ({ message: reason, at }));
    return false;
  });
  return { table: { ...table, rows }, excluded, rows: found };
}

/**
 * Whether the readings that a row of statistics is of stand in the table: where none does, its number is all
 * that is known of a panel.
 */
function readingsBehind(
  { layout, rows }: Table,
  isStatistic: (row: Row) => boolean,
  isPanel: (label: string) => boolean,
): (row: Row, column: number) => boolean {
  const panelAt = layout.columns.get('panel') ?? -1;
  const read = rows.filter((row) => !isStatistic(row));
  const holds = (row: Row, column: number) => numberShape(cellText(row, column)) !== undefined;
  return (row, column) => {
    const panel = panelAt === column ? '' : cellText(row, panelAt);
    const own = isPanel(panel) ? read.filter((one) => cellText(one, panelAt) === panel) : read;
    return (
      own.length > 0 &&
      layout.readings.every(
        (at) => !holds(row, at.column) || own.some((one) => holds(one, at.column)),
      )
    );
  };
}

/**
 * A row without a panel below one whose panel is a word of statistics: it may belong to the summary, or to
 * the panel above it.
 */
function tellNamelessBelow(
  table: Table,
  named: ReadonlyMap<Row, LeftOut>,
  findings: Findings,
): void {
  const panelAt = table.layout.columns.get('panel');
  if (panelAt === undefined || named.size === 0) return;
  let above: Row | undefined;
  for (const row of table.rows) {
    const below = above !== undefined && named.get(above)?.column === panelAt;
    if (below && !named.has(row) && cellText(row, panelAt) === '') {
      findings.add('error', 'panel-missing', () => ({
        message: 'the row names no panel, and the row above it is one of statistics',
        at: placeOf(table, row, panelAt),
        hint: 'name the panel in every row',
      }));
      return;
    }
    above = row;
  }
}
