import type { AdjustedShim } from '../../film/gauge/gauge-adjustment.ts';
import type { ShimCheck } from '../../film/gauge/gauge-check.ts';
import type { CheckedGauge, GaugeAdjusted, GaugeRun } from '../../tasks/gauge/check-gauge.ts';
import { envelope, machine, machineOrNull, type RecordContext } from '../envelope.ts';
import type { DataTable, MachineRecord } from '../model.ts';

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
  permitted_error: {
    fixed_um: machine(checked.permitted.fixed),
    proportional_pct: machine(100 * checked.permitted.proportional),
  },
  resolution_um: checked.step === 0 ? null : machine(checked.step),
  repeatability_um: machineOrNull(checked.repeatability?.sd),
  repeatability_dof: checked.repeatability?.dof ?? null,
  shims: checkedShims(checked).map(shimRecord),
  drift: checked.drift.map((one) => ({
    shim_um: machine(one.shim),
    change_um: machine(one.change),
    expanded_um: machine(one.expanded),
    proved: one.proved,
  })),
  adjustment: checked.adjustment === null ? null : adjustmentRecord(checked.adjustment),
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
  shim_um: machine(shim.shim),
  shim_uncertainty_um: machine(shim.shimUncertainty),
  n: shim.count,
  mean_um: machine(shim.mean),
  error_um: machine(shim.error.value),
  expanded_um: machine(shim.expanded),
  permitted_um: machine(shim.permitted),
  conformance_prob: machine(shim.conformance),
  verdict: shim.verdict,
  residual_um: machineOrNull(left?.residual),
});

const adjustmentRecord = ({ line, shims, left }: GaugeAdjusted) => ({
  offset_um: machine(line.offset),
  slope: machine(line.slope),
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
