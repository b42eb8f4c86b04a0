/**
 * How a table of readings is laid out: *long*, one reading a row under a panel and a reading
 * column, or *wide*, one column a panel with a reading of it in each row.
 */
import { type GaugeRole, gaugeVocabulary, type HeaderCell, headerReader } from './header.ts';
import { namesStatistic } from './statistic-words.ts';

export type Layout = {
  readonly kind: 'long' | 'wide';
  readonly header: readonly HeaderCell<GaugeRole>[];
  /** Where each role stands, the first column if several claim it. */
  readonly columns: ReadonlyMap<GaugeRole, number>;
  /** The columns of readings; a wide one belongs to a panel. */
  readonly readings: readonly ReadingColumn[];
  /** Columns that mean nothing yet. */
  readonly unknown: readonly number[];
  /** Second columns of a role that decides something. */
  readonly repeated: readonly number[];
};
export type ReadingColumn = { readonly column: number; readonly panel: string | null };

const readHeader = headerReader(gaugeVocabulary);
/** Roles the readings do not take anything from: two of them (date, time) do no harm. */
const unusedRoles: ReadonlySet<GaugeRole> = new Set(['operator', 'time', 'substrate', 'note']);
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
]);

export const readGaugeHeader = (cells: readonly string[]): HeaderCell<GaugeRole>[] =>
  cells.map((cell) => nameless(readHeader(cell)));

/** A column headed by nothing but a unit of thickness holds the readings. */
const nameless = (cell: HeaderCell<GaugeRole>): HeaderCell<GaugeRole> =>
  cell.label === '' && cell.unit !== undefined ? { ...cell, role: 'reading' } : cell;

/** The layout a row of names stands for, or undefined if the row is no header. */
export function layoutOf(
  cells: readonly string[],
  isPanel: (label: string) => boolean,
): Layout | undefined {
  const header = readGaugeHeader(cells);
  const columns = new Map<GaugeRole, number>();
  const repeated: number[] = [];
  for (const [column, { role }] of header.entries()) {
    if (role === undefined) continue;
    if (!columns.has(role)) columns.set(role, column);
    else if (!unusedRoles.has(role)) repeated.push(column);
  }
  const reading = columns.get('reading');
  const unknown = [...header.keys()].filter(
    (k) => header[k]?.role === undefined && header[k]?.text !== '',
  );
  if (reading !== undefined && columns.has('panel')) {
    const readings = [{ column: reading, panel: null }];
    return { kind: 'long', header, columns, readings, unknown, repeated };
  }
  if (reading !== undefined || columns.has('panel')) return undefined;
  return wideLayout(header, columns, repeated, isPanel);
}

function wideLayout(
  header: readonly HeaderCell<GaugeRole>[],
  columns: ReadonlyMap<GaugeRole, number>,
  repeated: readonly number[],
  isPanel: (label: string) => boolean,
): Layout | undefined {
  const readings: ReadingColumn[] = [];
  const unknown: number[] = [];
  for (const [column, cell] of header.entries()) {
    if (/^[+\-−]?[.,]?\d/u.test(cell.text)) return undefined;
    if (cell.role === undefined && namesStatistic(cell.label)) {
      unknown.push(column);
      continue;
    }
    const panel = [cell.text, cell.label].find((name) => name !== '' && isPanel(name));
    if (panel !== undefined) readings.push({ column, panel: cell.label });
    else if (cell.role !== undefined && !wideRoles.has(cell.role)) return undefined;
    else if (cell.role === undefined && cell.text !== '') unknown.push(column);
  }
  const roles = [...columns].filter(([, column]) => !readings.some((r) => r.column === column));
  const enough = readings.length >= 2 || (readings.length === 1 && roles.length >= 1);
  if (!enough) return undefined;
  return { kind: 'wide', header, columns: new Map(roles), readings, unknown, repeated };
}
