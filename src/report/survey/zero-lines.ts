/** A 0 where a panel was read: no film reading, but worse news than a thin one until the point is read again. */
import { groupBy } from '../../base/group-by.ts';
import { needsUltrasound } from '../../film/condition/condition.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';

type LeftOut = SurveyResult['leftOut'];

/** `bonnet, point 3 ("0": bare metal, or the probe was lifted)`. */
export function zeroTexts(surveyed: readonly PanelSurvey[], leftOut: LeftOut): readonly string[] {
  const zeros = groupBy(leftOut.filter(isZero), ({ panel }) => panel);
  if (zeros.size === 0) return [];
  return surveyed.flatMap((survey) => {
    const points = pointsNotRead(survey, zeros.get(survey.panel.id) ?? []);
    return points.length === 0
      ? []
      : [
          `${survey.panel.name}, ${points.length === 1 ? 'point' : 'points'} ${points.join(', ')} ("0": bare metal, or the probe was lifted)`,
        ];
  });
}

/** Whether a point of it shows a 0 and nothing else. */
export const hasZero = (survey: PanelSurvey, leftOut: LeftOut): boolean =>
  zeroTexts([survey], leftOut).length > 0;

/** A point that gave a reading besides was not bare; where there is no metal, a gauge for metal shows 0 anyway. */
function pointsNotRead(
  { panel, points, otherPoints }: PanelSurvey,
  zeros: LeftOut,
): readonly string[] {
  if (points.length === 0 || needsUltrasound(panel)) return [];
  const read = new Set([...points, ...otherPoints].map(({ point }) => point));
  const named = zeros.flatMap(({ point }) => point ?? []);
  return [...new Set(named)].filter((point) => !read.has(point));
}

const isZero = ({ class: why, text }: LeftOut[number]): boolean =>
  why === 'not-film' && ZERO.test(text.trim());

const ZERO = /^[+-]?0+([.,]0*)?\s*(µm|μm|um|mils?)?$/iu;
