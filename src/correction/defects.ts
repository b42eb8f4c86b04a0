/** How much of a panel's defects a removal clears. */
import { at } from '../base/at.ts';
import { normalCdf } from '../base/stats/normal.ts';
import type { Micrometres } from '../base/units.ts';
import type { DefectKind } from './removal/catalogue.ts';
import type { ForetoldRemoval } from './removal/removal-knowledge.ts';
import type { LogFactor } from './spot/trial-observation.ts';

/** One kind of defect found on a panel. */
export type Defect = {
  readonly kind: DefectKind;
  /** 0 none … 5 extreme, half steps allowed (ISO 4628-1). */
  readonly grade: number;
  /** Measured depth, which stands above the grade's. */
  readonly depth: Micrometres | null;
  /** How far it goes, as it was written: nothing is reckoned by it. */
  readonly extent?: string;
};

/** Median depth of a defect at its grade; half grades lie between on the log scale. 0 for grade 0. */
export function medianDepth({ kind, grade, depth }: Defect): number {
  if (depth !== null) return depth;
  if (grade <= 0 || kind.medians.length === 0) return 0;
  const median = (of: number): number =>
    at(kind.medians, Math.min(kind.medians.length, Math.max(1, of)) - 1);
  const below = Math.floor(grade);
  const share = grade - below;
  if (below === 0) return median(1) * share;
  return Math.exp((1 - share) * Math.log(median(below)) + share * Math.log(median(below + 1)));
}

/**
 * Expected share of the defects cleared: Φ(E[ln R/D] / √(σ_D² + Var[ln R/D])), depths lognormal with
 * ln-SD σ_D about a median that is known up to the car's depth scale. What is known of removal and of
 * depth may go together: Var[ln R/D] = Var[ln R] + Var[ln D] − 2·Cov.
 */
export function expectedCorrection(
  removal: ForetoldRemoval,
  depth: number,
  depthScale: LogFactor,
  depthLogSd: number,
): number {
  if (depth === 0) return 1;
  if (removal.median <= 0) return 0;
  const sd = ratioLogSd(doubtOf(removal), depthScale, depthLogSd);
  return normalCdf((Math.log(removal.median / depth) - depthScale.mean) / sd);
}

/** The doubt that a removal brings along: Var[ln R] − 2·Cov. */
export const doubtOf = ({ logSd, withDepth }: Omit<ForetoldRemoval, 'median'>): number =>
  logSd ** 2 - 2 * withDepth;

/** √(σ_D² + Var[ln R/D]). */
const ratioLogSd = (doubt: number, depthScale: LogFactor, depthLogSd: number): number =>
  Math.sqrt(depthLogSd ** 2 + depthScale.sd ** 2 + doubt);

/**
 * The least median that may be expected to clear more than another does, whatever the doubt about each between two. At
 * the same correction E[ln R/D] is as many of its SDs from 0: ln M' = ln D + (ln M − ln D) · σ'/σ.
 */
export function leastClearingMore(
  { median }: Pick<ForetoldRemoval, 'median'>,
  [least, most]: readonly [least: number, most: number],
  depth: number,
  depthScale: LogFactor,
  depthLogSd: number,
): number {
  const ratio =
    ratioLogSd(least, depthScale, depthLogSd) / ratioLogSd(most, depthScale, depthLogSd);
  const middle = Math.log(depth) + depthScale.mean;
  const over = Math.log(median) - middle;
  return Math.exp(middle + Math.min(over * ratio, over / ratio));
}
