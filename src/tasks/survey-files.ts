/** Gauge files → a survey of each vehicle, with the panels that were asked for. */
import { hasErrors, type Outcome } from '../base/diagnostics.ts';
import type { Panel } from '../film/template.ts';
import type { JobVehicle } from '../formats/job.ts';
import { chosenPanels } from './match-panels.ts';
import { type ReadRequest, readVehicles } from './read-vehicles.ts';
import type { Settings } from './settings.ts';
import { type SurveyResult, surveyVehicle } from './survey-vehicle.ts';

export type SurveyFilesRequest = ReadRequest & {
  readonly settings: Settings;
  readonly identity: JobVehicle | null;
  /** Names of the panels asked for; none means all. */
  readonly panels: readonly string[];
};

export type SurveyedVehicle = { readonly result: SurveyResult; readonly panels: readonly Panel[] };

export function surveyFiles(request: SurveyFilesRequest): Outcome<readonly SurveyedVehicle[]> {
  const { settings, identity } = request;
  const read = readVehicles(request);
  if (read.value === undefined) return { diagnostics: read.diagnostics };
  const { vehicles, inputs } = read.value;
  const surveyed = vehicles.map((readings) => {
    const result = surveyVehicle({ readings, settings, identity, inputs });
    if (result.value === undefined) return { diagnostics: result.diagnostics };
    const panels = chosenPanels(request.panels, result.value.survey.template);
    const diagnostics = [...result.diagnostics, ...panels.diagnostics];
    return panels.value === undefined
      ? { diagnostics }
      : { value: { result: result.value, panels: panels.value }, diagnostics };
  });
  const diagnostics = [...read.diagnostics, ...surveyed.flatMap((one) => one.diagnostics)];
  return hasErrors(diagnostics)
    ? { diagnostics }
    : {
        value: surveyed.flatMap((one) =>
          'value' in one && one.value !== undefined ? [one.value] : [],
        ),
        diagnostics,
      };
}
