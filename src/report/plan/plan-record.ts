import type {
  LocalWork,
  PanelPlan,
  PlannedStep,
  RemovalForecast,
} from '../../correction/plan/plan.ts';
import type { Panel } from '../../film/template/template.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import { envelope, type RecordContext, remarkRecord } from '../envelope.ts';
import { factsRecord } from '../facts-record.ts';
import { factorRecord } from '../log-factor.ts';
import type { MachineRecord } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';
import { planWhyRecord } from './plan-why-record.ts';
import { materialRecord, timeRecord, workRecord } from './work-record.ts';

/** `leastcut/plan/1`. */
export function planRecord(
  result: PlanResult,
  panels: readonly Panel[],
  context: RecordContext,
): MachineRecord {
  const { plan, work, settings, survey } = result;
  const ids = new Set(panels.map(({ id }) => id));
  return {
    ...envelope('plan', result, context),
    template: survey.template.id,
    aim: settings.aim.name,
    risk_pct: recorded(100 * settings.terms.risk),
    notes: survey.notes.map(remarkRecord),
    panels: plan.panels
      .filter(({ survey: { panel } }) => ids.has(panel.id))
      .map((panel) => panelRecord(panel, result)),
    car: {
      expected_panels_below_floor: recorded(plan.expectedPanelsBelowFloor),
      panels_below_floor_already: recorded(plan.panelsBelowFloorAlready),
    },
    test_spots: testSpots(result),
    time: timeRecord(work.time),
    vibration_points: recorded(work.vibrationPoints),
    materials: work.materials.map(materialRecord),
    order: work.order.map(({ id, text }) => ({ stage: id, text })),
    ...workRecord(work, settings.hours),
    cautions: result.cautions.map(remarkRecord),
  };
}

/** What trials taught of each paint that was tried. */
const testSpots = ({ paint }: PlanResult) =>
  paint.tried.map(({ panel, trials, paint: { removal, provisional } }) => ({
    panel,
    trials,
    hardness: factorRecord(removal.hardness),
    depth_scale: factorRecord(removal.depthScale),
    provisional,
  }));

const panelRecord = (plan: PanelPlan, result: PlanResult): MachineRecord => ({
  panel: plan.survey.panel.id,
  verdict: plan.verdict,
  steps: plan.steps.map((step) => stepRecord(step, result.settings.correction.removal.passes)),
  removal_um: removalRecord(plan.removal),
  correction: {
    aimed_pct: recorded(100 * plan.aimed),
    expected_pct: recorded(100 * plan.expected),
  },
  risk_prob: recordedOrNull(plan.risk),
  risk_if_thin_prob: recordedOrNull(plan.riskIfThin),
  already_prob: recordedOrNull(plan.already),
  budget_um: recorded(plan.survey.budget),
  bound_by: plan.survey.boundBy.code,
  n_points: plan.survey.points.length,
  mean_um: recordedOrNull(plan.survey.statistics?.mean),
  sd_um: recordedOrNull(plan.survey.statistics?.sd),
  facts: factsRecord(plan.survey, result),
  provisional: plan.provisional,
  reasons: plan.reasons.map(remarkRecord),
  cautions: plan.cautions.map(remarkRecord),
  local: plan.local.map((one) => localRecord(one, result.settings.correction.removal.passes)),
  why: planWhyRecord(plan, result.why),
  zones: plan.zones.map((zone) => ({
    ...panelRecord(zone, result),
    zone: zone.zone,
    points: zone.survey.points.map(({ point }) => point),
  })),
});

const removalRecord = ({ median, mean, low, high }: RemovalForecast) => ({
  median: recorded(median),
  mean: recorded(mean),
  low: recorded(low),
  high: recorded(high),
});

const localRecord = (
  { defect, steps, removal, cleared, risk, place, reasons }: LocalWork,
  passes: number,
) => ({
  defect: defect.kind.id,
  grade: defect.grade,
  steps: steps.map((step) => stepRecord(step, passes)),
  removal_um: removalRecord(removal),
  cleared_pct: recorded(100 * cleared),
  risk_prob: recordedOrNull(risk),
  at_place:
    place === null
      ? null
      : { removal_um: recorded(place.removal), budget_um: recorded(place.budget) },
  reasons: reasons.map(remarkRecord),
});

const stepRecord = ({ combination, sets, removal, machineTime }: PlannedStep, passes: number) => ({
  machine: combination.machine.id,
  pad: combination.pad.id,
  product: combination.product.id,
  sets,
  passes,
  removal_um: recorded(removal),
  time_min: recorded(machineTime),
});
