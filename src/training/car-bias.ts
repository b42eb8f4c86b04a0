/**
 * How much a trainee reads over or under the reference all over the car.
 *
 * The robust mean b of the differences by panel (Algorithm A), so that one swapped or misread panel makes no
 * bias, with its standard uncertainty u = (1.25/√p)·s* of p panels; z = b/√(σ_pt² + u² + u_cal²), u_cal the
 * calibration of both gauges where they are not one. A bias that no panel shows by itself shows here. Needs
 * three panels.
 */

import { algorithmA } from '../base/stats/algorithm-a.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { PanelScore, SigmaPt } from './panel-score.ts';
import { type ScoreVerdict, scoreVerdict, zScore } from './scores.ts';
import type { TrainingModel } from './training-model.ts';

export type CarBias = {
  readonly mean: Micrometres;
  readonly low: Micrometres;
  readonly high: Micrometres;
  readonly z: number;
  readonly verdict: ScoreVerdict;
};

const LEAST_PANELS = 3;
const Z_975 = 1.96;

export function carBias(
  scores: readonly PanelScore[],
  { sigmaPt, calibration }: { readonly sigmaPt: SigmaPt; readonly calibration: number },
  model: TrainingModel['scores'],
): CarBias | null {
  if (scores.length < LEAST_PANELS) return null;
  const { mean, sd } = algorithmA(scores.map(({ difference }) => difference));
  const u = (1.25 * sd) / Math.sqrt(scores.length);
  const z = zScore(mean, sigmaPt.value, Math.hypot(u, calibration));
  return {
    mean: micrometres(mean),
    low: micrometres(mean - Z_975 * u),
    high: micrometres(mean + Z_975 * u),
    z,
    verdict: scoreVerdict(z, model),
  };
}
