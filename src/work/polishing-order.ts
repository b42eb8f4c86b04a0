/** Panels as they are polished: roof, then what lies flat, upper sides, and low parts last (common practice). */
import type { PanelPlan } from '../correction/plan/plan.ts';
import type { Panel } from '../film/template/template.ts';

/** Dirt and product run down: what is lower is worked later. */
export const polishingRank = ({ id, facing }: Panel): number =>
  facing === 'horizontal' ? (id === 'roof' ? 0 : 1) : facing === 'vertical' ? 2 : 3;

/** The same panels, those of one height in walking order. */
export const inPolishingOrder = <Part extends Pick<PanelPlan, 'survey'>>(
  parts: readonly Part[],
): readonly Part[] =>
  [...parts].sort((a, b) => polishingRank(a.survey.panel) - polishingRank(b.survey.panel));
