/** Surveys that hold the very same readings in the very same order: no two hands write the same file. */
import { at } from '../base/at.ts';
import { faceReadings, type GradedSurvey } from './graded-survey.ts';

/** Places, points and values alike; of fewer readings than `least` that may be chance. */
export function haveSameReadings(one: GradedSurvey, other: GradedSurvey, least: number): boolean {
  const [own, theirs] = [faceReadings(one), faceReadings(other)];
  return (
    own.length >= least &&
    own.length === theirs.length &&
    own.every((reading, i) => {
      const their = at(theirs, i);
      return (['panel', 'point', 'repeat', 'thickness'] as const).every(
        (key) => reading[key] === their[key],
      );
    })
  );
}
