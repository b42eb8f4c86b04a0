/**
 * Means, least and largest values and the like that no word gives away: at the start or the end of a line of
 * readings, in the first or last row of a panel, or in its row without a point.
 *
 * A number that is the mean of the readings beside it may be a reading by chance. Where it is so on every panel, how
 * likely chance is says what to do (`statistics-by-chance.ts`): it is refused, for read as a reading it would count
 * the others twice; or doubted aloud.
 */
import { groupBy } from '../../base/group-by.ts';
import { readReadingCell } from '../cells/reading-cell.ts';
import type { Findings } from '../findings.ts';
import type { Grid, GridCell } from '../readings/number-grid.ts';
import type { SettledTable } from '../readings/readings.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { figureNames } from '../statistics/group-figures.ts';
import { isMean } from '../statistics/mean-of.ts';
import { type FoundStatistics, statisticsAmong } from '../statistics/statistics-by-chance.ts';
import { placeOf } from '../tables/table.ts';

/** What chance does less often is no chance. */
const REFUSED = 1e-4;
/** The same of a column that the user called a reading, by a number. */
const REFUSED_IF_NAMED = 1e-8;
const DOUBTED = 2e-3;
/** One panel alone proves nothing. */
const fewestPanels = 2;

type Found = FoundStatistics<GridCell> & { readonly isNamed: boolean };

export function tellQuietStatistics(
  grids: readonly Grid[],
  tables: readonly SettledTable[],
  findings: Findings,
): void {
  const [found] = grids.flatMap(statisticsIn).sort((one, other) => one.chance - other.chance);
  if (found !== undefined && found.chance < DOUBTED) {
    tell(found, findings);
    return;
  }
  for (const settled of tables) {
    for (const { row, column } of meanOfAll(settled)) {
      findings.add('warning', 'statistics-unnamed', () => ({
        message: 'a number without a name of its own is the mean of the readings beside it',
        at: placeOf(settled.table, row, column),
        hint: 'if it is a mean, take it out',
      }));
    }
  }
}

function statisticsIn({ kind, rows }: Grid): readonly Found[] {
  const cells = rows.map((row) => row.flatMap((cell) => cell ?? []));
  const down = groupBy(cells.flat(), ({ panel, column }) => `${panel}\0${column}`);
  const atPoints =
    kind === 'long'
      ? groupBy(cells.flat(), ({ panel, column, point }) => `${panel}\0${column}\0${point}`)
      : new Map<string, readonly GridCell[]>();
  const isNamed = cells.some(([cell]) => (cell?.table.layout.header.length ?? 0) > 0);
  const across = kind === 'wide' ? [] : statisticsAmong(cells);
  const below = [
    ...statisticsAmong([...down.values()]),
    ...statisticsAmong([...atPoints.values()]),
  ];
  return [
    ...across.map((one) => ({ ...one, isNamed })),
    ...below.map((one) => ({ ...one, isNamed: false })),
  ];
}

function tell({ chance, figures, first, count, isNamed }: Found, findings: Findings): void {
  const names = figures.map((figure) => figureNames[figure]);
  const what = [names.slice(0, -1).join(', '), names.at(-1)].filter((name) => name !== '');
  const panels = count < 2 ? 'one panel' : `all ${count} panels that have one`;
  const number =
    names.length > 1
      ? 'numbers without a name of their own are'
      : 'a number without a name of its own is';
  const isSure = count >= fewestPanels && chance < (isNamed ? REFUSED_IF_NAMED : REFUSED);
  findings.add(isSure ? 'error' : 'warning', 'statistics-unnamed', () => ({
    message: `${number} ${what.join(' and ')} of the readings beside ${names.length > 1 ? 'them' : 'it'}, on ${panels}`,
    at: placeOf(first.table, (isNamed ? first.table.header : undefined) ?? first.row, first.column),
    hint: isSure
      ? `take ${figures.every((figure) => figure === 'mean') ? 'the means' : 'them'} out, or name their column or row`
      : 'if it is no reading, take it out',
  }));
}

/** The last row, without a point where all others have one, and the mean of them all. */
function meanOfAll({
  table,
  rules,
}: SettledTable): readonly { readonly row: Row; readonly column: number }[] {
  const { columns, readings, kind } = table.layout;
  const [pointAt, [reading]] = [columns.get('point'), readings];
  const last = table.rows.at(-1);
  if (kind !== 'long' || pointAt === undefined || reading === undefined || last === undefined)
    return [];
  const hasPoint = (row: Row): boolean => cellText(row, pointAt) !== '';
  const others = table.rows.slice(0, -1);
  if (hasPoint(last) || !others.every(hasPoint)) return [];
  const thickness = (row: Row): number | undefined => {
    const told = readReadingCell(cellText(row, reading.column), rules);
    return told.kind === 'reading' ? told.thickness : undefined;
  };
  const mean = isMean(thickness(last), others.map(thickness));
  return mean ? [{ row: last, column: reading.column }] : [];
}
