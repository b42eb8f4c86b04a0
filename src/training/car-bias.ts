/**
 * How much a trainee reads over or under the reference all over the car.
 *
 * Of the differences d of p panels, those that a slip explains left out, the robust middle b with the standard
 * uncertainty u = (1.25/√p)·s: from eight panels on by Algorithm A (ISO 13528), of fewer the median and the sample
 * standard deviation. (A median absolute deviation of so few is often next to nothing: intervals by it hold in 87
 * cases of 100 at three panels, by the sample deviation in 97.) So one panel far off moves b little and, of few,
 * widens its interval. A consensus is off by the same on panel after panel: its mean u_x counts besides, on one degree
 * of freedom less than surveys made it. The interval is b ± t·√(u² + u_x²), with Welch and Satterthwaite's degrees of
 * freedom; z = b/√(σ_pt² + u² + u_x² + u_cal²), u_cal the calibration of both gauges where they are not one
 * and it may explain b (src/training/panel-score.ts).
 *
 * A bias that no panel shows by itself shows here; one that may as well be none is satisfactory. Needs as many panels as the model says.
 */
import { algorithmA } from '../base/stats/algorithm-a.ts';
import { ENOUGH_FOR_ALGORITHM_A } from '../base/stats/robust-summary.ts';
import { mean, median, sampleStandardDeviation } from '../base/stats/summary.ts';
import { expandedUncertainty, standardUncertainty, uncertain } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { calibrationIn, type Gauges, type PanelScore, type SigmaPt } from './panel-score.ts';
import type { Reference } from './reference.ts';
import { type ScoreVerdict, scoreVerdict, zScore } from './scores.ts';
import type { TrainingModel } from './training-model.ts';

export type CarBias = {
  readonly mean: Micrometres;
  readonly low: Micrometres;
  readonly high: Micrometres;
  readonly z: number;
  readonly verdict: ScoreVerdict;
};

/** More than is allowed: it is told, and panels that are off as the car is need no word of their own. */
export const isBiasTold = (bias: CarBias | null): bias is CarBias =>
  bias !== null && bias.verdict !== 'satisfactory';

export const isLikeBias = (difference: number, { mean: of }: Pick<CarBias, 'mean'>): boolean =>
  Math.sign(difference) === Math.sign(of) && Math.abs(difference) < 2 * Math.abs(of);

type Against = {
  readonly sigmaPt: SigmaPt;
  readonly calibration: number;
  readonly gauges: Pick<Gauges, 'same'>;
  readonly reference: Pick<Reference, 'kind' | 'surveys'>;
};

export function carBias(
  scores: readonly PanelScore[],
  { sigmaPt, calibration, gauges, reference }: Against,
  model: TrainingModel['scores'],
): CarBias | null {
  if (scores.length < model.carPanels) return null;
  const { middle, sd } = summaryOf(scores.map(({ difference }) => difference));
  const bias = uncertain(micrometres(middle), {
    panels: { contribution: (1.25 * sd) / Math.sqrt(scores.length), dof: scores.length - 1 },
    ...(reference.kind === 'consensus' ? { consensus: consensusOf(scores, reference) } : {}),
  });
  const half = expandedUncertainty(bias);
  const own = standardUncertainty(bias);
  const ofGauges = calibrationIn(middle, calibration, own, gauges);
  const z = zScore(middle, sigmaPt.value, Math.hypot(own, ofGauges));
  return {
    mean: bias.value,
    low: micrometres(middle - half),
    high: micrometres(middle + half),
    z,
    verdict: Math.abs(middle) <= half ? 'satisfactory' : scoreVerdict(z, model),
  };
}

function summaryOf(differences: readonly number[]): {
  readonly middle: number;
  readonly sd: number;
} {
  if (differences.length < ENOUGH_FOR_ALGORITHM_A) {
    return { middle: median(differences), sd: sampleStandardDeviation(differences) };
  }
  const robust = algorithmA(differences);
  return { middle: robust.mean, sd: robust.sd };
}

const consensusOf = (scores: readonly PanelScore[], { surveys }: Against['reference']) => ({
  contribution: mean(scores.map(({ reference }) => reference.uncertainty)),
  dof: Math.max(1, surveys - 1),
});
