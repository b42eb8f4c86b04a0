/** Readings that were handed in → a survey of them, by the gauge that took them. */
import type { Diagnostic, Outcome } from '../../base/diagnostics.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { GradedSurvey } from '../../training/graded-survey.ts';
import type { VehicleReadings } from '../read/read-request.ts';
import { asMeasured, type NamedGauge, withGauge } from '../settings/gauge-in-use.ts';
import { surveyVehicle } from '../survey/survey-vehicle.ts';
import type { GradeBase } from './grade-base.ts';
import type { Entry } from './grade-hand-in.ts';
import type { GradeFilesRequest } from './grade-request.ts';
import { soundGauge } from './sound-gauge.ts';

/** The expert’s survey, by the gauge of everybody. */
export function expertSurvey(
  { expert }: GradeBase,
  request: GradeFilesRequest,
): Outcome<GradedSurvey | undefined> {
  return expert === null ? { diagnostics: [] } : surveyed(expert.readings, {}, request);
}

/** Held to one baseline for everybody, so that the same readings of a panel make the same word of it. */
export const entrySurvey = (
  { handedIn, gauge }: Entry,
  baseline: GradedSurvey | undefined,
  request: GradeFilesRequest,
): Outcome<GradedSurvey | undefined> =>
  handedIn === null
    ? { diagnostics: [] }
    : surveyed(handedIn.readings, { gauge, baseline }, request);

type By = {
  readonly gauge?: NamedGauge | undefined;
  readonly baseline?: GradedSurvey | undefined;
};

function surveyed(
  readings: VehicleReadings,
  { gauge: own, baseline }: By,
  request: GradeFilesRequest,
): Outcome<GradedSurvey> {
  const gauged = withGauge(request.settings, own ?? request.gauge);
  const inForce = withGauge(request.settings, soundGauge(own) ?? soundGauge(request.gauge)).value;
  if (gauged.value === undefined || inForce === undefined) {
    return { diagnostics: gauged.diagnostics };
  }
  // Whoever put a gauge right that failed still reads what it reads then.
  const settings = { ...inForce, adjustment: gauged.value.adjustment };
  const asRead = request.marked
    ? { ...readings, readings: readings.readings.map((one) => ({ ...one, marked: true })) }
    : readings;
  const { job } = request;
  const { value, diagnostics } = surveyVehicle({
    readings: asRead,
    baselineReadings: baseline?.readings,
    settings,
    job,
    filmRecord: undefined,
    inputs: [],
  });
  // What is said of the gauge of everybody is said once.
  const ofOwn = own === undefined ? [] : gauged.diagnostics.map((one) => asScored(one, own));
  const all = [...ofOwn, ...diagnostics];
  return value === undefined
    ? { diagnostics: all }
    : {
        value: {
          survey: value.survey,
          readings: asMeasured(asRead.readings, settings).readings,
          repeatability: onCar(settings.film.measurement.repeatability, request),
        },
        diagnostics: all,
      };
}

/** A gauge that failed widens nothing, whatever a survey by it would make of that. */
export const asScored = (said: Diagnostic, { name }: NamedGauge): Diagnostic =>
  said.code === 'gauge-failed'
    ? {
        ...said,
        message: `the gauge of ${name} failed its check on shims: its readings are scored as by the usual gauge`,
      }
    : said;

/** A gauge that repeats well on flat shims is set down on a car no better than is usual. */
const onCar = (
  ofGauge: Micrometres,
  { settings }: Pick<GradeFilesRequest, 'settings'>,
): Micrometres => micrometres(Math.max(ofGauge, settings.film.measurement.repeatability));
