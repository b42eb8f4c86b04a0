/** What a page for people is made of, as data: a renderer knows these and nothing about paint. */
import { gluedUnits } from './words.ts';

/** How a piece of text matters; a renderer may colour it, and the words carry it without colour. */
export type Tone = 'plain' | 'strong' | 'quiet' | 'binding';

export type TextCell = { readonly kind: 'text'; readonly text: string; readonly tone: Tone };

/** Values on the column's common axis. */
export type StripCell = {
  readonly kind: 'strip';
  readonly values: readonly number[];
  /** A value drawn with a sign of its own, or null. */
  readonly marked: number | null;
};

export type Cell = TextCell | StripCell;

export type StripAxis = {
  readonly from: number;
  readonly to: number;
  /** A line across all rows. */
  readonly line: number | null;
};

export type Column = {
  readonly title: string;
  readonly align: 'left' | 'right';
  /** Given for a column of strips. */
  readonly axis?: StripAxis;
};

/** A place to write a value by pen, on a rectangle whose sides are 1: `u` across, `v` down. */
export type BoxPlace = { readonly name: string; readonly u: number; readonly v: number };

export type Block =
  | { readonly kind: 'title'; readonly text: string }
  | { readonly kind: 'gap' }
  | { readonly kind: 'paragraph'; readonly label: string | null; readonly text: string }
  | { readonly kind: 'list'; readonly label: string; readonly items: readonly string[] }
  | {
      readonly kind: 'table';
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly Cell[])[];
    }
  /** Blanks to fill in by pen, each behind its label. */
  | { readonly kind: 'form'; readonly fields: readonly string[] }
  /** One rectangle with a box to write in at each place. */
  | { readonly kind: 'boxes'; readonly label: string; readonly places: readonly BoxPlace[] };

export const title = (text: string): Block => ({ kind: 'title', text });
export const gap: Block = { kind: 'gap' };
export const paragraph = (label: string | null, text: string): Block => ({
  kind: 'paragraph',
  label,
  text: gluedUnits(text),
});
export const list = (label: string, items: readonly string[]): Block => ({
  kind: 'list',
  label,
  items: items.map(gluedUnits),
});
export const cell = (text: string, tone: Tone = 'plain'): Cell => ({ kind: 'text', text, tone });

/** One cell for a spreadsheet; null is an empty one. */
export type DataCell = string | number | null;

/** Rows for a spreadsheet or a script: names of columns and plain values. */
export type DataTable = {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly DataCell[])[];
};

/** A machine record: plain data that serialises to JSON. */
export type MachineRecord = { readonly [key: string]: unknown };
