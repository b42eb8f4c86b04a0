import type { PanelPlan, Plan } from '../correction/plan/plan.ts';

/** The plan with nothing done on some of its panels; what is known of them stays. */
export const withoutWorkOn = (plan: Plan, isLeft: (panel: PanelPlan) => boolean): Plan => ({
  ...plan,
  panels: plan.panels.map((panel) => (isLeft(panel) ? untouched(panel) : panel)),
});

const untouched = (panel: PanelPlan): PanelPlan => ({
  ...panel,
  steps: [],
  local: [],
  zones: panel.zones.map((zone) => ({ ...zone, steps: [], local: [] })),
});
