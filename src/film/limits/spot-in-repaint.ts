/**
 * Which paint of a panel a test spot was made on, by what its marks read before. Nothing is held to be repaint but film
 * over the line of repaint, on a panel that surely lies beyond it.
 */
import type { Micrometres } from '../../base/units.ts';
import type { LineComparison } from '../condition/line-comparison.ts';
import { type PanelSurvey, partsOf } from '../survey.ts';

/** Whether all of its marks lie in repaint; without marks, whether all of its panel is. */
export function liesInRepaint(
  panel: PanelSurvey,
  marks: readonly Micrometres[],
  nearRisk: number,
): boolean {
  if (panel.facts.paintedDaysAgo !== null) return true;
  // Under a wrap, or among values to be asked about first, no total tells of repaint.
  if (panel.condition === 'covered' || panel.keyingSlips.length > 0) return false;
  const surely = partsOf(panel).map((part) =>
    repaintLines(part).find(({ isBeyond, otherSide }) => isBeyond && otherSide <= nearRisk),
  );
  return marks.length === 0
    ? surely.every((line) => line !== undefined)
    : marks.every((film) => surely.some((line) => line !== undefined && film > line.line));
}

/** Whether a spot speaks of the factory film of its panel: of one in two zones only marks under the line tell. */
export function liesInFactoryFilm(panel: PanelSurvey, marks: readonly Micrometres[]): boolean {
  if (panel.zones.length === 0) return true;
  const lines = partsOf(panel).flatMap((part) => repaintLines(part).map(({ line }) => line));
  return lines.length > 0 && marks.length > 0 && marks.every((film) => film <= Math.min(...lines));
}

const repaintLines = ({ sureness }: PanelSurvey): readonly LineComparison[] =>
  sureness === null
    ? []
    : [...sureness.comparisons, ...sureness.beside].filter(
        ({ condition }) => condition === 'refinished',
      );
