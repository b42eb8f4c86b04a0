import type { AdjustedShim } from '../../film/gauge/gauge-adjustment.ts';
import type { Drift, ShimCheck } from '../../film/gauge/gauge-check.ts';
import type { CheckedGauge, GaugeAdjusted, GaugeRun } from '../../tasks/gauge/check-gauge.ts';
import { envelope, type RecordContext } from '../envelope.ts';
import type { DataTable, MachineRecord } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';

/** `leastcut/gauge/1`, the record. */
export const gaugeRecord = (checked: CheckedGauge, context: RecordContext): MachineRecord => ({
  ...envelope(
    'gauge',
    { vehicle: null, inputs: checked.inputs, assumptions: checked.assumptions },
    context,
  ),
  instrument: checked.gauge?.instrument ?? null,
  serial: checked.gauge?.serial ?? null,
  verdict: checked.verdict,
  permitted_error: permittedRecord(checked.permitted),
  resolution_um: checked.step === 0 ? null : recorded(checked.step),
  repeatability_um: recordedOrNull(checked.repeatability?.sd),
  repeatability_dof: checked.repeatability?.dof ?? null,
  shims: checkedShims(checked).map(shimRecord),
  drift: checked.drift.map(driftRecord),
  adjustment: checked.adjustment === null ? null : adjustmentRecord(checked.adjustment),
});

export const permittedRecord = ({ fixed, proportional }: CheckedGauge['permitted']) => ({
  fixed_um: recorded(fixed),
  proportional_pct: recorded(100 * proportional),
});

export const driftRecord = ({ shim, change, expanded, proved }: Drift) => ({
  shim_um: recorded(shim),
  change_um: recorded(change),
  expanded_um: recorded(expanded),
  proved,
});

/** A shim of a run, with what adjusting leaves of its error. */
export type CheckedShim = {
  readonly check: GaugeRun['check'];
  readonly shim: ShimCheck;
  readonly left: AdjustedShim | undefined;
};

export function checkedShims({ runs, adjustment }: CheckedGauge): readonly CheckedShim[] {
  const all = runs.flatMap(({ check, result }) => result.shims.map((shim) => ({ check, shim })));
  return all.map((one, i) => ({ ...one, left: adjustment?.left.shims[i] }));
}

const shimRecord = ({ check, shim, left }: CheckedShim) => ({
  check,
  shim_um: recorded(shim.shim),
  shim_uncertainty_um: recorded(shim.shimUncertainty),
  n: shim.count,
  mean_um: recorded(shim.mean),
  error_um: recorded(shim.error.value),
  expanded_um: recorded(shim.expanded),
  permitted_um: recorded(shim.permitted),
  conformance_prob: recorded(shim.conformance),
  verdict: shim.verdict,
  residual_um: recordedOrNull(left?.residual),
});

const adjustmentRecord = ({ line, shims, left }: GaugeAdjusted) => ({
  offset_um: recorded(line.offset),
  slope: recorded(line.slope),
  n_shims: shims,
  verdict: left.verdict,
});

const COLUMNS = [
  'check',
  'shim_um',
  'shim_uncertainty_um',
  'n',
  'mean_um',
  'error_um',
  'expanded_um',
  'permitted_um',
  'conformance_prob',
  'verdict',
  'residual_um',
] as const satisfies readonly (keyof ReturnType<typeof shimRecord>)[];

/** A row for each shim, with the keys of the record. */
export const gaugeTable = (checked: CheckedGauge): DataTable => ({
  columns: COLUMNS,
  rows: checkedShims(checked).map((one) => {
    const row = shimRecord(one);
    return COLUMNS.map((column) => row[column]);
  }),
});
