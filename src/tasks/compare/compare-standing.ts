/** The vehicle as the last visit found it. */
import type { Outcome } from '../../base/diagnostics.ts';
import type { SurveyComparison } from '../../film/compare/compare-surveys.ts';
import type { VehicleReadings } from '../read/read-request.ts';
import { type SurveyResult, surveyVehicle } from '../survey/survey-vehicle.ts';
import { readingsLeft } from './compare-left.ts';
import { recordsAround, visitPanels } from './compare-visit-record.ts';
import type { Visit, VisitsRequest } from './compare-visits.ts';

export type Standing = {
  /** By all that is known of it: what was not read again stands as before. What came off now is not on record. */
  readonly known: SurveyResult;
  /** By the later readings alone with what came off on record, as a survey of them says from now on. */
  readonly asked: SurveyResult;
};

export function standingNow(
  first: Visit,
  last: Visit,
  { panels }: SurveyComparison,
  { settingsAfter, job, filmRecord }: VisitsRequest,
): Outcome<Standing> {
  const { earlier, withThis } = recordsAround(filmRecord, visitPanels(panels));
  const surveyed = (readings: VehicleReadings, record: typeof filmRecord) =>
    surveyVehicle({
      readings,
      settings: settingsAfter,
      job,
      filmRecord: record,
      inputs: last.surveyed.inputs,
    }).value;
  const left = readingsLeft(first.readings.readings, last.readings.readings, panels);
  const known = surveyed({ ...last.readings, readings: left }, earlier);
  const asked = surveyed(last.readings, withThis);
  // What the readings themselves raise was said where they were read.
  return known === undefined || asked === undefined
    ? { diagnostics: [] }
    : { value: { known, asked }, diagnostics: [] };
}
