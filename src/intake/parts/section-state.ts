/** What is known of a file while its rows are read from the top, and what a row is by its looks. */

import { roleOfKey, type Saying } from '../beside/sayings.ts';
import { numberShape } from '../cells/numbers.ts';
import { unitNamed } from '../cells/unit.ts';
import type { Findings } from '../findings.ts';
import type { Layout, LayoutContext } from '../header/layout.ts';
import type { Source } from '../rows/source.ts';
import type { Delimiter, Row } from '../rows/tokens.ts';
import type { Given, Metadatum, Table } from '../tables/table.ts';

export type Parts = {
  readonly tables: readonly Table[];
  readonly metadata: readonly Metadatum[];
  /** Sayings about the unit, which hold for the tables below them. */
  readonly units: readonly UnitLine[];
  readonly evidence: readonly string[];
  /** `Mean: 101.3` in a line of its own. */
  readonly statistics: readonly { readonly row: Row; readonly saying: Saying }[];
  /** Tables of the statistics of each panel. */
  readonly summaries: readonly Summary[];
  /** Lines above the first table that say nothing of it. */
  readonly above: readonly Row[];
};

/**
 * A line that names a unit: of the tables below it, or as the last line of the file of all above it. One by which the
 * gauge was `set` to a unit is never said of what stands above.
 */
export type UnitLine = {
  readonly row: Row;
  readonly saying: Saying;
  readonly ofAll?: true;
  readonly set?: true;
};

export type Summary = { readonly header: Row; readonly rows: readonly Row[] };

/** The first table of a file: its layout, and its header where it has one. */
export type TableStart = {
  readonly layout: Layout;
  readonly header: Row | undefined;
  /** The line of the header, or of the first row without one; what stands above is no row. */
  readonly line: number;
  /** The panel of all rows, where only the user names it. */
  readonly panel?: string | undefined;
};

/** A file split into rows, with what is known of its first table. */
export type Split = {
  readonly source: Source;
  readonly delimiter: Delimiter;
  /** How the delimiter is called in the decisions. */
  readonly shown: string;
  readonly rows: readonly Row[];
  readonly start: TableStart;
  readonly context: LayoutContext;
  readonly evidence: readonly string[];
};

export type Reader = {
  readonly source: Source;
  readonly delimiter: Delimiter;
  readonly context: LayoutContext;
  readonly findings: Findings;
};
export type State = {
  readonly tables: Table[];
  readonly metadata: Metadatum[];
  readonly units: UnitLine[];
  readonly evidence: string[];
  readonly statistics: { row: Row; saying: Saying }[];
  readonly summaries: Summary[];
  /** Lines of text above the first table, which each page may repeat. */
  readonly titles: Set<string>;
  /** Lines above the first table that say nothing of it. */
  readonly above: Row[];
  layout: Layout;
  header: Row | undefined;
  given: Given;
  rows: Row[];
  /** Whether the rows belong to a table that holds no readings of a known layout. */
  foreign: ForeignTable | undefined;
  /** The last line of text that was no row of a table. */
  asideLine: number;
};
type ForeignTable = { readonly header: Row; readonly rows: Row[] };

export const startsAsNumber = (text: string): boolean => {
  const code = text.charCodeAt(0);
  return code >= 48 && code <= 57;
};
export const isNumber = (text: string): boolean => text !== '' && numberShape(text) !== undefined;

/** Whether a cell where a reading should stand begins as a number. */
export function isDataRow({ cells }: Row, { readings }: Layout): boolean {
  for (const { column } of readings) {
    const text = cells[column];
    if (text !== undefined && (startsAsNumber(text) || isNumber(text.trim()))) return true;
  }
  return false;
}

/** A unit of the readings; `Temperature unit: °C` is none of theirs. */
export const namesUnit = ({ key, value }: Saying): boolean =>
  roleOfKey(key) === 'unit' ||
  (unitNamed(value) !== undefined && roleOfKey(/\S+$/u.exec(key)?.[0] ?? '') === 'unit');

/** Whether a line above the rows must name their panel. */
export const needsPanel = ({ columns, readings }: Layout): boolean =>
  !columns.has('panel') && readings.every(({ panel }) => panel === null);

export const plain = (text: string | undefined): string =>
  (text ?? '').trim().normalize('NFC').toLowerCase();

export function sameNames({ cells }: Row, header: Row | undefined): boolean {
  if (header === undefined) return false;
  const length = Math.max(cells.length, header.cells.length);
  for (let k = 0; k < length; k += 1) {
    if (plain(cells[k]) !== plain(header.cells[k])) return false;
  }
  return true;
}
