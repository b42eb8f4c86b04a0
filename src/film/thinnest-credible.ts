import { normalQuantile } from '../base/stats/normal.ts';
import {
  distributionFreeConfidence,
  distributionFreeCount,
  toleranceFactor,
} from '../base/stats/tolerance-factor.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { FilmModel } from './film-model.ts';
import type { PanelFilm } from './panel-film.ts';

/** How a thinnest credible film comes about. */
export type ThinnestCredible = {
  /** One-sided tolerance factor k, for the degrees of freedom of the spread. */
  readonly factor: number;
  /** x̄ − k·s̃. */
  readonly bound: Micrometres;
  /** Taken off for what the gauge itself may be off by. */
  readonly gaugeMargin: Micrometres;
  readonly thinnest: Micrometres;
};

/**
 * Thinnest credible total film: at least a share `content` of the panel's face is thicker, with at
 * least the `confidence` asked for, if film varies normally over it.
 *
 * min(x̄ − k·s̃, smallest point) − z_γ·√(u_cal² + u_op²), u_op by operators who differ, k the one-sided tolerance factor for the spread's own
 * degrees of freedom (NIST/SEMATECH e-Handbook 7.2.6.3 for ν = n − 1). Needs two points. Film is
 * never thinner than nothing: a bound under 0 is 0.
 */
export function thinnestCredible(
  { mean, smallest, count, spread, calibration, operators = micrometres(0) }: PanelFilm,
  { content, confidence }: FilmModel['tolerance'],
): ThinnestCredible {
  const factor = toleranceFactor({ content, confidence, count, dof: spread.dof });
  const bound = micrometres(mean - factor * spread.sd);
  const gaugeMargin = micrometres(normalQuantile(confidence) * Math.hypot(calibration, operators));
  const thinnest = micrometres(Math.max(0, Math.min(bound, smallest) - gaugeMargin));
  return { factor, bound, gaugeMargin, thinnest };
}

/**
 * What n points say without assuming any shape of distribution: the smallest of them is under a share
 * `content` of the face with confidence 1 − contentⁿ only (order statistics, Wilks 1941); the confidence
 * asked for takes so many points (59 for 95 %/95 %).
 */
export const distributionFree = (
  count: number,
  { content, confidence }: FilmModel['tolerance'],
): { readonly confidence: number; readonly pointsNeeded: number } => ({
  confidence: distributionFreeConfidence(content, count),
  pointsNeeded: distributionFreeCount(content, confidence),
});
