/** What a panel that may be repaint has from its side, or from its own film. */
import { LEAST_TOLD } from '../../base/rounding.ts';

import type { PanelSurvey } from '../survey.ts';
import { isFactoryFilm } from './condition.ts';
import type { PaintedTogether } from './line-comparison.ts';

/** The panels that it would be painted again with; undefined where its side is in no doubt. */
export const sidePaintedWith = ({
  sureness,
}: Pick<PanelSurvey, 'sureness'>): PaintedTogether | undefined =>
  sureness?.comparisons.find(({ together }) => together !== undefined)?.together;

/** Whether it is of neither side, and held with one of them for what it reads. */
export const isHeldWithSide = (panel: Pick<PanelSurvey, 'panel' | 'sureness'>): boolean =>
  sidePaintedWith(panel)?.centre.some(({ id }) => id === panel.panel.id) ?? false;

/** The same panel as by itself, whatever its side may be. */
export const unlessWithSide = <Part extends Pick<PanelSurvey, 'sides'>>(part: Part): Part => ({
  ...part,
  sides: { ...part.sides, lost: part.sides.lost.filter(({ together }) => together === undefined) },
});

/**
 * Whether film that reads as the factory's gets nothing as it may be repaint by its own figure, or got what its own spot
 * allows. Where the usual film of the car may be repaint, no panel of it is judged by itself.
 */
export function isHeldByOwnLine(
  panel: Pick<
    PanelSurvey,
    'sureness' | 'condition' | 'also' | 'budget' | 'boundBy' | 'limits' | 'sides' | 'zones'
  >,
): boolean {
  const { condition, also, budget, boundBy, limits, sides, zones } = panel;
  if (zones.length > 0 || sidePaintedWith(panel) !== undefined) return false;
  if (![condition, ...also].every(isFactoryFilm)) return false;
  if (limits.some(({ ofRepaint }) => ofRepaint !== undefined)) return true;
  const lines = sides.lost.filter((line) => line.condition === 'refinished');
  const isOwn = lines.length > 0 && lines.every(({ shownBy }) => shownBy === undefined);
  return isOwn && boundBy.code === 'near-line' && budget < LEAST_TOLD;
}

/** The same panel, that it may be repaint left out: what its own test spot allows repaint is told besides. */
export const unlessRepaint = <Part extends Pick<PanelSurvey, 'sides'>>(part: Part): Part => ({
  ...part,
  sides: {
    ...part.sides,
    lost: part.sides.lost.filter(({ condition }) => condition !== 'refinished'),
  },
});
