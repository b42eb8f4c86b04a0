import { normalQuantile } from '../base/stats/normal.ts';
import { toleranceFactor } from '../base/stats/tolerance-factor.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { FilmModel } from './film-model.ts';
import type { Spread } from './spread.ts';

/**
 * Thinnest credible total film: at least a share `content` of the panel's face is thicker, with at
 * least the `confidence` asked for, if film varies normally over it.
 *
 * min(x̄ − k·s̃, smallest point) − z_γ·u_cal, k the one-sided tolerance factor for the spread's own
 * degrees of freedom (NIST/SEMATECH e-Handbook 7.2.6.3 for ν = n − 1). Needs two points. Film is
 * never thinner than nothing: a bound under 0 is 0.
 */
export function thinnestCredible(
  panel: {
    readonly mean: Micrometres;
    readonly smallest: Micrometres;
    readonly count: number;
    readonly spread: Spread;
    readonly calibration: Micrometres;
  },
  { content, confidence }: FilmModel['tolerance'],
): Micrometres {
  const { mean, smallest, count, spread, calibration } = panel;
  const k = toleranceFactor({ content, confidence, count, dof: spread.dof });
  const credible =
    Math.min(mean - k * spread.sd, smallest) - normalQuantile(confidence) * calibration;
  return micrometres(Math.max(0, credible));
}
