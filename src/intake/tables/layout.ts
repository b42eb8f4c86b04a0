/**
 * How a table of readings is laid out, from the names of its columns:
 * *long*, one reading a row under a panel and a reading column; *repeats*, several numbered columns
 * of readings a row; *wide*, one column a panel; *blocks*, either of the first two without a column
 * of panels, since a line above the rows names it. A *list* has no names of columns at all.
 */

import { namesStatistic } from '../statistics/statistic-words.ts';
import { withBorrowedRoles, withoutCorner } from './borrowed-roles.ts';
import { type GaugeRole, gaugeVocabulary } from './gauge-vocabulary.ts';
import { type HeaderCell, headerReader } from './header.ts';
import { type Counted, countedColumn, countUp } from './numbered-columns.ts';

import { placeColumns } from './place-columns.ts';

export type LayoutName = 'long' | 'wide' | 'repeats' | 'blocks' | 'list';

export type Layout = {
  readonly kind: LayoutName;
  /** Empty where no line names the columns. */
  readonly header: readonly HeaderCell<GaugeRole>[];
  /** Where each role stands, the first column if several claim it. */
  readonly columns: ReadonlyMap<GaugeRole, number>;
  readonly readings: readonly ReadingColumn[];
  /** What the numbers of the columns of readings count. */
  readonly series: Counted['series'];
  /** Columns that mean nothing yet. */
  readonly unknown: readonly number[];
  /** Second columns of a role that decides something. */
  readonly repeated: readonly number[];
};
export type ReadingColumn = {
  readonly column: number;
  /** In a wide table each belongs to a panel. */
  readonly panel: string | null;
  /** Its number among numbered columns. */
  readonly number: number | null;
  /** The place on the panel that the column is called after. */
  readonly place?: string;
};

export type LayoutContext = {
  readonly isPanel: (label: string) => boolean;
  /** Whether lines name the panels, so that a table needs no column of them. */
  readonly captions: boolean;
  /** The layout that the user names, and no other is taken. */
  readonly layout?: LayoutName | undefined;
  /** Column → role, as the user says for this row of names; undefined if it is not the row. */
  readonly given?:
    | ((cells: readonly string[]) => ReadonlyMap<number, GaugeRole> | undefined)
    | undefined;
};

const readHeader = headerReader(gaugeVocabulary);
/** Roles that texts are kept of: two of them (date, time) are read as one. */
export const joinedRoles: ReadonlySet<GaugeRole> = new Set([
  'operator',
  'time',
  'substrate',
  'note',
]);
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

export const readGaugeHeader = (cells: readonly string[]): HeaderCell<GaugeRole>[] =>
  cells.map((cell) => nameless(readHeader(cell)));

/** A column headed by nothing but a unit of thickness holds the readings. */
const nameless = (cell: HeaderCell<GaugeRole>): HeaderCell<GaugeRole> =>
  cell.label === '' && cell.unit !== undefined
    ? { ...cell, role: 'reading' }
    : isPlaceInUnit(cell) || isLayerInUnit(cell)
      ? withoutRole(cell)
      : cell;

/** `U µm` is a length, and no place across the panel: its uncertainty, perhaps. */
const isPlaceInUnit = ({ role, unit }: HeaderCell<GaugeRole>): boolean =>
  (role === 'u' || role === 'v') && unit !== undefined;

/** `Schicht (µm)` is how thick the film is; the name of a layer has no unit. */
const isLayerInUnit = ({ role, unit }: HeaderCell<GaugeRole>): boolean =>
  role === 'layer' && unit !== undefined;

function withoutRole(cell: HeaderCell<GaugeRole>): HeaderCell<GaugeRole> {
  const { role: _, ...rest } = cell;
  return rest;
}

/** The layout a row of names stands for, or undefined if the row is no header. */
export function layoutOf(cells: readonly string[], context: LayoutContext): Layout | undefined {
  const layout = anyLayoutOf(cells, context);
  return context.layout === undefined || layout?.kind === context.layout ? layout : undefined;
}

