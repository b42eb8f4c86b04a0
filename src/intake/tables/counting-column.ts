/**
 * Of two columns whose names both mean the reading, the one that counts: `Messung;Wert` with 1, 2, 3 within each
 * panel in the first. It numbers the points (or the repeats of a point) and the other holds the readings; no film is
 * 1, 2, 3 µm or mil thick on one panel after the other.
 *
 * Where both count, or neither, the file does not say which of them is meant and is refused.
 */

import { notReading } from '../cells/not-readings.ts';
import { numberShape } from '../cells/numbers.ts';
import { unitNamed } from '../cells/unit.ts';
import { meansNoReading } from '../cells/words.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import { type HeaderCell, withoutRole } from '../header/header.ts';
import type { Layout } from '../header/layout.ts';
import { countedColumn, countUp } from '../header/numbered-columns.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { isStatistic, plainStatistic } from '../statistics/statistic-words.ts';
import type { Table } from './table.ts';

const fewestRows = 3;
/** One number in so many may be missing: a reading that was taken back. */
const rowsPerGap = 5;

type Counter = {
  readonly column: number;
  readonly role: 'point' | 'repeat' | undefined;
  readonly isNamed?: true;
  /** The newest reading stands first. */
  readonly isDownward?: boolean;
};
export type Settled = { readonly layout: Layout; readonly evidence: string };

/** As a step of shaping a table. */
export function takeCounter(
  table: Table,
): { readonly table: Table; readonly evidence: string } | undefined {
  const settled = settleCounter(table.layout, table.rows);
  return settled === undefined
    ? undefined
    : { table: { ...table, layout: settled.layout }, evidence: settled.evidence };
}

/** The layout with the counter known for what it is; undefined where only one column claims the reading. */
export function settleCounter(layout: Layout, rows: readonly Row[]): Settled | undefined {
  const { header } = layout;
  if (layout.kind !== 'long' || layout.repeated.length === 0) return undefined;
  // Names that stand again on the next page are no numbers.
  const own = rows.filter(({ cells }) => header.some(({ text }, k) => cells[k]?.trim() !== text));
  const claims = [...header.keys()].filter((k) => header[k]?.role === 'reading');
  const numbered = layout.repeated.filter((k) => header[k]?.role === undefined);
  const [first = -1, second = -1, third] = claims;
  if (second === -1) return amongNumbered(layout, own, first, numbered);
  if (third !== undefined || numbered.length > 0 || !layout.repeated.includes(second)) {
    return undefined;
  }
  const counters = [first, second].flatMap((k) => counterAt(layout, own, k) ?? []);
  const [counter, another] = counters;
  if (another !== undefined) return undefined;
  const taken = counter ?? pointsByName(layout, own, first);
  if (taken === undefined) return undefined;
  const reading = taken.column === first ? second : first;
  const readings = [{ column: reading, panel: null, number: null }];
  return withCounter({ ...layout, readings }, own, taken);
}

/** `Reading;r1;r2;r3`: the first counts the rows of a panel, the others hold readings. */
function amongNumbered(
  layout: Layout,
  rows: readonly Row[],
  first: number,
  columns: readonly number[],
): Settled | undefined {
  const counter = first === -1 ? undefined : counterAt(layout, rows, first);
  const counts = columns.flatMap((column) => {
    const count = countedColumn(layout.header[column]?.label ?? '');
    return count === undefined ? [] : [{ column, ...count }];
  });
  const [{ series } = { series: 'reading' as const }] = counts;
  const isSeries =
    counts.length > 1 &&
    counts.every((count) => count.series === series) &&
    countUp(counts.map(({ number }) => number));
  if (counter === undefined || !isSeries || counts.length < columns.length) return undefined;
  if (series === 'point' && counter.role === 'point') return undefined;
  const readings = counts.map(({ column, number }) => ({ column, panel: null, number }));
  return withCounter({ ...layout, kind: 'repeats', series, readings }, rows, counter);
}

