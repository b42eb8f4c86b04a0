/** `why` of a panel in the record of a plan: what its steps were chosen from. */
import type { PanelPlan } from '../../correction/plan/plan.ts';
import type { PartWhy, Rejected } from '../../correction/plan/why-not.ts';
import type { PanelWhy } from '../../tasks/plan/plan-vehicle.ts';
import { remarkRecord } from '../envelope.ts';
import type { MachineRecord } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';

/** Null where nobody asked, and on a panel in two zones, each of which has its own. */
export function planWhyRecord(plan: PanelPlan, why: readonly PanelWhy[]): MachineRecord | null {
  const part = why.flatMap(({ parts }) => parts).find((one) => one.plan === plan);
  return part === undefined || plan.zones.length > 0 ? null : partRecord(part);
}

const partRecord = ({ plan, depth, lookedAt, rejected }: PartWhy) => ({
  depth_um: recorded(depth),
  looked_at: lookedAt,
  limits: plan.survey.limits.map(remarkRecord),
  rejected: rejected.map(rejectedRecord),
});

const rejectedRecord = ({ kind, steps, removal, minutes, expected, reason }: Rejected) => ({
  kind,
  ...remarkRecord(reason),
  steps: steps.map(({ combination, sets }) => ({
    machine: combination.machine.id,
    pad: combination.pad.id,
    product: combination.product.id,
    sets,
  })),
  removal_um: recorded(removal),
  time_min: recorded(minutes),
  expected_pct: expected === null ? null : recordedOrNull(100 * expected),
});
