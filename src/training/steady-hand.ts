/** How near to each other somebody's values of one point come at the least. */
import { keptWith } from '../base/kept.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { faceReadings, type GradedSurvey, ownRepeatability, readPanels } from './graded-survey.ts';
import type { TrainingModel } from './training-model.ts';

/**
 * SD of a value of a point, the mean of its readings: by one's own repeats, no more than is usual (one reading keyed
 * wrongly would make any two surveys look alike), else as of a steady hand, which shows the same figure more often
 * than the model expects. Nobody is to blame for that.
 */
export const leastPointSd = (
  survey: GradedSurvey,
  copies: Pick<TrainingModel['copies'], 'steadyHand' | 'ownRepeats'>,
): Micrometres => pointSd(survey, copies, survey.repeatability / copies.steadyHand);

/** The same as it is expected: where one's own repeats tell nothing, of a hand as is usual. */
export const repeatedPointSd = (
  survey: GradedSurvey,
  copies: Pick<TrainingModel['copies'], 'ownRepeats'>,
): Micrometres => pointSd(survey, copies, survey.repeatability);

const repeatsOf = keptWith((survey: GradedSurvey) => ownRepeatability(survey));

function pointSd(
  survey: GradedSurvey,
  { ownRepeats }: Pick<TrainingModel['copies'], 'ownRepeats'>,
  instead: number,
): Micrometres {
  const own = repeatsOf(survey);
  const ofReading =
    own === null || own.dof < ownRepeats ? instead : Math.min(own.sd, survey.repeatability);
  const points = readPanels(survey).reduce((sum, panel) => sum + panel.points.length, 0);
  return micrometres(ofReading * Math.sqrt(points / faceReadings(survey).length));
}
