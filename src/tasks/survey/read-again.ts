/**
 * Panels of which something must be read again before they are worked: a 0 or what is below it, what is beyond the
 * range, a value keyed wrongly.
 */
import { groupBy } from '../../base/group-by.ts';
import { needsUltrasound } from '../../film/condition/condition.ts';
import { restsOnOverRange } from '../../film/condition/over-range.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { FAR_BELOW_ZERO } from '../../intake/cells/plausible-reading.ts';
import type { SurveyResult } from './survey-vehicle.ts';

type LeftOut = SurveyResult['leftOut'];

export const asksToReadAgain = (survey: PanelSurvey, leftOut: LeftOut): boolean =>
  survey.keyingSlips.length > 0 || hasZero(survey, leftOut) || isOverRange(survey);

/** Of one that was not read otherwise its own line says so. */
export const isOverRange = (survey: PanelSurvey): boolean =>
  survey.points.length > 0 && restsOnOverRange(survey);

/** Whether a point of it shows a 0 or less, and nothing else. */
const hasZero = (survey: PanelSurvey, leftOut: LeftOut): boolean =>
  zeroPoints([survey], leftOut).length > 0;

type ZeroPoints = {
  readonly survey: PanelSurvey;
  readonly points: readonly string[];
  /** What stands there, each text once. */
  readonly texts: readonly string[];
  /** Whether it is as far below 0 as paint is thick, so that no zero of a gauge explains it. */
  readonly isFar: boolean;
};

/** Points that show a 0 or less and nothing else, panel by panel. */
export function zeroPoints(
  surveyed: readonly PanelSurvey[],
  leftOut: LeftOut,
): readonly ZeroPoints[] {
  const zeros = groupBy(leftOut.filter(isZeroOrLess), ({ panel }) => panel);
  if (zeros.size === 0) return [];
  return surveyed.flatMap((survey) => {
    const notRead = cellsNotRead(survey, zeros.get(survey.panel.id) ?? []);
    return [false, true].flatMap((isFar) => {
      const own = notRead.filter(({ reason }) => (reason === FAR_BELOW_ZERO) === isFar);
      const points = [...new Set(own.flatMap(({ point }) => point ?? []))];
      const texts = [...new Set(own.map(({ text }) => text.trim()))];
      return points.length === 0 ? [] : [{ survey, points, texts, isFar }];
    });
  });
}

/** A point that gave a reading besides was not bare; where there is no metal, a gauge for metal shows 0 anyway. */
function cellsNotRead({ panel, points, otherPoints }: PanelSurvey, zeros: LeftOut): LeftOut {
  if (points.length === 0 || needsUltrasound(panel)) return [];
  const read = new Set([...points, ...otherPoints].map(({ point }) => point));
  return zeros.filter(({ point }) => point !== null && point !== undefined && !read.has(point));
}

const isZeroOrLess = ({ class: why, text }: LeftOut[number]): boolean =>
  why === 'not-film' && (ZERO.test(text.trim()) || BELOW.test(text.trim()));

const ZERO = /^[+-]?0+([.,]0*)?\s*(µm|μm|um|mils?)?$/iu;
/** A number with its sign before or behind it, as a hyphen, a dash or a minus. */
const BELOW = /^(?:[-−–]\s*\d[\d.,]*|\d[\d.,]*\s*[-−–])\s*(µm|μm|um|mils?)?$/iu;
