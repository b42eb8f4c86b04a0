/** How near to each other somebody's values of one point come at the least. */
import { type Micrometres, micrometres } from '../base/units.ts';
import { faceReadings, type GradedSurvey, ownRepeatability, readPanels } from './graded-survey.ts';
import type { TrainingModel } from './training-model.ts';

/**
 * SD of a value of a point, the mean of its readings: by one's own repeats, no more than is usual (one reading keyed
 * wrongly would make any two surveys look alike), else as of a steady hand, which shows the same figure more often
 * than the model expects. Nobody is to blame for that.
 */
export function leastPointSd(
  survey: GradedSurvey,
  { steadyHand, ownRepeats }: TrainingModel['copies'],
): Micrometres {
  const own = ownRepeatability(survey);
  const ofReading =
    own === null || own.dof < ownRepeats
      ? survey.repeatability / steadyHand
      : Math.min(own.sd, survey.repeatability);
  const points = readPanels(survey).reduce((sum, panel) => sum + panel.points.length, 0);
  return micrometres(ofReading * Math.sqrt(points / faceReadings(survey).length));
}
