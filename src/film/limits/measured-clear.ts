/** The clear of a panel where an instrument that resolves layers read it by itself. */
import { mean } from '../../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmModel, StatedLayer } from '../film-model.ts';
import { calibrationUncertainty } from '../gauge/calibration.ts';
import type { PanelPoint } from '../panel-points.ts';
import type { Reading } from '../reading.ts';
import { fallbackPrior, moderatedSpread, ownSpread } from '../spread.ts';

const CLEAR_LAYER = /^clear[ _-]?(coat)?$/;

export const isClearLayer = ({ layer }: Reading): boolean => CLEAR_LAYER.test(layer);

/**
 * Mean of the points with its standard uncertainty √(u_cal² + s̃²/n), and the spread s̃ of the clear over
 * the panel, moderated as one panel's alone: what a few readings of a thin layer agree on is no proof
 * of an even clear. Null without a point.
 */
export function measuredClear(
  points: readonly PanelPoint[],
  leastVariance: number,
  model: FilmModel,
): StatedLayer | null {
  if (points.length === 0) return null;
  const values: readonly Micrometres[] = points.map(({ thickness }) => thickness);
  const average = micrometres(mean(values));
  const prior = fallbackPrior([average], model.spread);
  const within = moderatedSpread(ownSpread(values, leastVariance), prior);
  const calibration = calibrationUncertainty(average, model.measurement);
  return {
    mean: average,
    sd: micrometres(Math.hypot(calibration, within.sd / Math.sqrt(points.length))),
    of: 'panel',
    within,
  };
}
