import type {
  MetresPerSecond,
  Micrometres,
  Millimetres,
  Minutes,
  Newtons,
  SquareMetres,
} from '../../base/units.ts';
import type { HeatModel } from '../heat/heat-model.ts';
import type { ShopRates } from '../rates/shop-rates.ts';

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
  /** Hand–arm vibration as measured or stated by its maker, m/s²; else that of its motion. */
  readonly vibration?: number;
};

/** Where in a correction a step stands, in the order of the work. */
export const STAGES = ['cut', 'refine', 'finish'] as const;
export type Stage = (typeof STAGES)[number];

export type Pad = {
  readonly id: string;
  readonly name: string;
  /** Removal against a medium foam pad. */
  readonly factor: number;
  /** Haze it leaves at least, whatever the product: 0 mirror … 4 heavy. */
  readonly haze: number;
  readonly stages: readonly Stage[];
};

export type Product = {
  readonly id: string;
  readonly name: string;
  /** Removal against a medium polish. */
  readonly factor: number;
  /** Haze it leaves on a dual-action machine. */
  readonly haze: number;
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

/** What a shop has measured itself with one combination. */
export type OwnRate = {
  /** Removal of one set. */
  readonly rate: Micrometres;
  /** ln-SD of the rate from job to job, where the shop states it. */
  readonly logSd?: number;
  readonly note?: string;
};

/** Grades of haze, 0 mirror … 4 heavy. */
export type HazeRules = {
  /** Removal that clears one grade. */
  readonly cleared: Micrometres;
  /** Grades a rotary adds to its product's. */
  readonly rotary: number;
  readonly heaviest: number;
  /** What may be left at the end, and what on dark or soft paint and under the aim full. */
  readonly allowed: number;
  readonly allowedFussy: number;
};

/** What the planner chooses from, and the constants of removal. */
export type CorrectionModel = {
  readonly machines: readonly Machine[];
  readonly pads: readonly Pad[];
  readonly products: readonly Product[];
  readonly defects: readonly DefectKind[];
  /** Rates of the shop's own by `machine/pad/product`, which stand above Preston's law. */
  readonly rates: ReadonlyMap<string, OwnRate>;
  /** What the shop's observations on earlier vehicles say of the next; null without any. */
  readonly learned: ShopRates | null;
  readonly heat: HeatModel;
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
  /** What of the usual doubt is the shop's own, and so can be learned from its earlier vehicles. */
  readonly shopRates: {
    /** Of the variance of a combination's own rate. */
    readonly combinationShare: number;
    /** Of what stays the same of a combination, what lies in machine, pad and product, a third each. */
    readonly partsShare: number;
    /** Of the variance of a paint's hardness. */
    readonly paintShare: number;
  };
  /** How records of test spots are believed, and what is tried next. */
  readonly spot: {
    /** ln-SD of removal over depth, as the eye tells it from the share cleared. */
    readonly eyeLogSd: number;
    /** What the gauge's repeatability counts for against the scatter of a spot's own marks. */
    readonly scatterDof: number;
    /** Chance to reach the aim, within so many sets, from which a combination is worth a trial. */
    readonly leastChance: number;
    readonly sets: number;
    /** SDs of what paints and ways of working differ by, beyond which a loss is doubted. */
    readonly lossBeyondSds: number;
    /** How far a mark may lie from all that its panel reads. */
    readonly marksOff: Micrometres;
  };
  readonly correction: {
    readonly depthLogSd: number;
    readonly depthScaleLogSd: number;
    readonly assumedGrade: number;
    readonly aims: { readonly enhance: number; readonly correct: number; readonly full: number };
    readonly leastCorrection: number;
    /** Of a mark, by a spot that spends all the film its place may lose; as much less as it spends less. */
    readonly leastForPlace: number;
    /** Worked around one local defect. */
    readonly localSection: SquareMetres;
    readonly haze: HazeRules;
    /** Sets of one combination in a stage; more is a sign to step up. */
    readonly mostSets: Readonly<Record<Stage, number>>;
    readonly choice: {
      /** Corrections nearer than this are equal: a fraction never buys a harsher step. */
      readonly equalShortfall: number;
      /** Expected removals in the same bin are equal. */
      readonly removalBin: Micrometres;
    };
  };
};
