/** A plan for a spreadsheet: a row for each panel, and for each zone in place of one in two. */
import { type PanelPlan, workedParts } from '../../correction/plan/plan.ts';
import { stepsId } from '../../correction/removal/step.ts';
import { isZone } from '../../film/survey.ts';
import type { PlannedVehicle } from '../../tasks/plan/plan-files.ts';
import type { DataTable } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';
import { type ColumnsOf, codesOf, tableOf } from '../table-of.ts';

export const planTable = (vehicles: readonly PlannedVehicle[]): DataTable =>
  tableOf(
    columns,
    vehicles.flatMap(({ result, panels }) => {
      const ids = new Set(panels.map(({ id }) => id));
      return workedParts(result.plan)
        .filter(({ survey }) => ids.has(survey.panel.id))
        .map((plan) => ({ vehicle: result.vehicle, plan }));
    }),
  );

type Row = { readonly vehicle: string | null; readonly plan: PanelPlan };

const columns: ColumnsOf<Row> = {
  vehicle: ({ vehicle }) => vehicle,
  panel: ({ plan }) => plan.survey.panel.id,
  zone: ({ plan }) => (isZone(plan.survey) ? plan.survey.zone : null),
  verdict: ({ plan }) => plan.verdict,
  steps: ({ plan }) => stepsId(plan.steps),
  removal_um: ({ plan }) => recorded(plan.removal.median),
  removal_low_um: ({ plan }) => recorded(plan.removal.low),
  removal_high_um: ({ plan }) => recorded(plan.removal.high),
  aimed_pct: ({ plan }) => recorded(100 * plan.aimed),
  expected_pct: ({ plan }) => recorded(100 * plan.expected),
  risk_prob: ({ plan }) => recordedOrNull(plan.risk),
  risk_if_thin_prob: ({ plan }) => recordedOrNull(plan.riskIfThin),
  already_prob: ({ plan }) => recordedOrNull(plan.already),
  budget_um: ({ plan }) => recorded(plan.survey.budget),
  bound_by: ({ plan }) => plan.survey.boundBy.code,
  provisional: ({ plan }) => (plan.provisional ? 'yes' : 'no'),
  time_min: ({ plan }) =>
    recorded(plan.steps.reduce((sum, { machineTime }) => sum + machineTime, 0)),
  reasons: ({ plan }) => codesOf(plan.reasons),
  reasons_text: ({ plan }) => plan.reasons.map(({ text }) => text).join('; '),
};
