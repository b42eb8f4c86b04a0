/** Points beyond the range of the gauge, where they make a panel filler until they are read again. */
import { pointsOver, textsOf } from '../../film/condition/over-range.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { isOverRange } from '../../tasks/survey/read-again.ts';

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
