/**
 * The columns of readings in a header: the one that is called so, numbered ones, or several that are called by
 * nothing but their unit, after places, or by a series of letters.
 */
import type { GaugeRole } from './gauge-vocabulary.ts';
import type { HeaderCell } from './header.ts';
import type { ReadingColumn } from './layout-shape.ts';
import { type Counted, countedColumn, countUp } from './numbered-columns.ts';
import { placeColumns } from './place-columns.ts';
import { seriesColumns } from './series-columns.ts';
import { sideHeadings } from './side-headings.ts';

type ReadingColumns = {
  readonly readings: readonly ReadingColumn[];
  readonly series: Counted['series'];
  /** Columns that cannot be readings beside these. */
  readonly spare: readonly number[];
};

/** The one column of readings, the numbered ones, or several headed by nothing but their unit. */
export function readingColumns(
  header: readonly HeaderCell<GaugeRole>[],
  columns: ReadonlyMap<GaugeRole, number>,
): ReadingColumns {
  const counted = [...header.entries()].flatMap(([column, { role, label }]) => {
    const count = role === undefined ? countedColumn(label) : undefined;
    return count === undefined ? [] : [{ column, ...count }];
  });
  const series = counted[0]?.series ?? 'reading';
  const own = counted.filter((count) => count.series === series);
  const numbered = own.map(({ column, number }) => ({ column, panel: null, number }));
  const first = columns.get('reading');
  if (first === undefined) {
    if (countUp(own.map(({ number }) => number))) return { readings: numbered, series, spare: [] };
    const sided = columns.has('panel') ? sideHeadings(header) : [];
    if (sided.length > 0) return { readings: sided, series: 'reading', spare: [] };
    const places = columns.has('panel') ? placeColumns(header) : [];
    if (places.length > 0 || !columns.has('panel')) {
      const each = places.map((column, k) => {
        const place = header[column]?.label ?? '';
        return { column, panel: null, number: k + 1, place };
      });
      return { readings: each, series: 'reading', spare: [] };
    }
    const each = seriesColumns(header).map((column, k) => ({ column, panel: null, number: k + 1 }));
    return { readings: each, series: 'reading', spare: [] };
  }
  if (
    own.length > 0 &&
    countUp(
      own.map(({ number }) => number),
      [2],
    )
  ) {
    return {
      readings: [{ column: first, panel: null, number: 1 }, ...numbered],
      series,
      spare: [],
    };
  }
  const alike = columnsAlike(header, first);
  if (alike.length > 1) {
    const each = alike.map((column, k) => ({ column, panel: null, number: k + 1 }));
    return { readings: each, series: 'reading', spare: own.map(({ column }) => column) };
  }
  const readings = [{ column: first, panel: null, number: null }];
  return { readings, series: 'reading', spare: own.map(({ column }) => column) };
}

/**
 * `µm;µm;µm`: columns headed by one unit and no name are those of one panel’s readings. So are three and more
 * of one name; of two, one may be the other again.
 */
function columnsAlike(header: readonly HeaderCell<GaugeRole>[], first: number): readonly number[] {
  const { text, label, unit } = header[first] ?? {};
  const alike = [...header.keys()].filter((k) => header[k]?.text === text);
  return (label === '' && unit !== undefined) || alike.length >= 3 ? alike : [];
}
