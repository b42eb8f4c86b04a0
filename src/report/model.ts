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
  /** Values as rings: what was before, beside what is now. */
  readonly open?: readonly number[];
  /** Drawn from one value to the other, under all the rest. */
  readonly bar?: StripBar;
  /** How far a value may be off to either side, as a line with two ends. */
  readonly range?: { readonly from: number; readonly to: number };
};

/** A `span` joins two values; an `extent` is as large as it is drawn, and ends in a stop. */
export type StripBar = {
  readonly from: number;
  readonly to: number;
  readonly look: 'span' | 'extent';
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
  /** What it shows, where a single cell is read without the table: `bonnet: thinnest credible …`. */
  readonly said?: string;
  /** What an empty cell (–) is told as by itself, where "none" would be a figure; nothing leaves it out. */
  readonly none?: string;
  /** The unit of its cells, where the title does not tell it. */
  readonly unit?: string;
  readonly align: 'left' | 'right';
  /**
   * What the table is read for: on a page that may be narrow it stands next to the name of the row, in
   * front of what led to it.
   */
  readonly leads?: true;
  /** Given for a column of strips. */
  readonly axis?: StripAxis;
};

/** A place to write a value by pen, on a rectangle whose sides are 1: `u` across, `v` down. */
export type BoxPlace = { readonly name: string; readonly u: number; readonly v: number };

/** Which way something lies from a drawing, said at that side of it: `front →`. */
export type Towards = { readonly word: string; readonly at: 'left' | 'right' | 'top' };

/** `front →`. */
export const towardsText = ({ word, at }: Towards): string => {
  if (at === 'right') return `${word} →`;
  return at === 'left' ? `← ${word}` : `↑ ${word}`;
};

/** A panel to fill in, as whoever stands before it sees it. */
export type BoxPanel = {
  readonly label: string;
  readonly towards: Towards | null;
  readonly places: readonly BoxPlace[];
  /** Boxes of each point, one under the other. */
  readonly boxes: number;
};

/** A point with what was read there; `sign` where it stands out. */
export type FacePoint = BoxPlace & {
  readonly value: string;
  readonly sign: 'none' | 'low' | 'high';
};

/** A panel as a plain rectangle with its points. */
export type Face = {
  readonly name: string;
  readonly note: string;
  readonly points: readonly FacePoint[];
};

/** Something to do, with a box to tick each time it is done. */
export type Tick = {
  readonly text: string;
  readonly boxes: number;
  /** A text for each box, for who hears it or has a list with one box a line. */
  readonly apart?: readonly string[];
  /** `strong` for what is done, among what goes with it. */
  readonly tone?: Tone;
};

/** One side of a drawing: what it shows, in which unit, and from where to where. */
export type CurveAxis = {
  readonly title: string;
  readonly unit: string;
  readonly from: number;
  readonly to: number;
};

export type CurvePoint = { readonly x: number; readonly y: number };

/** A point on the curve that is spoken of: by a single letter or digit. */
export type CurveMark = CurvePoint & { readonly sign: string; readonly name: string };

export type Curve = {
  readonly across: CurveAxis;
  readonly up: CurveAxis;
  /** From left to right. */
  readonly line: readonly CurvePoint[];
  readonly marks: readonly CurveMark[];
};

/** What is said in one text, and the facts that are in it, each complete where it stands by itself. */
export type Facts = { readonly text: string; readonly facts: readonly string[] };

/** A text is one fact; several are facts. */
export type Said = string | Facts;

export const textOf = (said: Said): string => (typeof said === 'string' ? said : said.text);

export const mapSaid = (said: Said, change: (text: string) => string): Said =>
  typeof said === 'string'
    ? change(said)
    : { text: change(said.text), facts: said.facts.map(change) };

export const eachFact = (said: Said): readonly string[] =>
  typeof said === 'string' ? [said] : said.facts;

/** A label, and the words of it that stand before each fact once the whole was said. */
export type Label = { readonly text: string; readonly short: string };

export type Block =
  | { readonly kind: 'title'; readonly text: string }
  | { readonly kind: 'gap' }
  | {
      readonly kind: 'paragraph';
      readonly label: string | null;
      readonly short?: string;
      readonly text: Said;
      /** `binding` for what work stops at: it stands out on a page that is carried about. */
      readonly tone?: Tone;
    }
  | {
      readonly kind: 'list';
      readonly label: string;
      readonly short?: string;
      readonly items: readonly Said[];
    }
  | {
      readonly kind: 'table';
      /** Said over it where nothing on the page leads to it. */
      readonly label?: string;
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly Cell[])[];
    }
  /** Blanks to fill in by pen, each behind its label. */
  | { readonly kind: 'form'; readonly fields: readonly string[] }
  /** Things to do, each behind its boxes to tick. */
  | {
      readonly kind: 'ticks';
      readonly label: string;
      /** What holds of all its items, in a few words beside the label. */
      readonly note?: string;
      readonly items: readonly Tick[];
    }
  /** What was read at every point, on the panels' rectangles. */
  | {
      readonly kind: 'faces';
      readonly label: string;
      /** What the values are of: `readings (µm)`. */
      readonly values: string;
      readonly faces: readonly Face[];
    }
  /** What is to be had against what it takes. */
  | { readonly kind: 'curve'; readonly label: string; readonly curve: Curve }
  /** A rectangle of each panel with a box to write in at each place, in the order of the walk. */
  | { readonly kind: 'boxes'; readonly panels: readonly BoxPanel[] };

export const title = (text: string): Block => ({ kind: 'title', text });
export const gap: Block = { kind: 'gap' };
export const paragraph = (label: string | Label | null, said: Said): Block => ({
  kind: 'paragraph',
  ...(label === null ? { label } : named(label)),
  text: glued(said),
});
/** A paragraph of what work stops at. */
export const notice = (label: string, said: Said): Block => ({
  kind: 'paragraph',
  label,
  text: glued(said),
  tone: 'binding',
});
export const list = (label: string | Label, items: readonly Said[]): Block => ({
  kind: 'list',
  ...named(label),
  items: items.map(glued),
});
const named = (label: string | Label) =>
  typeof label === 'string' ? { label } : { label: label.text, short: label.short };
const glued = (said: Said): Said => mapSaid(said, gluedUnits);
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
