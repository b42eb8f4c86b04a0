/** What a shop's own observations on earlier vehicles say of the next one, and how the priors take it up. */
import type { LogFactor } from '../spot/trial-observation.ts';

/** Of one combination of the shop; without observations it follows those it has parts in common with. */
export type LearnedRate = {
  /** Factor on the rate reckoned for paint as the shop usually meets it: the combination's own part. */
  readonly own: LogFactor;
  /** Factor on the reckoned rate on the next vehicle, its paint included; a step's own scatter is not in it. */
  readonly next: LogFactor;
  /** The same on the paint that the shop usually meets: what there is to learn. */
  readonly usual: LogFactor;
  readonly observations: number;
  readonly vehicles: number;
};

export type ShopRates = {
  /** How the shop's usual paint gives way in its own hands, as a factor on what is built in. */
  readonly usualPaint: LogFactor;
  /** The same of the next vehicle: vehicles differ. */
  readonly nextPaint: LogFactor;
  /** By `machine/pad/product`: those that were observed, and those that the shop has and never observed. */
  readonly combinations: ReadonlyMap<string, LearnedRate>;
  /** Variance that a combination which is not among those has beyond that of its own rate. */
  readonly unobservedVariance: number;
  /**
   * ln-SD of the own rate where it is not said of which combination: the least known of those that the shop
   * has and has measured; where it has measured none of its own, that of one without observations.
   */
  readonly usualSd: number;
};
