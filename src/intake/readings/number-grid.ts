/**
 * The numbers of tables as they stand side by side: line by line, and down the rows of a panel. Blocks of one shape are
 * one grid, whatever panels stand above them.
 */
import { groupBy } from '../../base/group-by.ts';
import { readReadingCell } from '../cells/reading-cell.ts';
import { micrometresPer } from '../cells/unit.ts';
import type { Layout } from '../header/layout.ts';
import { startsAsNumber } from '../parts/section-state.ts';
import { someText } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Source } from '../rows/source.ts';
import type { Row } from '../rows/tokens.ts';
import type { ColumnNumber } from '../statistics/predictable-column.ts';
import type { Table } from '../tables/table.ts';
import type { SettledTable } from './readings.ts';

export type GridCell = ColumnNumber & {
  readonly table: Table;
  readonly row: Row;
  readonly column: number;
  /** Its vehicle, panel and layer. */
  readonly panel: string;
  readonly point: string;
  /** Whether the other rows name their points and its own does not. */
  readonly isPointless: boolean;
  /** Whether a rule, an empty line or an empty cell parts it from the number before it. */
  readonly isApart: boolean;
};

/** The cells of one line in the order of its columns; undefined where one gives no reading. */
export type GridRow = readonly (GridCell | undefined)[];

export type Grid = { readonly kind: Layout['kind']; readonly rows: readonly GridRow[] };

/** What a sheet computes, it computes on every panel: a longer file shows it in its first rows. */
const mostRows = 1000;

export function gridsOf(tables: readonly SettledTable[]): readonly Grid[] {
  const shapes = groupBy(tables, ({ table: { layout, header } }) =>
    [layout.kind, header === undefined, ...layout.readings.map(({ column }) => column)].join(),
  );
  return [...shapes.values()].map((own) => {
    const rows = own.flatMap((settled) => rowsOf(settled)).slice(0, mostRows);
    return { kind: own[0].table.layout.kind, rows: joinedLines(rows) };
  });
}

function rowsOf(settled: SettledTable): readonly GridRow[] {
  const { table, rules } = settled;
  const { layout, given } = table;
  const at = (role: 'vehicle' | 'panel' | 'layer' | 'point') => layout.columns.get(role) ?? -1;
  const keys = [at('vehicle'), at('panel'), at('layer')];
  const pointAt = layout.columns.get('point') ?? layout.columns.get('repeat') ?? countAt(table);
  const isPoint = pointNames(table, pointAt);
  const per = micrometresPer[rules.unit];
  const belowGap = rowsBelowGap(table);
  return table.rows.slice(0, mostRows).map((row) => {
    const own = [...keys.map((k) => cellText(row, k)), given.panel ?? '', given.vehicle ?? ''];
    const point = cellText(row, pointAt);
    const about = { table, row, point, isPointless: isPoint !== undefined && !isPoint(point) };
    const isBelow = belowGap.has(row);
    return layout.readings.map(({ column, panel }, k) => {
      const told = readReadingCell(cellText(row, column), rules);
      if (told.kind !== 'reading') return undefined;
      const step = 10 ** -(told.decimals ?? 0);
      const value = Number((told.thickness / per).toPrecision(12));
      const isBehind = layout.kind !== 'wide' && k > 0;
      const isApart = isBehind ? cellText(row, column - 1) === '' : isBelow;
      return { ...about, isApart, value, step, column, panel: [...own, panel ?? ''].join('\0') };
    });
  });
}

/** Rows below a line of nothing but signs, or none. */
function rowsBelowGap({ source, rows }: Table): ReadonlySet<Row> {
  const below = new Set<Row>();
  let above: Row | undefined;
  let isGap = false;
  for (const row of rows.slice(0, mostRows)) {
    isGap ||= row.cells.every(isSigns) || (above !== undefined && gapBetween(source, above, row));
    above = row;
    if (row.cells.every(isSigns)) continue;
    if (isGap) below.add(row);
    isGap = false;
  }
  return below;
}

const gapBetween = ({ text }: Source, above: Row, row: Row): boolean =>
  row.line - above.line > 1 &&
  text.slice(above.start, row.start).split('\n').slice(1, -1).some(isSigns);

const isSigns = (text: string): boolean => !/[a-z\d]/i.test(text) && !/[\p{L}\p{N}]/u.test(text);

/** A first column without a name that numbers most rows, as points are numbered under a corner that is left empty. */
function countAt({ layout: { header, readings }, rows }: Table): number {
  const [corner] = header;
  if (corner?.text !== '' || corner.role !== undefined || readings[0]?.column === 0) return -1;
  const own = rows.slice(0, mostRows);
  return own.filter((row) => startsAsNumber(cellText(row, 0))).length * 3 > own.length * 2 ? 0 : -1;
}

/** What is the name of a point there; undefined where every row has one. */
function pointNames({ rows }: Table, column: number): ((point: string) => boolean) | undefined {
  if (column === -1) return undefined;
  const isNumbered = someText(rows, column, startsAsNumber);
  const isName = (point: string): boolean => (isNumbered ? startsAsNumber(point) : point !== '');
  return someText(rows, column, (point) => !isName(point)) ? isName : undefined;
}

/** Of lines as people type them each number is a row of its own. */
function joinedLines(rows: readonly GridRow[]): readonly GridRow[] {
  const lines: (readonly (GridCell | undefined)[])[] = [];
  let above: Row | undefined;
  for (const row of rows) {
    const own = row.find((cell) => cell !== undefined)?.row;
    const isSame = own !== undefined && above !== undefined && own.start === above.start;
    if (isSame) lines.push([...(lines.pop() ?? []), ...row]);
    else lines.push(row);
    above = own ?? above;
  }
  return lines;
}
