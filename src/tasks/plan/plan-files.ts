/** Gauge files and defects → a plan for each vehicle. */
import { hasErrors, type Outcome, ofVehicle } from '../../base/diagnostics.ts';
import type { Panel } from '../../film/template/template.ts';
import type { LoadedFile } from '../read/read-request.ts';
import { type SurveyFilesRequest, surveyFiles } from '../survey/survey-files.ts';
import { type PlanResult, planVehicle } from './plan-vehicle.ts';

export type PlannedVehicle = { readonly result: PlanResult; readonly panels: readonly Panel[] };

export function planFiles(
  request: SurveyFilesRequest & { readonly defects: LoadedFile | undefined },
): Outcome<readonly PlannedVehicle[]> {
  const surveyed = surveyFiles(request);
  if (surveyed.value === undefined) return { diagnostics: surveyed.diagnostics };
  const planned = surveyed.value.map(({ result, panels: asked, why }) => {
    // A panel to be taken apart is planned whether or not it was named besides.
    const panels = [...asked, ...why.filter((panel) => !asked.includes(panel))];
    const outcome = planVehicle(result, panels, request.defects, why);
    return { panels, outcome, vehicle: result.vehicle };
  });
  const diagnostics = [
    ...surveyed.diagnostics,
    ...planned.flatMap(({ vehicle, outcome }) =>
      ofVehicle(vehicle, planned.length, outcome.diagnostics),
    ),
  ];
  return hasErrors(diagnostics)
    ? { diagnostics }
    : {
        value: planned.flatMap(({ panels, outcome }) =>
          outcome.value === undefined ? [] : [{ result: outcome.value, panels }],
        ),
        diagnostics,
      };
}
