/** Gauge files and defects → a quote for each vehicle. */
import { hasErrors, type Outcome, ofVehicle } from '../../base/diagnostics.ts';
import type { Panel } from '../../film/template/template.ts';
import type { LoadedFile } from '../read/read-request.ts';
import { type SurveyFilesRequest, surveyFiles } from '../survey/survey-files.ts';
import { dayDoubts } from './quote-day.ts';
import { type QuoteResult, quoteVehicle } from './quote-vehicle.ts';

export type QuotedVehicle = { readonly result: QuoteResult; readonly panels: readonly Panel[] };

export type QuoteFilesRequest = SurveyFilesRequest & {
  readonly defects: LoadedFile | undefined;
  /** The day that the quote is of, where it is said. */
  readonly date?: string | undefined;
};

export function quoteFiles(request: QuoteFilesRequest): Outcome<readonly QuotedVehicle[]> {
  const surveyed = surveyFiles(request);
  if (surveyed.value === undefined) return { diagnostics: surveyed.diagnostics };
  const quoted = surveyed.value.map(({ result, panels }) => ({
    panels,
    vehicle: result.vehicle,
    outcome: quoteVehicle(result, panels, request.defects),
    doubts: dayDoubts(request.date, result),
  }));
  const diagnostics = [
    ...surveyed.diagnostics,
    ...quoted.flatMap(({ vehicle, outcome, doubts }) =>
      ofVehicle(vehicle, quoted.length, [...outcome.diagnostics, ...doubts]),
    ),
  ];
  if (hasErrors(diagnostics)) return { diagnostics };
  const value = quoted.flatMap(({ panels, outcome }) =>
    outcome.value === undefined ? [] : [{ result: outcome.value, panels }],
  );
  return { value, diagnostics };
}
