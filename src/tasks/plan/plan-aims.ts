/** Plans of one vehicle under several aims: what they share is worked out once. */
import { kept, once } from '../../base/kept.ts';
import { type PlannedCar, plannerFor } from '../../correction/plan/plan-correction.ts';
import type { PlanGrounds } from '../../correction/plan/plan-request.ts';
import type { Aim } from '../../formats/json/setting-values.ts';
import type { WorkEstimate } from '../../work/estimate-work.ts';
import { type Settings, withAim } from '../settings/settings.ts';
import type { SurveyResult } from '../survey/survey-vehicle.ts';
import { workOf } from './plan-vehicle.ts';

export type AimPlan = PlannedCar & {
  readonly aim: Settings['aim'];
  /** Made when it is asked for: a curve of aims has no use for it. */
  readonly work: () => WorkEstimate;
};

/** Aims of one share and one haze are one plan, whatever they are called. */
export function planAims(surveyed: SurveyResult, grounds: PlanGrounds): (aim: Aim) => AimPlan {
  const planner = plannerFor(grounds);
  const planned = kept((share: number, hazeAllowed: number) => {
    const { decisions, plan } = planner({ aim: share, hazeAllowed });
    return { decisions, plan, work: once(() => workOf(plan(), surveyed)) };
  });
  return (asked) => {
    const { aim, hazeAllowed } = withAim(surveyed.settings, asked);
    return { aim, ...planned(aim.share, hazeAllowed) };
  };
}
