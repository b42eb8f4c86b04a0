/** What a panel has from its side, where that may have been painted again as a whole. */

import type { PanelSurvey } from '../survey.ts';
import type { PaintedTogether } from './line-comparison.ts';

/** The panels that it would be painted again with; undefined where its side is in no doubt. */
export const sidePaintedWith = ({
  sureness,
}: Pick<PanelSurvey, 'sureness'>): PaintedTogether | undefined =>
  sureness?.comparisons.find(({ together }) => together !== undefined)?.together;

/** The same panel, that it may be repaint left out: what its own test spot allows repaint is told besides. */
export const unlessRepaint = <Part extends Pick<PanelSurvey, 'sides'>>(part: Part): Part => ({
  ...part,
  sides: {
    ...part.sides,
    lost: part.sides.lost.filter(({ condition }) => condition !== 'refinished'),
  },
});
