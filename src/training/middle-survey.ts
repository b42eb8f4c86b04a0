/**
 * The survey by whose readings a class without an expert is told what a panel is: one baseline for everybody, as whoever
 * read three panels has none that says what film this car came with.
 *
 * Of those that read at least half as many panels as who read most, the one whose level (the median of its panels’
 * means) is the middle one: a survey in another unit, or off as a whole, is not. Of an even number the lower.
 */
import { median } from '../base/stats/summary.ts';
import { type GradedSurvey, readPanels } from './graded-survey.ts';

export function middleSurvey(surveys: readonly GradedSurvey[]): GradedSurvey | undefined {
  const counted = surveys
    .map((survey) => ({
      survey,
      means: readPanels(survey).map(({ statistics }) => statistics.mean),
    }))
    .filter(({ means }) => means.length > 0);
  const most = Math.max(0, ...counted.map(({ means }) => means.length));
  const levels = counted
    .filter(({ means }) => 2 * means.length >= most)
    .map(({ survey, means }) => ({ survey, level: median(means) }))
    .sort((one, other) => one.level - other.level);
  return levels[Math.floor((levels.length - 1) / 2)]?.survey;
}
