import type { Micrometres } from '../base/units.ts';

/** A normal distribution of a layer's thickness over cars and panels. */
export type LayerThickness = { readonly mean: Micrometres; readonly sd: Micrometres };

/** What is expected of a finish before anything is read: the topcoat and all that lies under it. */
export type LayerPrior = { readonly top: LayerThickness; readonly under: LayerThickness };

/** Every number the film room needs and does not own; the built-in ones carry their basis as data. */
export type FilmModel = {
  readonly measurement: {
    /** Half-width of the gauge's calibration error: fixed part and share of the reading. */
    readonly fixed: Micrometres;
    readonly proportional: number;
    /** SD of one reading repeated at a point, hand placement included. */
    readonly repeatability: Micrometres;
    /** Extra SD at a point marked as curved. */
    readonly curvature: Micrometres;
  };
  readonly spread: {
    readonly priorDofCap: number;
    readonly fallbackShare: number;
    readonly fallbackLeast: Micrometres;
  };
  readonly tolerance: { readonly content: number; readonly confidence: number };
  readonly conditions: {
    readonly filler: Micrometres;
    readonly refinished: Micrometres;
    readonly refinishedAbove: Micrometres;
    readonly refinishedAboveShare: number;
    readonly cutBack: Micrometres;
    readonly mirror: Micrometres;
    readonly mirrorShare: number;
  };
  readonly layers: {
    readonly clearOverBase: LayerPrior;
    readonly galvanisedUnder: LayerThickness;
    readonly singleStage: LayerPrior;
  };
  readonly earlier: {
    /** Clear taken before, where nobody knows. */
    readonly unknownClear: Micrometres;
    /** The same, counted against the limit over the panel's life. */
    readonly unknownLife: Micrometres;
  };
  readonly limits: {
    readonly life: Micrometres;
    readonly lifeSolid: Micrometres;
    readonly clearFloor: Micrometres;
    readonly clearFloorStrict: Micrometres;
    readonly singleStageFloor: Micrometres;
    readonly totalFloor: Micrometres;
    readonly totalFloorSingleStage: Micrometres;
  };
  /** How much thinner the clear is taken to be in `risk if thin`. */
  readonly thinnerClear: Micrometres;
  /** Paint younger than this is left alone. */
  readonly freshPaintDays: number;
};

export type Finish =
  | 'clear-over-base'
  | 'single-stage-solid'
  | 'single-stage-metallic'
  | 'lacquer'
  | 'matte'
  | 'unknown';

/** What the job says of a panel beyond its readings. */
export type PanelFacts = {
  readonly finish: Finish;
  /** Film taken off before, where it is known. */
  readonly taken: Micrometres | null;
  readonly galvanised: boolean;
  readonly covered: boolean;
  readonly clearCoatFailure: boolean;
  readonly paintedDaysAgo: number | null;
};

export type LimitPolicy = 'standard' | 'strict';
