/**
 * What is typed for all jobs, looked at before any is begun: what is wrong with it is wrong with every job,
 * and is said once.
 */
import { hasErrors, type Outcome } from '../../base/diagnostics.ts';
import type { IntakeOptions } from '../../intake/intake-options.ts';
import { intakeOptions } from '../../tasks/read/read-vehicles.ts';
import type { World } from '../command.ts';
import { loadSurveyInputs } from '../load/load-gauge.ts';
import { readRequest } from '../load/load-inputs.ts';
import type { TypedOptions } from '../options.ts';

/** How readings are to be read, as far as the command line and the settings files that all jobs share say it. */
export async function commonSettings(
  options: TypedOptions,
  world: World,
): Promise<Outcome<IntakeOptions>> {
  const inputs = await loadSurveyInputs([], options, world);
  return inputs.value === undefined || hasErrors(inputs.diagnostics)
    ? { diagnostics: inputs.diagnostics }
    : intakeOptions(readRequest(inputs.value, options));
}