function anyLayoutOf(cells: readonly string[], context: LayoutContext): Layout | undefined {
  const given = context.given?.(cells);
  if (context.given !== undefined && given === undefined) return undefined;
  const named = readGaugeHeader(cells);
  const header = given === undefined ? withBorrowedRoles(named) : withGivenRoles(named, given);
  const { columns, repeated } = columnsByRole(header);
  if (columns.get('reading') === 0 && !columns.has('panel') && header[0]?.label === '') {
    const corner = cornerLayout(header, repeated, context);
    if (corner !== undefined) return corner;
  }
  const { readings, series, spare } = readingColumns(header, columns);
  if (readings.length === 0) {
    return columns.has('panel')
      ? cornerLayout(header, repeated, context)
      : wideLayout(header, columns, repeated, context);
  }
  if (!columns.has('panel') && (!context.captions || columns.has('unit'))) return undefined;
  if (!isNamed(header, readings)) return undefined;
  const taken = new Set(readings.map(({ column }) => column));
  const unknown = [...header.keys()].filter(
    (k) => header[k]?.role === undefined && header[k]?.text !== '' && !taken.has(k),
  );
  const several = readings.length > 1 || readings[0]?.number !== null;
  const kind = columns.has('panel') ? (several ? 'repeats' : 'long') : 'blocks';
  const doubled = repeated.filter((column) => !taken.has(column));
  return { kind, header, columns, readings, series, unknown, repeated: [...doubled, ...spare] };
}

/**
 * A column that is known; or two and more that count, beside a name. Of `Bonnet;118` and `1` under a comma the
 * one number is the decimals of a reading.
 */
const isNamed = (
  header: readonly HeaderCell<GaugeRole>[],
  readings: readonly ReadingColumn[],
): boolean =>
  header.some(({ role }) => role !== undefined) ||
  (readings.length > 1 && header.some(({ label }) => /\p{L}/u.test(label)));

function withGivenRoles(
  header: readonly HeaderCell<GaugeRole>[],
  given: ReadonlyMap<number, GaugeRole> | undefined,
): readonly HeaderCell<GaugeRole>[] {
  if (given === undefined) return header;
  const named = new Set(given.values());
  return header.map((cell, column) => {
    const role = given.get(column);
    if (role !== undefined) return { ...cell, role };
    // What the user names is no longer looked for among the others.
    if (cell.role === undefined || !named.has(cell.role)) return cell;
    const { role: _, ...rest } = cell;
    return rest;
  });
}

function columnsByRole(header: readonly HeaderCell<GaugeRole>[]): {
  readonly columns: ReadonlyMap<GaugeRole, number>;
  readonly repeated: readonly number[];
} {
  const columns = new Map<GaugeRole, number>();
  const repeated: number[] = [];
  for (const [column, { role }] of header.entries()) {
    if (role === undefined) continue;
    if (!columns.has(role)) columns.set(role, column);
    else if (!joinedRoles.has(role)) repeated.push(column);
  }
  return { columns, repeated };
}

type ReadingColumns = {
  readonly readings: readonly ReadingColumn[];
  readonly series: Counted['series'];
  /** Columns that cannot be readings beside these. */
  readonly spare: readonly number[];
};

/** The one column of readings, the numbered ones, or several headed by nothing but their unit. */
function readingColumns(
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
    const places = columns.has('panel') ? placeColumns(header) : [];
    const each = places.map((column, k) => {
      const place = header[column]?.label ?? '';
      return { column, panel: null, number: k + 1, place };
    });
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

/** A column for each panel, two and more of them, under a corner that is called "panel". */
function cornerLayout(
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

function wideLayout(
  header: readonly HeaderCell<GaugeRole>[],
  columns: ReadonlyMap<GaugeRole, number>,
  repeated: readonly number[],
  { isPanel }: LayoutContext,
): Layout | undefined {
  // Told first, for to ask whether a text names a panel takes long, and rows of readings are many.
  if (header.length < 2 || header.some(({ text }) => startsAsNumber.test(text))) return undefined;
  const readings: ReadingColumn[] = [];
  const unknown: number[] = [];
  for (const [column, cell] of header.entries()) {
    if (cell.role === undefined && namesStatistic(cell.label)) {
      unknown.push(column);
      continue;
    }
    const panel = [cell.text, cell.label].find((name) => name !== '' && isPanel(name));
    if (panel !== undefined) readings.push({ column, panel: cell.label, number: null });
    else if (cell.role !== undefined && !wideRoles.has(cell.role)) return undefined;
    else if (cell.role === undefined && cell.text !== '') unknown.push(column);
  }
  const roles = [...columns].filter(([, column]) => !readings.some((r) => r.column === column));
  const enough = readings.length >= 2 || (readings.length === 1 && roles.length >= 1);
  if (!enough) return undefined;
  const rest = { series: 'reading', unknown, repeated } as const;
  return { kind: 'wide', header, columns: new Map(roles), readings, ...rest };
}
