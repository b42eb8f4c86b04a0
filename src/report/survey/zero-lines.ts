/** A 0 or less where a panel was read: no film reading, but worse news than a thin one until the point is read again. */
import type { PanelSurvey } from '../../film/survey.ts';
import { zeroPoints } from '../../tasks/survey/read-again.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';

/** `bonnet, point 3 ("0": bare metal, or the probe was lifted)`. */
export const zeroTexts = (
  surveyed: readonly PanelSurvey[],
  leftOut: SurveyResult['leftOut'],
): readonly string[] =>
  zeroPoints(surveyed, leftOut).map(({ survey, points, texts, isFar }) => {
    const shown = texts.map((text) => `"${text}"`).join(', ');
    const meaning = isFar ? 'no film: was the sign a slip?' : 'bare metal, or the probe was lifted';
    return `${survey.panel.name}, ${points.length === 1 ? 'point' : 'points'} ${points.join(', ')} (${shown}: ${meaning})`;
  });
