/** `why` of a panel in the record of a plan: what its steps were chosen from. */
import type { PanelPlan } from '../../correction/plan/plan.ts';
import type { PartWhy, Rejected } from '../../correction/plan/why-not.ts';
import type { PanelWhy } from '../../tasks/plan/plan-vehicle.ts';
import { machine, machineOrNull, remarkRecord } from '../envelope.ts';
import type { MachineRecord } from '../model.ts';

/** Null where nobody asked, and on a panel in two zones, each of which has its own. */
export function planWhyRecord(plan: PanelPlan, why: readonly PanelWhy[]): MachineRecord | null {
  const part = why.flatMap(({ parts }) => parts).find((one) => one.plan === plan);
  return part === undefined || plan.zones.length > 0 ? null : partRecord(part);
}

const partRecord = ({ plan, depth, lookedAt, rejected }: PartWhy) => ({
  depth_um: machine(depth),
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
  removal_um: machine(removal),
  time_min: machine(minutes),
  expected_pct: expected === null ? null : machineOrNull(100 * expected),
});
