import type { Metres, Millimetres, SquareMetres } from '../../base/units.ts';
import type { Side } from './panel-sense.ts';

export type Substrate = 'steel' | 'aluminium' | 'plastic' | 'composite';
export type Facing = 'horizontal' | 'vertical' | 'low';

/** A suggested measuring point: `u` runs front to rear (or left to right), `v` top to bottom, 0–1. */
export type MeasuringPoint = { readonly point: string; readonly u: number; readonly v: number };

/** A measure of the whole vehicle. */
export type Dimension = 'length' | 'width' | 'height';
export type VehicleSize = Readonly<Record<Dimension, Metres>>;

export type Panel = {
  /** Stable name in files and records: `door-front-left`. */
  readonly id: string;
  /** Name for people: `front left door`. */
  readonly name: string;
  readonly area: SquareMetres;
  readonly substrate: Substrate;
  readonly facing: Facing;
  /** The panel on the other side, or null on the centre line. */
  readonly mirror: string | null;
  /** Narrowest flat stretch: decides whether a full-size pad can lie flat. */
  readonly flatWidth: Millimetres;
  /** Tape for the trim, rubbers and lamps that border this panel. */
  readonly trimLength: Metres;
  readonly points: readonly MeasuringPoint[];
  /** Other labels by which a file may call it, in whatever language. */
  readonly also?: readonly string[];
  /**
   * The measures of the vehicle that it grows with: the one it is long in, then the one its flat
   * width lies in. None: its size does not follow the vehicle's. Absent: as it faces.
   */
  readonly spans?: readonly Dimension[];
};

/** A body class: its panels in walking order. */
export type VehicleTemplate = {
  readonly id: string;
  readonly name: string;
  readonly panels: readonly Panel[];
  /** The vehicle that the numbers are of, as far as it is known; needed to scale them to another. */
  readonly size?: Partial<VehicleSize>;
  /** Where it was read; absent for a built-in one. */
  readonly origin?: TemplateOrigin;
  /**
   * The side that files call the nearside: left where traffic keeps left. Unless it is said, nearside and
   * offside are refused as ambiguous.
   */
  readonly nearside?: Side;
};

/** The file a template was read from. */
export type TemplateOrigin = {
  readonly file: string;
  /** The built-in template it changes, or null where it says everything itself. */
  readonly base: string | null;
  /** Panels of which the file itself says something. */
  readonly own: readonly string[];
};
