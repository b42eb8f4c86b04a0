/** Which readings each statistic of a table may be of. */

import { groupBy } from '../../base/group-by.ts';
import { numberShape } from '../cells/numbers.ts';
import type { Layout } from '../header/layout.ts';
import type { Parts } from '../parts/section-state.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import type { Table } from '../tables/table.ts';
import { namesStatistic, statisticOf } from './statistic-words.ts';
import type { Claim } from './statistics-check.ts';
import type { StatisticsRow } from './statistics-rows.ts';

const isNumber = (text: string): boolean => numberShape(text) !== undefined;

/** Statistics in rows: of the rows since the last ones, of the panel they name, or of all. */
export function rowClaims(table: Table, statistics: readonly StatisticsRow[]): readonly Claim[] {
  if (statistics.length === 0) return [];
  const { rows, layout } = table;
  const panelAt = layout.columns.get('panel');
  const byPanel =
    panelAt === undefined
      ? undefined
      : groupBy(rows, (row) => cellText(row, panelAt).toLowerCase());
  const [first, last] = [rows[0]?.line ?? 0, rows.at(-1)?.line ?? 0];
  return statistics.flatMap((own, k) => {
    const { row, statistic } = own;
    const panel =
      panelAt === undefined ? undefined : byPanel?.get(cellText(row, panelAt).toLowerCase());
    const groups = [
      rowsSince(rows, statistics, k),
      ...(panel === undefined ? [] : [panel]),
      ...(row.line > last || row.line < first ? [rows] : []),
    ];
    return valuesIn(table, own).map(({ column, readings }): Claim => {
      const text = cellText(row, column);
      return { table, row, column, text, statistic, groups: textsOf(groups, readings) };
    });
  });
}

/** The rows between a block of statistics and the block before it. */
function rowsSince(
  rows: readonly Row[],
  statistics: readonly StatisticsRow[],
  k: number,
): readonly Row[] {
  const line = statistics[k]?.row.line ?? 0;
  const end = rows.findLastIndex((row) => row.line < line);
  const lastRow = rows[end];
  if (lastRow === undefined) return [];
  const before = statistics.findLast(({ row }) => row.line < lastRow.line)?.row.line ?? 0;
  return rows.slice(
    rows.findIndex((row) => row.line > before),
    end + 1,
  );
}

type Value = { readonly column: number; readonly readings: readonly (readonly number[])[] };

/** The values of a row of statistics, with the columns each may be of. A number before its word is that of the row. */
function valuesIn({ layout }: Table, { row, column: word }: StatisticsRow): readonly Value[] {
  const all = layout.readings.map(({ column }) => column);
  const own = all.filter((column) => isNumber(cellText(row, column)));
  if (own.length > 0) return own.map((column) => ({ column, readings: [[column], all] }));
  const column = row.cells.findIndex((cell, k) => k > word && isNumber(cell.trim()));
  return column === -1 ? [] : [{ column, readings: [all] }];
}

/** Statistics in lines of their own: of the rows above since the last such line, of all rows above, or of the file. */
export function sayingClaims(
  tables: readonly Table[],
  sayings: Parts['statistics'],
): readonly Claim[] {
  const [table] = tables;
  if (table === undefined || sayings.length === 0) return [];
  const all = tables.flatMap((own) => readingTexts(own, own.rows));
  return sayings.map(({ row, saying }): Claim => {
    const { key, value, column } = saying;
    const above = tables.findLast((own) => (own.rows[0]?.line ?? 0) < row.line) ?? table;
    const before = above.rows.filter(({ line }) => line < row.line);
    const earlier = sayings.findLast((own) => own.row.line < row.line)?.row.line ?? 0;
    const since = before.filter(({ line }) => line > earlier);
    const groups = [readingTexts(above, since), readingTexts(above, before), all];
    return { table, row, column, text: value, statistic: statisticOf(key), groups };
  });
}

