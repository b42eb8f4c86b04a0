/** Points beyond the range of the gauge, where they make a panel filler until they are read again. */
import { pointsOver, restsOnOverRange, textsOf } from '../../film/condition/over-range.ts';
import type { PanelSurvey } from '../../film/survey.ts';

/** Of one that was not read otherwise its own line says so. */
export const isOverRange = (survey: PanelSurvey): boolean =>
  survey.points.length > 0 && restsOnOverRange(survey);

/** `bonnet, point 3 ("OL")`. */
export const overRangeTexts = (surveyed: readonly PanelSurvey[]): readonly string[] =>
  surveyed
    .filter(isOverRange)
    .map(
      ({ panel, overRange }) => `${panel.name}, ${pointsOver(overRange)} (${textsOf(overRange)})`,
    );

/** All of them and what they show, once. */
export function overRangeLine(surveyed: readonly PanelSurvey[]): readonly string[] {
  const told = overRangeTexts(surveyed);
  return told.length === 0
    ? []
    : [`${told.join(', ')}: beyond the gauge’s range, so filler, unless the probe was lifted`];
}
