/** `leastcut/gauge/1`, the file: what a check found, for `--gauge` of the other commands. */
import { micrometres } from '../../base/units.ts';
import type { GaugeFile } from '../../formats/gauge.ts';
import type { CheckedGauge } from '../../tasks/gauge/check-gauge.ts';
import { recorded } from '../recorded.ts';
import { driftRecord, permittedRecord } from './gauge-record.ts';

export const gaugeFileText = (checked: CheckedGauge): string =>
  `${JSON.stringify(gaugeFile(checked), null, 2)}\n`;

/** What was known of the gauge before goes along; what the check found takes the place of an older one. */
export function gaugeFile(checked: CheckedGauge): GaugeFile {
  const { gauge, verdict, permitted, step, repeatability, runs, drift, adjustment } = checked;
  return {
    schema: 'leastcut/gauge/1',
    ...(gauge?.instrument === undefined ? {} : { instrument: gauge.instrument }),
    ...(gauge?.serial === undefined ? {} : { serial: gauge.serial }),
    permitted_error: permittedRecord(permitted),
    ...(step > micrometres(0) ? { resolution_um: recorded(step) } : {}),
    ...(repeatability === undefined
      ? {}
      : {
          repeatability_um: recorded(repeatability.sd),
          repeatability_dof: repeatability.dof,
        }),
    verdict,
    checks: runs.flatMap(({ check, result }) =>
      result.shims.map((shim) => ({
        ...(check === null ? {} : { check }),
        shim_um: recorded(shim.shim),
        shim_uncertainty_um: recorded(shim.shimUncertainty),
        mean_um: recorded(shim.mean),
        n: shim.count,
        error_um: recorded(shim.error.value),
        expanded_um: recorded(shim.expanded),
        verdict: shim.verdict,
      })),
    ),
    ...(drift.length === 0 ? {} : { drift: drift.map(driftRecord) }),
    adjustment:
      adjustment === null
        ? null
        : { offset_um: recorded(adjustment.line.offset), slope: recorded(adjustment.line.slope) },
  };
}
