/**
 * Means, least and largest values and the like that no word gives away: at the start or the end of a line of
 * readings, in the first or last row of a panel, or in its row without a point.
 *
 * A number that is the mean of the readings beside it may be a reading by chance. Where it is so on every panel, how
 * likely chance is says what to do (`statistics-by-chance.ts`): it is refused, for read as a reading it would count
 * the others twice; or doubted aloud.
 */
import { groupBy } from '../../base/group-by.ts';
import type { Findings } from '../findings.ts';
import type { Grid, GridCell } from '../readings/number-grid.ts';
import { figureNames } from '../statistics/group-figures.ts';
import {
  type FoundStatistics,
  meanOfAll,
  statisticsAmong,
} from '../statistics/statistics-by-chance.ts';
import { placeOf } from '../tables/table.ts';

/** What chance does less often is no chance. */
const REFUSED = 1e-4;
/** The same of a column that the user called a reading, by a number. */
const REFUSED_IF_NAMED = 1e-8;
const DOUBTED = 2e-3;
/** The same of a mean that stands last on every panel, as people write it; each try counts, so that half of it is no chance yet. */
const DOUBTED_IF_LAST = 2;
const fewestBesideLast = 3;
/** One panel alone proves nothing. */
const fewestPanels = 2;

type Found = FoundStatistics<GridCell> & {
  readonly isNamed: boolean;
  readonly isLastMean: boolean;
  /** Of all readings, and not of those of a panel. */
  readonly isOfAll?: true;
};

export function tellQuietStatistics(grids: readonly Grid[], findings: Findings): void {
  const [found] = grids.flatMap(statisticsIn).sort((one, other) => one.chance - other.chance);
  if (found === undefined) return;
  if (found.chance < (found.isLastMean ? DOUBTED_IF_LAST : DOUBTED)) tell(found, findings);
}

function statisticsIn({ kind, rows }: Grid): readonly Found[] {
  const cells = rows.map((row) => row.flatMap((cell) => cell ?? []));
  const down = groupBy(cells.flat(), ({ panel, column }) => `${panel}\0${column}`);
  const atPoints =
    kind === 'long'
      ? groupBy(cells.flat(), ({ panel, column, point }) => `${panel}\0${column}\0${point}`)
      : new Map<string, readonly GridCell[]>();
  const across = kind === 'wide' ? [] : among(cells);
  const below = [...among([...down.values()]), ...among([...atPoints.values()])];
  const all = kind === 'long' ? meanOfAll(cells.flat()) : undefined;
  return [
    ...across.map((one) => ({ ...one, isNamed: hasName(one.first) })),
    ...below.map((one) => ({ ...one, isNamed: false })),
    ...(all === undefined
      ? []
      : [{ ...all, isNamed: false, isLastMean: false, isOfAll: true as const }]),
  ];
}

function among(groups: readonly (readonly GridCell[])[]) {
  const areLong =
    groups.length >= fewestPanels && groups.every(({ length }) => length > fewestBesideLast);
  const lasts = new Set(groups.map((group) => group.at(-1)));
  return statisticsAmong(groups).map((one) => {
    const isLoneMean = one.figures.length === 1 && one.figures[0] === 'mean';
    const isLastMean = isLoneMean && areLong && one.count === groups.length && lasts.has(one.first);
    return { ...one, isLastMean };
  });
}

const hasName = ({ table, column }: GridCell): boolean =>
  (table.layout.header[column]?.text ?? '') !== '';

function tell(
  { chance, figures, first, count, isNamed, isOfAll }: Found,
  findings: Findings,
): void {
  const names = figures.map((figure) => figureNames[figure]);
  const what = [names.slice(0, -1).join(', '), names.at(-1)].filter((name) => name !== '');
  const panels = count < 2 ? 'one panel' : `all ${count} panels that have one`;
  const on = isOfAll === true ? '' : `, on ${panels}`;
  const number =
    names.length > 1
      ? 'numbers without a name of their own are'
      : 'a number without a name of its own is';
  const isSure = count >= fewestPanels && chance < (isNamed ? REFUSED_IF_NAMED : REFUSED);
  findings.add(isSure ? 'error' : 'warning', 'statistics-unnamed', () => ({
    message: `${number} ${what.join(' and ')} of the readings beside ${names.length > 1 ? 'them' : 'it'}${on}`,
    at: placeOf(first.table, (isNamed ? first.table.header : undefined) ?? first.row, first.column),
    hint: isSure
      ? `take ${figures.every((figure) => figure === 'mean') ? 'the means' : 'them'} out, or name their column or row`
      : 'if it is no reading, take it out',
  }));
}
