import { thicknessText } from '../base/sentence.ts';
import type { LengthUnit } from '../base/units.ts';
import type { PanelPoint } from '../film/panel-points.ts';
import type { PanelSurvey } from '../film/survey.ts';
import { about, joined } from './facts.ts';
import type { Said } from './model.ts';

/** The points of a panel with what was read at each; those off the face on a line of their own. */
export function pointLines(
  { points, otherPoints }: PanelSurvey,
  unit: LengthUnit,
): readonly Said[] {
  const texts = points.map((one) => pointText(one, unit));
  const other = otherPoints.map((one) => `${pointText(one, unit)} (${one.place})`);
  return [
    ...(texts.length === 0 ? [] : [joined(texts, '; ')]),
    ...(other.length === 0 ? [] : [about('reported apart', joined(other, '; '))]),
  ];
}

/** `e1 92.3 (edge), s1 110.2 (shut)`: those off the face, by their means. */
export const pointsOffFace = ({ otherPoints }: PanelSurvey, unit: LengthUnit): string =>
  otherPoints
    .map(({ point, place, thickness }) => `${point} ${thicknessText(thickness, unit)} (${place})`)
    .join(', ');

/** `3: 121.4 (121.0 121.8)`. */
function pointText({ point, thickness, repeats, curved }: PanelPoint, unit: LengthUnit): string {
  const readings = repeats.map((one) => thicknessText(one, unit)).join('\u00a0');
  const detail = [...(repeats.length === 1 ? [] : [readings]), ...(curved ? ['curved'] : [])].join(
    ',\u00a0',
  );
  const value = `${point}:\u00a0${thicknessText(thickness, unit)}`;
  return detail === '' ? value : `${value}\u00a0(${detail})`;
}