function withCounter(layout: Layout, rows: readonly Row[], counter: Counter): Settled | undefined {
  const { header, readings } = layout;
  const at = new Set(readings.map(({ column }) => column));
  const isSound = [...at].every((column) => varies(rows, column));
  if (header[counter.column]?.unit !== undefined || !isSound) return undefined;
  const columns = new Map(layout.columns).set('reading', readings[0]?.column ?? -1);
  if (counter.role !== undefined) columns.set(counter.role, counter.column);
  const { role, column } = counter;
  const name = (k: number): string => `"${header[k]?.text ?? ''}"`;
  const what = { point: 'the points', repeat: 'the repeats' };
  const counts = counter.isDownward ? 'counts down to 1' : 'counts 1, 2, 3';
  const does = counter.isNamed ? 'names' : `${counts} and numbers`;
  const held =
    at.size > 1 ? 'the numbered columns hold' : `${name(readings[0]?.column ?? -1)} holds`;
  const own = layout.unknown.filter((k) => !at.has(k));
  const unknown = role === undefined ? [...own, column] : own;
  return {
    layout: {
      ...layout,
      columns,
      header: header.map((cell, k) => (k === column ? called(cell, role) : cell)),
      repeated: layout.repeated.filter((k) => k !== column && !at.has(k)),
      unknown: unknown.toSorted((a, b) => a - b),
    },
    evidence: `${name(column)} ${does} ${role === undefined ? 'the rows' : what[role]}: ${held} the readings`,
  };
}

/** `Messung;µm` with `oben`, `unten` in the first: words of which each stands once on a panel. */
function pointsByName(
  { columns }: Layout,
  rows: readonly Row[],
  column: number,
): Counter | undefined {
  if (columns.has('point')) return undefined;
  const keys = (['vehicle', 'panel', 'layer'] as const).flatMap((role) => columns.get(role) ?? []);
  const named = rows.filter((row) => !isStatistic(cellText(row, column)));
  const areWords = named.every((row) => {
    const text = cellText(row, column);
    return /^[^\d]*\p{L}[^\d]*$/u.test(text) && !isNoReading(text);
  });
  const points = named.map((row) => [...keys, column].map((k) => cellText(row, k)).join('\0'));
  const isOnce = new Set(points).size === points.length && points.length >= fewestRows;
  return areWords && isOnce ? { column, role: 'point', isNamed: true } : undefined;
}

const isNoReading = (text: string): boolean =>
  meansNoReading(text) || notReading(text) !== undefined || unitNamed(text) !== undefined;

const called = (cell: HeaderCell<GaugeRole>, role: Counter['role']): HeaderCell<GaugeRole> =>
  role === undefined ? withoutRole(cell) : { ...cell, role };

/** What a column counts, upwards or, where the newest reading stands first, downwards; undefined where it does not. */
function counterAt(layout: Layout, rows: readonly Row[], column: number): Counter | undefined {
  const upward = upwardCounter(layout, rows, column);
  if (upward !== undefined) return upward;
  const downward = upwardCounter(layout, rows.toReversed(), column);
  return downward === undefined ? undefined : { ...downward, isDownward: true };
}

function upwardCounter(
  { columns }: Layout,
  rows: readonly Row[],
  column: number,
): Counter | undefined {
  const within = (...roles: readonly GaugeRole[]): boolean =>
    countsUp(
      rows,
      column,
      roles.flatMap((role) => columns.get(role) ?? []),
    );
  if (columns.has('point')) {
    if (!columns.has('repeat') && within('vehicle', 'panel', 'layer', 'point')) {
      return { column, role: 'repeat' };
    }
    return within('vehicle', 'panel', 'layer') || within()
      ? { column, role: undefined }
      : undefined;
  }
  return within('vehicle', 'panel', 'layer') || within() ? { column, role: 'point' } : undefined;
}

/** `1`, `#2`, `3.`, `M4`: one word before them all, or none. */
const counted = /^(\D{0,12}?)[\s#.]*0*(\d{1,4})[.)]?$/u;

/** Whether a column counts up from 1 within each of the groups that other columns name, but for few gaps. */
export function countsUp(rows: readonly Row[], column: number, keys: readonly number[]): boolean {
  const last = new Map<string, number>();
  const stems = new Set<string>();
  let [own, gaps] = [0, 0];
  for (const row of rows) {
    const text = cellText(row, column);
    if (text === '' || isStatistic(text) || plainStatistic(text) === 'n') continue;
    const [, stem = '', digits] = counted.exec(text) ?? [];
    if (digits === undefined) return false;
    const key = keys.map((k) => cellText(row, k)).join('\0');
    const [number, before] = [Number(digits), last.get(key)];
    if (before !== undefined && number <= before) return false;
    gaps += Math.max(0, number - (before ?? 0) - 1);
    last.set(key, number);
    stems.add(stem);
    own += 1;
  }
  return own >= fewestRows && own > last.size && stems.size === 1 && gaps * rowsPerGap <= own;
}

/** Whether a column holds numbers, and not one number all over. */
function varies(rows: readonly Row[], column: number): boolean {
  const texts = rows.map((row) => cellText(row, column));
  const numbers = new Set(texts.filter((text) => numberShape(text) !== undefined));
  const others = texts.filter((text) => numberShape(text) === undefined && !meansNoReading(text));
  return numbers.size > 1 && others.length * 2 < texts.length;
}
