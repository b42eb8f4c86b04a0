/** A trial as the learning takes it, and what is held before any trial. */

export type TrialObservation = {
  readonly combination: string;
  /** Median removal foretold for all its sets on paint of usual hardness, µm. */
  readonly foretold: number;
  /** Removal by the gauge, µm; null where the film was not read. */
  readonly removed: { readonly value: number; readonly standardError: number } | null;
  /** Share of the defects that went, by eye, and their median depth as assumed, µm. */
  readonly cleared: { readonly share: number; readonly depth: number } | null;
  /** Haze that it was seen to leave, 0 mirror … 4 heavy; it teaches nothing of removal. */
  readonly haze?: number | null;
};

/** ln-SDs before any trial; `hardness` also carries what was declared of the paint. */
export type RemovalPriors = {
  readonly hardness: LogFactor;
  /** Of a combination's own rate: the usual one, or what the shop states of its own measurement. */
  readonly combinationSd: (combination: string) => number;
  /** The same of a combination that nothing is said of. */
  readonly usualCombinationSd: number;
  readonly stepSd: number;
  readonly depthScaleSd: number;
  /** ln-SD of depth among the defects of one panel. */
  readonly depthLogSd: number;
  readonly eyeSd: number;
};

/** A factor known by the mean and SD of its logarithm. */
export type LogFactor = { readonly mean: number; readonly sd: number };
