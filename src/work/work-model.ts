import type { Metres, Minutes, SquareMetres } from '../base/units.ts';
import type { StageNeeds } from './job-scope.ts';

/** Least, likely and most time of a stage. */
export type ThreePoint = {
  readonly least: Minutes;
  readonly likely: Minutes;
  readonly most: Minutes;
};

/**
 * What a stage's time grows with. Its numbers are those of a usual saloon and go in proportion, save
 * `wheels`, which are for one wheel, and `size`, which goes by class of vehicle.
 */
export type ScalesWith =
  | 'job'
  | 'vehicle-area'
  | 'worked-area'
  | 'worked-trim'
  | 'wheels'
  | 'size'
  | 'polishing';

/** The trade that a stage wants, by which a shop may price it. */
export type Skill = 'wash' | 'survey' | 'polish' | 'interior' | 'protect';

/** What a stage uses up: so much for the job, for each wheel, square metre or metre of trim. */
export type StageUse = {
  readonly id: string;
  readonly material: string;
  readonly unit: MaterialUnit;
  readonly quantity: number;
  readonly per: Exclude<ScalesWith, 'polishing' | 'size'>;
};

export type MaterialUnit = 'ml' | 'pieces' | 'm';

/** A stage of the whole job. */
export type JobStage = {
  readonly id: string;
  /** In a word or two, where a day of them stands in one line. */
  readonly name: string;
  readonly text: string;
  /** The correction that a plan is about, or the rest of the job around it. */
  readonly part: 'correction' | 'rest';
  readonly skill: Skill;
  readonly needs: StageNeeds;
  readonly scalesWith: ScalesWith;
  /** Takes longer the dirtier the vehicle comes in. */
  readonly soils: boolean;
  /** Work for one person, however many there are. */
  readonly alone: boolean;
  /** Of a usual saloon; null where the plan's steps say how long. */
  readonly time: ThreePoint | null;
  /** Time on the clock that must pass after it before the next stage: dwelling, cooling, curing. */
  readonly wait: Minutes;
  readonly uses: readonly StageUse[];
};

/** Each of `before`, where it is done, is done before each of `after`. */
export type StageRule = {
  readonly before: readonly string[];
  readonly after: readonly string[];
  readonly reason: string;
};

/** A stage that may not be done without another. */
export type StagePair = {
  readonly stage: string;
  readonly with: string;
  readonly reason: string;
};

export type WorkModel = {
  /** In the usual order. */
  readonly stages: readonly JobStage[];
  readonly rules: readonly StageRule[];
  readonly pairs: readonly StagePair[];
  /** What the times of the stages are given for. */
  readonly usual: {
    readonly area: SquareMetres;
    readonly trim: Metres;
    readonly wheels: number;
  };
  /** Classes of vehicle by painted area, and their time against a medium one. */
  readonly size: {
    readonly smallUnder: SquareMetres;
    readonly largeOver: SquareMetres;
    readonly vanOver: SquareMetres;
    readonly small: number;
    readonly large: number;
    readonly van: number;
  };
  /** Time against a vehicle of usual dirt. */
  readonly soiling: { readonly light: number; readonly heavy: number };
  readonly perSection: { readonly wipe: Minutes; readonly padCleaning: Minutes };
  readonly setUp: Minutes;
  /** Least and most time of a polishing step as shares of its likely time. */
  readonly polishing: { readonly least: number; readonly most: number };
  readonly section: SquareMetres;
  /** Worked around one local defect. */
  readonly localSection: SquareMetres;
  readonly paceLogSd: number;
  readonly jobLogSd: number;
  /** Share of a stage's variance that is its own; the rest is the pace they share. */
  readonly aloneShare: number;
  /** How a shop's own hours are believed. */
  readonly history: {
    /** ln-SD of what a stage takes against its estimate, from shop to shop and from time to time. */
    readonly stageLogSd: number;
    readonly stageNoiseLogSd: number;
    /** Records of a stage from which it gets a factor of its own. */
    readonly leastRecords: number;
  };
  readonly materials: {
    readonly productPerSet: number;
    readonly productFirstLoad: number;
    readonly panelsPerPad: number;
    readonly sectionsPerTowel: number;
    readonly towelsPerLoad: number;
    /** Sections worked with a pad, a set each, until it is worn out. */
    readonly padLife: number;
  };
  readonly vibration: {
    /** Hand–arm vibration magnitudes, m/s², by motion. */
    readonly rotary: number;
    readonly orbital: number;
    /** Exposure points of a day: from where to act, and what never to exceed. */
    readonly actionPoints: number;
    readonly limitPoints: number;
  };
};
