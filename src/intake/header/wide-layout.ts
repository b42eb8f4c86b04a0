/** A table with a column for each panel. */
import { foldedText } from '../cells/doubting-words.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { withoutCorner } from './borrowed-roles.ts';
import { columnsByRole } from './columns-by-role.ts';
import type { GaugeRole } from './gauge-vocabulary.ts';
import type { HeaderCell } from './header.ts';
import type { Layout, LayoutContext, ReadingColumn } from './layout-shape.ts';
import { arePlaceCodes } from './place-codes.ts';
import { isPlaceName } from './place-columns.ts';
import { pointsInHeadings } from './points-in-headings.ts';
import { taggedColumns } from './tagged-columns.ts';

const wideRoles: ReadonlySet<GaugeRole> = new Set([
  'point',
  'repeat',
  'vehicle',
  'operator',
  'time',
  'layer',
  'note',
  'place',
  'unit',
  'deleted',
  'valid',
  'status',
]);

/** A column for each panel, two and more of them, under a corner that is called "panel". */
export function cornerLayout(
  header: readonly HeaderCell<GaugeRole>[],
  repeated: readonly number[],
  context: LayoutContext,
): Layout | undefined {
  const own = withoutCorner(header);
  const { columns } = columnsByRole(own);
  if (columns.get('point') !== 0 || columns.has('panel') || repeated.length > 0) return undefined;
  const layout = wideLayout(own, columns, repeated, context);
  return layout === undefined || layout.readings.length < 2 ? undefined : layout;
}

const startsAsNumber = /^[+\-−]?[.,]?\d/u;

export function wideLayout(
  header: readonly HeaderCell<GaugeRole>[],
  columns: ReadonlyMap<GaugeRole, number>,
  repeated: readonly number[],
  context: LayoutContext,
): Layout | undefined {
  const tagged = taggedColumns(header);
  if (tagged !== undefined) return ofNumbered(header, tagged, columns, repeated);
  // Told first, for to ask whether a text names a panel takes long, and rows of readings are many.
  if (header.length < 2 || header.some(({ text }) => startsAsNumber.test(text))) return undefined;
  const pointed = pointsInHeadings(header, context.isPanel);
  if (pointed !== undefined) {
    return { ...ofNumbered(header, pointed, columns, repeated), series: 'point' };
  }
  const readings: ReadingColumn[] = [];
  const unknown: number[] = [];
  for (const [column, cell] of header.entries()) {
    if (cell.role === undefined && isStatisticHere(cell.label, header)) {
      unknown.push(column);
      continue;
    }
    const panel = [cell.text, cell.label].find((name) => name !== '' && context.isPanel(name));
    if (panel !== undefined) readings.push({ column, panel: cell.label, number: null });
    else if (cell.role !== undefined && !wideRoles.has(cell.role)) return undefined;
    else if (cell.role === undefined && cell.text !== '') unknown.push(column);
  }
  const roles = [...columns].filter(([, column]) => !readings.some((r) => r.column === column));
  const rest = {
    kind: 'wide',
    header,
    columns: new Map(roles),
    series: 'reading',
    repeated,
  } as const;
  const enough = readings.length >= 2 || (readings.length === 1 && roles.length >= 1);
  if (enough) return { ...rest, readings, unknown };
  const coded = codedPanels(header, readings, unknown, context);
  return coded === undefined ? undefined : { ...rest, readings: coded, unknown: [] };
}

/** Columns that their own names tell to be readings; the others say something of the row, or nothing. */
function ofNumbered(
  header: readonly HeaderCell<GaugeRole>[],
  readings: readonly ReadingColumn[],
  columns: ReadonlyMap<GaugeRole, number>,
  repeated: readonly number[],
): Layout {
  const taken = new Set(readings.map(({ column }) => column));
  const unknown = [...header.keys()].filter(
    (k) => header[k]?.role === undefined && header[k]?.text !== '' && !taken.has(k),
  );
  return { kind: 'wide', header, columns, readings, series: 'reading', unknown, repeated };
}

/** `Porte AVG` apart, AVG beside AVD is the front left of a French car and no average. */
const isStatisticHere = (label: string, header: readonly HeaderCell<GaugeRole>[]): boolean =>
  namesStatistic(label) &&
  !(/^avg$/iu.test(label) && header.some((other) => /^avd$/iu.test(other.label)));

/**
 * Columns under names that say where on the car, or under codes, beside a first column of points: `LF`, `RF`,
 * `ant. sx`.
 */
function codedPanels(
  header: readonly HeaderCell<GaugeRole>[],
  known: readonly ReadingColumn[],
  unknown: readonly number[],
  { mayBePanel }: LayoutContext,
): readonly ReadingColumn[] | undefined {
  const [corner] = header;
  const isCorner = corner?.text === '' || corner?.role === 'point' || corner?.role === 'repeat';
  const columns = unknown.filter((column) => column !== 0 || isCorner);
  const isCountSign = unknown[0] === 0 && /^n\W*[ro]?\W*$|^#$/iu.test(corner?.label ?? '');
  const own = isCountSign ? columns.filter((column) => column !== 0) : columns;
  if (!isCorner && !isCountSign) return undefined;
  const labels = own.map((column) => header[column]?.label ?? '');
  // `Left` and `Right` are two places on the panel of each row as well.
  if (labels.some((label) => isPlaceName(foldedText(label)))) return undefined;
  const all = [...known.flatMap(({ panel }) => panel ?? []), ...labels];
  if (own.length === 0 || new Set(all).size < all.length) return undefined;
  if (!arePlaceCodes(all, mayBePanel)) return undefined;
  const found = own.map((column): ReadingColumn => {
    return { column, panel: header[column]?.label ?? '', number: null };
  });
  return [...known, ...found].sort((a, b) => a.column - b.column);
}
