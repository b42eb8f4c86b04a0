import type { Metres, Millimetres, SquareMetres } from '../base/units.ts';

export type Substrate = 'steel' | 'aluminium' | 'plastic' | 'composite';
export type Facing = 'horizontal' | 'vertical' | 'low';

/** A suggested measuring point: `u` runs front to rear (or left to right), `v` top to bottom, 0–1. */
export type MeasuringPoint = { readonly point: string; readonly u: number; readonly v: number };

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
};

/** A body class: its panels in walking order. */
export type VehicleTemplate = {
  readonly id: string;
  readonly name: string;
  readonly panels: readonly Panel[];
};
