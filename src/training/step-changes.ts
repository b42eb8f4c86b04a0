/**
 * Readings of one survey by two steps of the display: some in tenths, and far more of the others in wholes than
 * chance gives. A gauge shows tenths all through, or wholes; a last figure is 0 in one reading of ten, and as many as
 * were found have a chance by the binomial law. Gauges that show wholes from some film on are no matter: only readings
 * among those with tenths count, and of these no reading whose 0 is written. The same of hundredths, and of tenths
 * and hundredths of a mil.
 */
import { says } from '../base/sentence.ts';
import { binomialUpperTail } from '../base/stats/incomplete-beta.ts';
import { displayStep } from '../film/panel-points.ts';
import type { Reading } from '../film/reading.ts';
import { faceReadings, type GradedSurvey, pointKey } from './graded-survey.ts';
import { type Reason, reason } from './reasons.ts';

/** Wholes of a micrometre and coarser are read off no finer display. */
const COARSEST_STEP = 0.254;
const TENTH = 0.1;

/** `keyed` are points with a reading that is keyed wrongly, by `pointKey`. */
export function stepChanges(
  trainee: GradedSurvey,
  { falseAlarm, keyed }: { readonly falseAlarm: number; readonly keyed: ReadonlySet<string> },
): readonly Reason[] {
  const readings = faceReadings(trainee).filter(
    ({ panel, point }) => !keyed.has(pointKey(panel, point)),
  );
  const step = displayStep(readings.map(({ thickness }) => thickness));
  if (step === 0 || step > COARSEST_STEP) return [];
  const isWhole = ({ thickness }: { readonly thickness: number }): boolean => {
    const wholes = thickness / (step / TENTH);
    return Math.abs(wholes - Math.round(wholes)) < 1e-6;
  };
  const fine = readings.filter((one) => !isWhole(one));
  const films = fine.map(({ thickness }) => thickness);
  const [low, high] = [Math.min(...films), Math.max(...films)];
  const shown = Math.min(...fine.map(({ decimals = 0 }) => decimals));
  const among = readings.filter(({ thickness }) => thickness >= low && thickness <= high);
  const zeroWritten = ({ decimals = 0 }: Reading): boolean => shown > 0 && decimals >= shown;
  const lacking = among.filter((one) => isWhole(one) && !zeroWritten(one));
  if (binomialUpperTail(lacking.length, among.length, TENTH) >= falseAlarm) return [];
  return [
    reason(
      'step-changes',
      says`${lacking.length} of ${faceReadings(trainee).length} readings stand without the last figure that the others have: a display shows it all through; write each reading as the gauge shows it`,
      { at: lacking[0] },
    ),
  ];
}
