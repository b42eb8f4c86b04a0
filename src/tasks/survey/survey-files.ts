/** Gauge files → a survey of each vehicle, with the panels that were asked for. */
import {
  type Diagnostic,
  error,
  hasErrors,
  type Outcome,
  ofVehicle,
} from '../../base/diagnostics.ts';
import type { Panel } from '../../film/template/template.ts';
import type { FilmRecord } from '../../formats/film-record.ts';
import type { Job } from '../../formats/job/job.ts';
import type { Placed } from '../../formats/json/placed.ts';
import { chosenPanels, namedPanels } from '../read/match-panels.ts';
import type { LoadedFile, ReadRequest, VehicleReadings } from '../read/read-request.ts';
import { readVehicles } from '../read/read-vehicles.ts';
import type { Settings } from '../settings/settings.ts';
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
  readonly spots?: LoadedFile | undefined;
  /** Says how bad the defects of the spots were. */
  readonly defects?: LoadedFile | undefined;
};

export type SurveyedVehicle = {
  readonly result: SurveyResult;
  readonly panels: readonly Panel[];
  /** Panels that are to be taken apart. */
  readonly why: readonly Panel[];
};

export function surveyFiles(request: SurveyFilesRequest): Outcome<readonly SurveyedVehicle[]> {
  const { settings, job, filmRecord, spots, defects } = request;
  const read = readVehicles(request);
  if (read.value === undefined) return { diagnostics: read.diagnostics };
  const { vehicles, inputs } = read.value;
  const foreign =
    jobMismatch(vehicles, request) ??
    recordMismatch(vehicles, request) ??
    spotsMismatch(vehicles, request);
  if (foreign !== undefined) return { diagnostics: [...read.diagnostics, foreign] };
  const surveyed = vehicles.map((readings) => {
    const told = (diagnostics: readonly Diagnostic[]): readonly Diagnostic[] =>
      ofVehicle(readings.vehicle, vehicles.length, diagnostics);
    const result = surveyVehicle({
      readings,
      settings,
      job,
      filmRecord,
      inputs,
      spots,
      defects,
    });
    if (result.value === undefined) return { diagnostics: told(result.diagnostics) };
    const { template } = result.value.survey;
    const panels = chosenPanels(request.panels, template);
    const why = namedPanels('--why', request.why ?? [], template);
    const diagnostics = told([...result.diagnostics, ...panels.diagnostics, ...why.diagnostics]);
    return panels.value === undefined || why.value === undefined
      ? { diagnostics }
      : { value: { result: result.value, panels: panels.value, why: why.value }, diagnostics };
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
  const read = first?.vehicle ?? null;
  const stated = job.value.vehicle?.id;
  return read === null || stated === undefined || read === stated
    ? undefined
    : error('job-mismatch', `the job is of vehicle "${stated}", the readings are of "${read}"`, {
        at: job.placeOf(['vehicle', 'id']),
        hint: 'give the job of this vehicle, or mend its vehicle.id',
      });
}

/** What one paint showed says nothing of another. */
const spotsMismatch = (
  vehicles: readonly VehicleReadings[],
  { spots }: SurveyFilesRequest,
): Diagnostic | undefined =>
  spots === undefined || vehicles.length < 2
    ? undefined
    : error(
        'spots-mismatch',
        `the input holds ${vehicles.length} vehicles, test spots are of one`,
        { at: { file: spots.name }, hint: 'name the vehicle with --vehicle' },
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
    recorded === here
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
