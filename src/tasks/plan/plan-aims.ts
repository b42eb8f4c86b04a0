/** Plans of one vehicle under several aims: what they share is worked out once. */
import type { Plan } from '../../correction/plan/plan.ts';
import { plannerFor } from '../../correction/plan/plan-correction.ts';
import type { PlanRequest } from '../../correction/plan/plan-request.ts';
import type { Aim } from '../../formats/setting-values.ts';
import type { WorkEstimate } from '../../work/estimate-work.ts';
import { type Settings, withAim } from '../settings/settings.ts';
import type { SurveyResult } from '../survey/survey-vehicle.ts';
import { workOf } from './plan-vehicle.ts';

export type AimPlan = {
  readonly aim: Settings['aim'];
  readonly plan: Plan;
  /** Made when it is asked for: a curve of aims has no use for it. */
  readonly work: () => WorkEstimate;
};

/** Aims of one share and one haze are one plan, whatever they are called. */
export function planAims(
  surveyed: SurveyResult,
  request: Omit<PlanRequest, 'aim' | 'hazeAllowed'>,
): (aim: Aim) => AimPlan {
  const planner = plannerFor(request);
  const known = new Map<string, Omit<AimPlan, 'aim'>>();
  return (asked) => {
    const settings = withAim(surveyed.settings, asked);
    const { aim, hazeAllowed } = settings;
    const before = known.get(keyOf(settings));
    if (before !== undefined) return { aim, plan: before.plan, work: before.work };
    const plan = planner.at({ aim: aim.share, hazeAllowed });
    const found = { plan, work: kept(() => workOf(plan, surveyed)) };
    known.set(keyOf(settings), found);
    return { aim, ...found };
  };
}

const keyOf = ({ aim, hazeAllowed }: Settings): string => `${aim.share} ${hazeAllowed}`;

function kept<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
