/** A plan for a spreadsheet: a row for each panel, and for each zone in place of one in two. */
import { type PanelPlan, workedParts } from '../../correction/plan/plan.ts';
import { stepsId } from '../../correction/removal/step.ts';
import { isZone } from '../../film/survey.ts';
import type { PlannedVehicle } from '../../tasks/plan/plan-files.ts';
import { machine, machineOrNull } from '../envelope.ts';
import type { DataCell, DataTable } from '../model.ts';

export function planTable(vehicles: readonly PlannedVehicle[]): DataTable {
  const rows = vehicles.flatMap(({ result, panels }) => {
    const ids = new Set(panels.map(({ id }) => id));
    return workedParts(result.plan)
      .filter(({ survey }) => ids.has(survey.panel.id))
      .map((part) => ({ vehicle: result.vehicle, ...cellsOf(part) }));
  });
  return {
    columns: [...columns],
    rows: rows.map((row: Readonly<Record<string, DataCell>>) =>
      columns.map((name) => row[name] ?? null),
    ),
  };
}

const columns = [
  'vehicle',
  'panel',
  'zone',
  'verdict',
  'steps',
  'removal_um',
  'removal_low_um',
  'removal_high_um',
  'aimed_pct',
  'expected_pct',
  'risk_prob',
  'risk_if_thin_prob',
  'already_prob',
  'budget_um',
  'bound_by',
  'provisional',
  'time_min',
  'reasons',
] as const;

const cellsOf = ({ survey, ...plan }: PanelPlan): Readonly<Record<string, DataCell>> => ({
  panel: survey.panel.id,
  zone: isZone(survey) ? survey.zone : null,
  verdict: plan.verdict,
  steps: stepsId(plan.steps),
  removal_um: machine(plan.removal.median),
  removal_low_um: machine(plan.removal.low),
  removal_high_um: machine(plan.removal.high),
  aimed_pct: machine(100 * plan.aimed),
  expected_pct: machine(100 * plan.expected),
  risk_prob: machineOrNull(plan.risk),
  risk_if_thin_prob: machineOrNull(plan.riskIfThin),
  already_prob: machineOrNull(plan.already),
  budget_um: machine(survey.budget),
  bound_by: survey.boundBy.code,
  provisional: plan.provisional ? 'yes' : 'no',
  time_min: machine(plan.steps.reduce((sum, { machineTime }) => sum + machineTime, 0)),
  reasons: plan.reasons.map(({ text }) => text).join('; '),
});
