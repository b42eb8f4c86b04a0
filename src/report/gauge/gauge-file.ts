/** `leastcut/gauge/1`, the file: what a check found, for `--gauge` of the other commands. */
import { micrometres } from '../../base/units.ts';
import type { GaugeFile } from '../../formats/gauge.ts';
import type { CheckedGauge } from '../../tasks/gauge/check-gauge.ts';
import { machine } from '../envelope.ts';

export const gaugeFileText = (checked: CheckedGauge): string =>
  `${JSON.stringify(gaugeFile(checked), null, 2)}\n`;

/** What was known of the gauge before goes along; what the check found takes the place of an older one. */
export function gaugeFile(checked: CheckedGauge): GaugeFile {
  const { gauge, verdict, permitted, step, repeatability, runs, drift, adjustment } = checked;
  return {
    schema: 'leastcut/gauge/1',
    ...(gauge?.instrument === undefined ? {} : { instrument: gauge.instrument }),
    ...(gauge?.serial === undefined ? {} : { serial: gauge.serial }),
    permitted_error: {
      fixed_um: machine(permitted.fixed),
      proportional_pct: machine(100 * permitted.proportional),
    },
    ...(step > micrometres(0) ? { resolution_um: machine(step) } : {}),
    ...(repeatability === undefined
      ? {}
      : {
          repeatability_um: machine(repeatability.sd),
          repeatability_dof: repeatability.dof,
        }),
    verdict,
    checks: runs.flatMap(({ check, result }) =>
      result.shims.map((shim) => ({
        ...(check === null ? {} : { check }),
        shim_um: machine(shim.shim),
        shim_uncertainty_um: machine(shim.shimUncertainty),
        mean_um: machine(shim.mean),
        n: shim.count,
        error_um: machine(shim.error.value),
        expanded_um: machine(shim.expanded),
        verdict: shim.verdict,
      })),
    ),
    ...(drift.length === 0
      ? {}
      : {
          drift: drift.map((one) => ({
            shim_um: machine(one.shim),
            change_um: machine(one.change),
            expanded_um: machine(one.expanded),
            proved: one.proved,
          })),
        }),
    adjustment:
      adjustment === null
        ? null
        : { offset_um: machine(adjustment.line.offset), slope: machine(adjustment.line.slope) },
  };
}
