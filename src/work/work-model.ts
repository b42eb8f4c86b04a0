import type { Minutes, SquareMetres } from '../base/units.ts';

/** Least, likely and most time of a stage. */
export type ThreePoint = {
  readonly least: Minutes;
  readonly likely: Minutes;
  readonly most: Minutes;
};

/** A stage of the whole job, in the order it is done. */
export type JobStage = {
  readonly id: string;
  readonly text: string;
  /** Part of the correction that a plan's time covers; null for the rest of the job. */
  readonly time: ThreePoint | null;
};

export type WorkModel = {
  readonly stages: readonly JobStage[];
  readonly perSection: { readonly wipe: Minutes; readonly padCleaning: Minutes };
  readonly setUp: Minutes;
  /** Least and most time of a polishing step as shares of its likely time. */
  readonly polishing: { readonly least: number; readonly most: number };
  readonly section: SquareMetres;
  readonly paceLogSd: number;
  readonly jobLogSd: number;
  /** Share of a stage's variance that is its own; the rest is the pace they share. */
  readonly aloneShare: number;
  readonly materials: {
    readonly productPerSet: number;
    readonly productFirstLoad: number;
    readonly panelsPerPad: number;
    readonly sectionsPerTowel: number;
    readonly panelWipe: number;
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
