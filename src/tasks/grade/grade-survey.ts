/** Readings that were handed in → a survey of them, by the gauge that took them. */
import type { Outcome } from '../../base/diagnostics.ts';
import type { GradedSurvey } from '../../training/graded-survey.ts';
import type { VehicleReadings } from '../read/read-request.ts';
import { asMeasured, type NamedGauge, withGauge } from '../settings/gauge-in-use.ts';
import { surveyVehicle } from '../survey/survey-vehicle.ts';
import type { GradeBase } from './grade-base.ts';
import type { Entry } from './grade-hand-in.ts';
import type { GradeFilesRequest } from './grade-request.ts';

/** The expert’s survey, by the gauge of everybody. */
export function expertSurvey(
  { expert }: GradeBase,
  request: GradeFilesRequest,
): Outcome<GradedSurvey | undefined> {
  return expert === null ? { diagnostics: [] } : surveyed(expert.readings, undefined, request);
}

export const entrySurvey = (
  { handedIn, gauge }: Entry,
  request: GradeFilesRequest,
): Outcome<GradedSurvey | undefined> =>
  handedIn === null ? { diagnostics: [] } : surveyed(handedIn.readings, gauge, request);

function surveyed(
  readings: VehicleReadings,
  own: NamedGauge | undefined,
  request: GradeFilesRequest,
): Outcome<GradedSurvey> {
  const gauged = withGauge(request.settings, own ?? request.gauge);
  const settings = gauged.value;
  if (settings === undefined) return { diagnostics: gauged.diagnostics };
  const asRead = request.marked
    ? { ...readings, readings: readings.readings.map((one) => ({ ...one, marked: true })) }
    : readings;
  const { job } = request;
  const { value, diagnostics } = surveyVehicle({
    readings: asRead,
    settings,
    job,
    filmRecord: undefined,
    inputs: [],
  });
  // What is said of the gauge of everybody is said once.
  const all = [...(own === undefined ? [] : gauged.diagnostics), ...diagnostics];
  return value === undefined
    ? { diagnostics: all }
    : {
        value: {
          survey: value.survey,
          readings: asMeasured(asRead.readings, settings).readings,
          repeatability: settings.film.measurement.repeatability,
        },
        diagnostics: all,
      };
}
