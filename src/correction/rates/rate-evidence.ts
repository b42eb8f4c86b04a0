/** What was measured on earlier vehicles, as the learning takes it, and what is held before any of it. */

export type EvidenceStep = {
  readonly combination: string;
  /** Median removal foretold for all its sets on paint of usual hardness, µm. */
  readonly foretold: number;
};

export type RateEvidence = {
  readonly vehicle: string;
  /** Worked one after the other on the same place. */
  readonly steps: readonly EvidenceStep[];
  /** Of all steps together. */
  readonly sets: number;
  /** What all of them took together, by the gauge, µm; noise may bring it under 0. */
  readonly removed: { readonly value: number; readonly standardError: number };
};

/** ln-SDs before any observation. */
export type RatePriors = {
  /** Of a vehicle's paint among all vehicles. */
  readonly paintSd: number;
  /** Share of that variance which is the shop's: what paint it meets, how it works. */
  readonly paintShare: number;
  /** Of a combination's own rate. */
  readonly combinationSd: (combination: string) => number;
  /** Share of that variance which stays the same from vehicle to vehicle. */
  readonly combinationShare: number;
  /** Share of what stays the same that lies in machine, pad and product, a third each; related ones have it in common. */
  readonly partsShare: number;
  readonly stepSd: number;
};
