/** Gauge files and defects → a quote for each vehicle. */
import { hasErrors, type Outcome, ofVehicle } from '../../base/diagnostics.ts';
import type { Panel } from '../../film/template/template.ts';
import type { LoadedFile } from '../read/read-request.ts';
import { type SurveyFilesRequest, surveyFiles } from '../survey/survey-files.ts';
import { type QuoteResult, quoteVehicle } from './quote-vehicle.ts';

export type QuotedVehicle = { readonly result: QuoteResult; readonly panels: readonly Panel[] };

export function quoteFiles(
  request: SurveyFilesRequest & { readonly defects: LoadedFile | undefined },
): Outcome<readonly QuotedVehicle[]> {
  const surveyed = surveyFiles(request);
  if (surveyed.value === undefined) return { diagnostics: surveyed.diagnostics };
  const quoted = surveyed.value.map(({ result, panels }) => ({
    panels,
    vehicle: result.vehicle,
    outcome: quoteVehicle(result, panels, request.defects),
  }));
  const diagnostics = [
    ...surveyed.diagnostics,
    ...quoted.flatMap(({ vehicle, outcome }) =>
      ofVehicle(vehicle, quoted.length, outcome.diagnostics),
    ),
  ];
  if (hasErrors(diagnostics)) return { diagnostics };
  const value = quoted.flatMap(({ panels, outcome }) =>
    outcome.value === undefined ? [] : [{ result: outcome.value, panels }],
  );
  return { value, diagnostics };
}
