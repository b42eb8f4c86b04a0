import type { Micrometres } from '../base/units.ts';

/** Where on a panel a point lies: only `face` points enter a panel's statistics. */
export type PointPlace = 'face' | 'edge' | 'shut';

/** Where a reading stands in the user's file; line and column count from 1. */
export type ReadingOrigin = {
  readonly file: string;
  readonly line: number;
  readonly column: number;
};

/** One gauge value at one point of one panel, as the file gives it. */
export type Reading = {
  readonly vehicle: string | null;
  /** The panel's name as the file writes it, until it is matched to a template. */
  readonly panel: string;
  readonly point: string;
  /** 1 for the first reading at the point. */
  readonly repeat: number;
  readonly thickness: Micrometres;
  /** Empty for the whole film; `clear`, `base`, `primer` … from a layer-resolving instrument. */
  readonly layer: string;
  readonly place: PointPlace;
  readonly marked: boolean;
  readonly curved: boolean;
  readonly origin: ReadingOrigin;
  /** The rest is kept as the file writes it, and absent where it has no such column or cell. */
  readonly operator?: string;
  /** Date and time of a reading; no order of day and month and no time zone is guessed. */
  readonly time?: string;
  readonly substrate?: string;
  readonly note?: string;
  /** How many decimals its text has, zeros included, which a number no longer shows; known where a text was read. */
  readonly decimals?: number;
  /** Where on the panel, as fractions of its length and height or whatever the file means by it. */
  readonly u?: string;
  readonly v?: string;
};
