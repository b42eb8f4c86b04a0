/** A table whose columns are known, and what is said of a cell that gives no reading. */
import type { Place } from '../../base/diagnostics.ts';
import type { PointPlace } from '../../film/reading.ts';
import type { Layout } from '../header/layout.ts';
import type { Source } from '../rows/source.ts';
import { cellSpan, type Delimiter, type Row } from '../rows/tokens.ts';

/** Why a cell gives no reading, in one word. */
export type ExcludedClass =
  | 'missing'
  | 'over-range'
  | 'error'
  | 'deleted'
  | 'not-film'
  | 'statistics';

export type ExcludedCell = {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly text: string;
  readonly class: ExcludedClass;
  readonly reason: string;
  /** Whose it would have been as a reading, as the file names them; null where that is not known. */
  readonly vehicle: string | null;
  readonly panel: string | null;
  readonly point: string | null;
  /** Where it would have been read, if off the face. */
  readonly place?: PointPlace;
};

/** Of a cell that belongs to no panel: one of statistics, one that a cut of the file spoiled. */
export const ofNoPanel = { vehicle: null, panel: null, point: null } as const;

/** What a line beside the tables says: serial number, date, operator … */
export type Metadatum = { readonly key: string; readonly value: string; readonly line: number };

/** What a line above the rows says of them all, where no column says it row by row. */
export type Given = {
  readonly panel: string | null;
  readonly vehicle: string | null;
  readonly layer: string | null;
  readonly point: string | null;
};
export const nothingGiven: Given = { panel: null, vehicle: null, layer: null, point: null };

export type Table = {
  readonly source: Source;
  readonly delimiter: Delimiter;
  readonly layout: Layout;
  /** The row that names the columns, where there is one. */
  readonly header: Row | undefined;
  readonly rows: readonly Row[];
  readonly given: Given;
};

/** How many cells the longest of the rows has. */
export const widest = (rows: readonly Row[]): number =>
  rows.reduce((most, { cells }) => Math.max(most, cells.length), 0);

/** Where a cell stands, for a diagnostic. */
export function placeOf(
  { source, delimiter }: Pick<Table, 'source' | 'delimiter'>,
  row: Row,
  column: number,
): Place {
  const { offset, length } = cellSpan(source, row, column, delimiter);
  return source.placeAt(offset, length);
}
