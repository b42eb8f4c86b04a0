/** What a table of readings is laid out like, and what it is held against to tell. */
import type { GaugeRole } from './gauge-vocabulary.ts';
import type { HeaderCell } from './header.ts';
import type { Counted } from './numbered-columns.ts';

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
  /** The side of the car that its name says, and what else it says. */
  readonly side?: { readonly text: string; readonly rest: string };
};

export type LayoutContext = {
  readonly isPanel: (label: string) => boolean;
  /** Whether a name is that of a panel, or says where on the car. */
  readonly mayBePanel: (label: string) => boolean;
  /** Whether lines name the panels, so that a table needs no column of them. */
  readonly captions: boolean;
  /** The layout that the user names, and no other is taken. */
  readonly layout?: LayoutName | undefined;
  /** Column → role, as the user says for this row of names; undefined if it is not the row. */
  readonly given?:
    | ((cells: readonly string[]) => ReadonlyMap<number, GaugeRole> | undefined)
    | undefined;
  /** The same of rows of names whose columns are known by the cells below them. */
  readonly byCells?:
    | ((cells: readonly string[]) => ReadonlyMap<number, GaugeRole> | undefined)
    | undefined;
};