/** Statistics in a table of their own, a row for each panel. */
export function summaryClaims(
  tables: readonly Table[],
  summaries: Parts['summaries'],
): readonly Claim[] {
  const [table] = tables;
  if (table === undefined || summaries.length === 0) return [];
  const byPanel = new Map<string, string[]>();
  for (const own of tables) {
    for (const row of own.rows) {
      for (const { column, panel } of own.layout.readings) {
        const name = panel ?? cellText(row, own.layout.columns.get('panel') ?? -1);
        const key = (name === '' ? (own.given.panel ?? '') : name).toLowerCase();
        byPanel.set(key, [...(byPanel.get(key) ?? []), cellText(row, column)]);
      }
    }
  }
  return summaries.flatMap(({ header, rows }) =>
    rows.flatMap((row) => {
      const group = row.cells.flatMap((cell) => byPanel.get(cell.trim().toLowerCase()) ?? []);
      if (group.length === 0) return [];
      return [...header.cells.keys()].flatMap((column): readonly Claim[] => {
        const statistic = statisticOf(cellText(header, column));
        const text = cellText(row, column);
        return isNumber(text) ? [{ table, row, column, text, statistic, groups: [group] }] : [];
      });
    }),
  );
}

const readingTexts = ({ layout }: Table, rows: readonly Row[]): readonly string[] =>
  rows.flatMap((row) => layout.readings.map(({ column }) => cellText(row, column)));

const textsOf = (
  groups: readonly (readonly Row[])[],
  readings: readonly (readonly number[])[],
): readonly (readonly string[])[] =>
  groups.flatMap((rows) =>
    readings.map((columns) =>
      rows.flatMap((row) => columns.map((column) => cellText(row, column))),
    ),
  );

/** Statistics in columns: of the readings of their row, or of all rows of its panel or point. */
export function columnClaims(table: Table): readonly Claim[] {
  const { layout, rows } = table;
  const columns = layout.unknown.filter((k) => namesStatistic(layout.header[k]?.label ?? ''));
  if (columns.length === 0) return [];
  const groupsOf = groupsByRow(table);
  return columns.flatMap((column) => {
    const readings = readingsOf(layout, column);
    const statistic = statisticOf(layout.header[column]?.label ?? '');
    return rows.flatMap((row): readonly Claim[] => {
      const text = cellText(row, column);
      if (!isNumber(text)) return [];
      const groups = textsOf([[row], ...groupsOf(row)], [readings]);
      return [{ table, row, column, text, statistic, groups }];
    });
  });
}

/** The columns that a column of statistics sums up: of several panels with several points, the one before it. */
function readingsOf({ kind, series, readings }: Layout, column: number): readonly number[] {
  const before = readings.findLast((reading) => reading.column < column);
  const own =
    kind === 'wide' && series === 'point'
      ? readings.filter(({ panel }) => panel === before?.panel)
      : readings;
  return own.map((reading) => reading.column);
}

/** The rows of a row's panel, and those of its point, where rows hold one reading each. */
function groupsByRow({ layout, rows }: Table): (row: Row) => readonly (readonly Row[])[] {
  const { columns, readings } = layout;
  if (readings.length > 1) return () => [];
  const keyOf = (row: Row, roles: readonly ('vehicle' | 'panel' | 'point')[]): string =>
    roles.map((role) => cellText(row, columns.get(role) ?? -1)).join('\0');
  const panels = groupBy(rows, (row) => keyOf(row, ['vehicle', 'panel']));
  const points = groupBy(rows, (row) => keyOf(row, ['vehicle', 'panel', 'point']));
  const mostRows = 2000;
  return (row) =>
    [
      panels.get(keyOf(row, ['vehicle', 'panel'])) ?? [],
      points.get(keyOf(row, ['vehicle', 'panel', 'point'])) ?? [],
    ].filter(({ length }) => length <= mostRows);
}
