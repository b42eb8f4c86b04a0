/** Gauge files → a survey of each vehicle, with the panels that were asked for. */
import {
  type Diagnostic,
  error,
  found,
  hasErrors,
  type Outcome,
  ofVehicle,
} from '../../base/diagnostics.ts';
import { isSameVehicle } from '../../film/same-vehicle.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import type { FilmRecord } from '../../formats/film-record.ts';
import type { Job } from '../../formats/job/job.ts';
import type { Placed } from '../../formats/json/placed.ts';
import { chosenPanels, namedPanels } from '../read/match-panels.ts';
import type { LoadedFile, ReadRequest, VehicleReadings } from '../read/read-request.ts';
import { readVehicles } from '../read/read-vehicles.ts';
import type { Settings } from '../settings/settings.ts';
import { type MeasuredVehicle, measureVehicle } from './measure-vehicle.ts';
import type { SurveyVehicleRequest } from './survey-grounds.ts';
import { type SurveyResult, surveyVehicle } from './survey-vehicle.ts';

export type SurveyFilesRequest = ReadRequest & {
  readonly settings: Settings;
  /** What a job file says of the one vehicle it is of. */
  readonly job: Placed<Job> | undefined;
  /** What earlier visits took from it. */
  readonly filmRecord: Placed<FilmRecord> | undefined;
  /** Names of the panels asked for; none means all. */
  readonly panels: readonly string[];
  /** Names of the panels to be taken apart; none means none. */
  readonly why?: readonly string[];
  /** Records of test spots on the one vehicle. */
  readonly spots?: readonly LoadedFile[];
  /** Says how bad the defects of the spots were. */
  readonly defects?: LoadedFile | undefined;
};

/** What came of a vehicle, and the panels of it that were asked for. */
type OfVehicle<Result> = {
  readonly result: Result;
  readonly panels: readonly Panel[];
  /** Panels that are to be taken apart. */
  readonly why: readonly Panel[];
};

export type SurveyedVehicle = OfVehicle<SurveyResult>;
export type MeasuredCar = OfVehicle<MeasuredVehicle>;

export const surveyFiles = (request: SurveyFilesRequest): Outcome<readonly SurveyedVehicle[]> =>
  eachVehicle(request, surveyVehicle, ({ survey }) => survey.template);

/** What was read on each panel of each vehicle, where nobody asks for more: nothing is judged. */
export const measureFiles = (request: SurveyFilesRequest): Outcome<readonly MeasuredCar[]> =>
  eachVehicle(request, measureVehicle, ({ template }) => template);

function eachVehicle<Result>(
  request: SurveyFilesRequest,
  resultOf: (request: SurveyVehicleRequest) => Outcome<Result>,
  templateOf: (result: Result) => VehicleTemplate,
): Outcome<readonly OfVehicle<Result>[]> {
  const { settings, job, filmRecord, spots = [], defects } = request;
  const read = readVehicles(request);
  if (read.value === undefined) return { diagnostics: read.diagnostics };
  const { vehicles, inputs } = read.value;
  const foreign =
    jobMismatch(vehicles, request) ??
    recordMismatch(vehicles, request) ??
    spotsMismatch(vehicles, request);
  if (foreign !== undefined) return { diagnostics: [...read.diagnostics, foreign] };
  const told = vehicles.map((readings): Outcome<OfVehicle<Result>> => {
    const ofThis = (diagnostics: readonly Diagnostic[]): readonly Diagnostic[] =>
      ofVehicle(readings.vehicle, vehicles.length, diagnostics);
    const result = resultOf({ readings, settings, job, filmRecord, inputs, spots, defects });
    if (result.value === undefined) return { diagnostics: ofThis(result.diagnostics) };
    const template = templateOf(result.value);
    const panels = chosenPanels(request.panels, template);
    const why = namedPanels('--why', request.why ?? [], template);
    const diagnostics = ofThis([...result.diagnostics, ...panels.diagnostics, ...why.diagnostics]);
    return panels.value === undefined || why.value === undefined
      ? { diagnostics }
      : found({ result: result.value, panels: panels.value, why: why.value }, diagnostics);
  });
  const diagnostics = [...read.diagnostics, ...told.flatMap((one) => one.diagnostics)];
  return hasErrors(diagnostics)
    ? { diagnostics }
    : found(
        told.flatMap(({ value }) => value ?? []),
        diagnostics,
      );
}

/** A job describes one vehicle: its facts are never lent to another. */
export function jobMismatch(
  vehicles: readonly VehicleReadings[],
  { job }: Pick<SurveyFilesRequest, 'job'>,
): Diagnostic | undefined {
  if (job === undefined) return undefined;
  const [first, second] = vehicles;
  if (second !== undefined) {
    return error(
      'job-mismatch',
      `the input holds ${vehicles.length} vehicles, a job describes one`,
      {
        hint: 'name the vehicle with --vehicle',
      },
    );
  }
  return jobOfAnother(job, first?.vehicle ?? null);
}

/** Nothing where either names no vehicle. */
export function jobOfAnother(job: Placed<Job>, read: string | null): Diagnostic | undefined {
  const stated = job.value.vehicle?.id;
  return read === null || stated === undefined || isSameVehicle(read, stated)
    ? undefined
    : error('job-mismatch', `the job is of vehicle "${stated}", the readings are of "${read}"`, {
        at: job.placeOf(['vehicle', 'id']),
        hint: 'give the job of this vehicle, or mend its vehicle.id',
      });
}

/** What one paint showed says nothing of another. */
const spotsMismatch = (
  vehicles: readonly VehicleReadings[],
  { spots: [first] = [] }: SurveyFilesRequest,
): Diagnostic | undefined =>
  first === undefined || vehicles.length < 2
    ? undefined
    : error(
        'spots-mismatch',
        `the input holds ${vehicles.length} vehicles, test spots are of one`,
        { at: { file: first.name }, hint: 'name the vehicle with --vehicle' },
      );

/** What was taken from one vehicle says nothing of another. */
export function recordMismatch(
  [first]: readonly VehicleReadings[],
  { job, filmRecord }: Pick<SurveyFilesRequest, 'job' | 'filmRecord'>,
): Diagnostic | undefined {
  const recorded = filmRecord?.value.vehicle;
  const here = first?.vehicle ?? job?.value.vehicle?.id;
  return filmRecord === undefined ||
    recorded === undefined ||
    here === undefined ||
    isSameVehicle(recorded, here)
    ? undefined
    : error(
        'film-record-mismatch',
        `the film record is of vehicle "${recorded}", this one is "${here}"`,
        {
          at: filmRecord.placeOf(['vehicle']),
          hint: 'name the record of this vehicle in the job, as film_record',
        },
      );
}
