/**
 * Repeats that are the same figure at nearly every point, though the display shows finer ones than a hand repeats to:
 * the probe was not set down anew, or one reading was written several times. Either way nobody knows how well the
 * readings repeat.
 *
 * The chance that k readings of one place round to one figure is about (δ/(s·√(2π)))^(k−1)/√k, δ the step of the
 * display and s what a steady hand repeats to; of as many points as were found, the binomial one.
 */
import { binomialUpperTail } from '../base/stats/incomplete-beta.ts';
import { mean } from '../base/stats/summary.ts';
import { faceReadings, type GradedSurvey, readPanels, stepOf } from './graded-survey.ts';
import { type Reason, reason } from './reasons.ts';
import type { TrainingModel } from './training-model.ts';

/** Null where the repeats differ as repeats do, where there are none, and where the display is too coarse to tell. */
export function alikeRepeats(
  trainee: GradedSurvey,
  { slips, copies }: Pick<TrainingModel, 'slips' | 'copies'>,
): Reason | null {
  const repeated = readPanels(trainee)
    .flatMap(({ points }) => points)
    .filter(({ repeats }) => repeats.length > 1);
  const alike = repeated.filter(({ repeats }) => new Set(repeats).size === 1);
  if (repeated.length === 0 || alike.length < slips.wholeSurvey * repeated.length) return null;
  const step = Math.max(stepOf(trainee), slips.finestStep);
  const one = step / ((trainee.repeatability / copies.steadyHand) * Math.sqrt(2 * Math.PI));
  const share = mean(repeated.map(({ repeats: { length: k } }) => one ** (k - 1) / Math.sqrt(k)));
  if (one >= copies.mostAlike) return null;
  if (binomialUpperTail(alike.length, repeated.length, share) >= slips.falseAlarm) return null;
  return reason(
    'repeats-alike',
    `repeats are the same figure at ${alike.length} of ${repeated.length} points: the probe was not set down anew, or one reading was written several times, so nobody can say how well your readings repeat: lift the probe, set it down again and write what the gauge shows each time`,
    { at: faceReadings(trainee)[0] },
  );
}
