/** The rows at the end of a table that may be a summary: named by no panel that is known, and by no point. */

import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import type { Table } from '../tables/table.ts';

/** A summary has a handful of rows. */
const mostRows = 12;

export type TrailingRows = {
  readonly rows: readonly Row[];
  /** The column their word stands in, -1 where a table has none. */
  readonly labelAt: number;
};

export function trailingRows(
  table: Table,
  isNamed: (row: Row) => boolean,
  isPanel: (label: string) => boolean,
): TrailingRows {
  const labelAt = labelColumn(table);
  if (labelAt === -1) return { rows: [], labelAt };
  const { rows } = table;
  const blank = mustBeBlank(table, labelAt);
  let start = rows.length;
  for (let k = rows.length - 1; k >= 0 && rows.length - k <= mostRows; k -= 1) {
    const row = rows[k];
    if (row === undefined) break;
    const label = cellText(row, labelAt);
    const may =
      !/^\d/u.test(label) && !isPanel(label) && blank.every((c) => cellText(row, c) === '');
    if (!may && !isNamed(row)) break;
    start = k;
  }
  if (start === rows.length) return { rows: [], labelAt };
  const above = new Set(rows.slice(0, start).map((row) => cellText(row, labelAt)));
  const own = rows.slice(start);
  const after = own.findLastIndex((row) => above.has(cellText(row, labelAt)) && !isNamed(row));
  return { rows: own.slice(after + 1), labelAt };
}

/** Where rows are named: the panel, else the number of the point, else a first column without a name. */
function labelColumn({ layout, header }: Table): number {
  const { columns, kind, readings } = layout;
  if (header === undefined) return -1;
  if (kind !== 'wide') return columns.get('panel') ?? -1;
  const own = columns.get('point') ?? columns.get('repeat');
  if (own !== undefined) return own;
  const first = layout.header[0];
  return first?.text === '' && readings[0]?.column !== 0 ? 0 : -1;
}

/** What only a reading has: a point, a time, somebody who measured it. */
const ofReadings = ['point', 'repeat', 'time', 'operator', 'substrate', 'layer', 'note'] as const;
const mustBeBlank = ({ layout }: Table, labelAt: number): readonly number[] =>
  ofReadings
    .flatMap((role: GaugeRole) => layout.columns.get(role) ?? [])
    .filter((column) => column !== labelAt);

/** Whether all rows of readings have a point, a number or a panel, and the row in question has not. */
export function lacksWhatReadingsHave(
  { layout }: Table,
  readings: readonly Row[],
  row: Row,
  labelAt: number,
): boolean {
  if (layout.kind === 'wide') return readings.every((own) => /^\d/u.test(cellText(own, labelAt)));
  const roles: readonly GaugeRole[] = ['panel', 'point', 'repeat'];
  return roles
    .flatMap((role) => layout.columns.get(role) ?? [])
    .some(
      (column) =>
        cellText(row, column) === '' && readings.every((own) => cellText(own, column) !== ''),
    );
}
