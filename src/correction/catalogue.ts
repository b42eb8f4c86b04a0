import type {
  MetresPerSecond,
  Micrometres,
  Millimetres,
  Minutes,
  Newtons,
  SquareMetres,
} from '../base/units.ts';

/** How a machine moves its pad; by hand is a machine too. */
export type Motion =
  | { readonly kind: 'rotary'; readonly rpm: number }
  | {
      readonly kind: 'orbital';
      readonly throwDiameter: Millimetres;
      readonly orbitsPerMinute: number;
      readonly forcedRpm: number;
    }
  | {
      readonly kind: 'hand';
      readonly rubbing: MetresPerSecond;
      readonly minutesPerSet: Minutes;
      readonly handArea: SquareMetres;
    };

export type Machine = {
  readonly id: string;
  readonly name: string;
  readonly motion: Motion;
  readonly padDiameter: Millimetres;
  readonly force: Newtons;
  readonly armSpeed: MetresPerSecond;
};

/** Where in a correction a step stands. */
export type Stage = 'cut' | 'refine' | 'finish';

/** Firm foam, microfibre and wool cut or refine; only softer foam also finishes (common practice). */
export type Pad = {
  readonly id: string;
  readonly name: string;
  readonly factor: number;
  readonly stages: readonly Stage[];
};

/** Compound cuts, polish cuts or refines, a fine polish finishes (common practice). */
export type Product = {
  readonly id: string;
  readonly name: string;
  readonly factor: number;
  readonly stages: readonly Stage[];
};

export type DefectKind = {
  readonly id: string;
  readonly name: string;
  /** Other words of the trade for it. */
  readonly aliases: readonly string[];
  /** Median depth by grade 1…5. Empty when polishing is no answer. */
  readonly medians: readonly Micrometres[];
  /** General defects decide a panel's plan; local ones are named and left or worked as spots. */
  readonly scope: 'general' | 'local' | 'not-polishing' | 'refinish';
};

/** What the planner chooses from, and the constants of removal. */
export type CorrectionModel = {
  readonly machines: readonly Machine[];
  readonly pads: readonly Pad[];
  readonly products: readonly Product[];
  readonly defects: readonly DefectKind[];
  readonly removal: {
    /** Preston coefficient of a medium pad with a medium product, 1/Pa. */
    readonly preston: number;
    readonly overlap: number;
    readonly passes: number;
    readonly section: SquareMetres;
    readonly hardnessLogSd: number;
    readonly combinationLogSd: number;
    readonly stepLogSd: number;
    readonly softFactor: number;
    readonly hardFactor: number;
  };
  readonly correction: {
    readonly depthLogSd: number;
    readonly depthScaleLogSd: number;
    readonly assumedGrade: number;
    readonly aims: { readonly enhance: number; readonly correct: number; readonly full: number };
    readonly hazeCleared: Micrometres;
    readonly leastCorrection: number;
  };
};
