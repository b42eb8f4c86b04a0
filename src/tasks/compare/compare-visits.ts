/** Files of readings, one a visit, in their order → the visits of one vehicle, each with its survey. */
import { type Diagnostic, error, hasErrors, type Outcome } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import { groupBy } from '../../base/group-by.ts';
import type { MarkedAt } from '../../film/compare/compare-points.ts';
import type { ReadBy } from '../../film/compare/who-read.ts';
import { isSameVehicle } from '../../film/same-vehicle.ts';
import type { FilmRecord } from '../../formats/film-record.ts';
import type { Job } from '../../formats/job/job.ts';
import type { Placed } from '../../formats/json/placed.ts';
import { type DaysRead, daysRead } from '../read/days-read.ts';
import type { LoadedFile, ReadInput, ReadRequest, VehicleReadings } from '../read/read-request.ts';
import { readVehicles } from '../read/read-vehicles.ts';
import type { Settings } from '../settings/settings.ts';
import { operatorsBy } from '../survey/operators-differ.ts';
import { jobMismatch, recordMismatch } from '../survey/survey-files.ts';
import { type SurveyResult, surveyVehicle } from '../survey/survey-vehicle.ts';
import { outOfOrder } from './compare-order.ts';

export type Visit = {
  readonly file: string;
  readonly readings: VehicleReadings;
  readonly surveyed: SurveyResult;
  readonly marked: MarkedAt;
  readonly readBy: ReadBy;
  /** When it was read; null where nothing tells. */
  readonly days: DaysRead | null;
};

export type VisitsRequest = ReadRequest & {
  /** With the gauge that took the first readings, and with the one that took the later ones. */
  readonly settings: Settings;
  readonly settingsAfter: Settings;
  readonly job: Placed<Job> | undefined;
  readonly filmRecord: Placed<FilmRecord> | undefined;
  /** Test spots worked before the work: what they took is gone, and what they proved may be worked. */
  readonly spots?: readonly LoadedFile[];
  /** True where every point is said to be marked. */
  readonly marked: boolean;
};

/** At least two; every mistake of all the files at once. */
export function readVisits(request: VisitsRequest): Outcome<readonly Visit[]> {
  const [first, ...later] = request.files;
  if (first === undefined || later.length === 0) return { diagnostics: [needsTwo(first)] };
  const before = readVisit(first, request, request.settings);
  const templateId = request.templateId ?? before.value?.surveyed.survey.template.id;
  const after = later.map((file) =>
    readVisit(file, { ...request, templateId }, request.settingsAfter),
  );
  const all = [before, ...after];
  const visits = all.flatMap(({ value }) => value ?? []);
  const diagnostics = [
    ...all.flatMap((one) => one.diagnostics),
    ...(hasErrors(all.flatMap((one) => one.diagnostics))
      ? []
      : [...otherVehicles(visits, request), ...outOfOrder(visits)]),
  ];
  return hasErrors(diagnostics) ? { diagnostics } : { value: visits, diagnostics };
}

function readVisit(file: LoadedFile, request: VisitsRequest, settings: Settings): Outcome<Visit> {
  const read = readVehicles({ ...request, files: [file] });
  if (read.value === undefined) return { diagnostics: read.diagnostics };
  const { vehicles, inputs } = read.value;
  const [readings, second] = vehicles;
  if (readings === undefined || second !== undefined) {
    return { diagnostics: [...read.diagnostics, severalVehicles(file.name, vehicles.length)] };
  }
  const { job, filmRecord, spots = [] } = request;
  const surveyed = surveyVehicle({ readings, settings, job, filmRecord, inputs, spots });
  const diagnostics = [...read.diagnostics, ...surveyed.diagnostics];
  if (surveyed.value === undefined) return { diagnostics };
  const marked = request.marked ? () => true : markedIn(readings);
  return {
    value: {
      file: file.name,
      readings,
      surveyed: surveyed.value,
      marked,
      readBy: readersAt(readings, inputs),
      days: daysRead(readings.readings, inputs),
    },
    diagnostics,
  };
}

const key = (panel: string, point: string): string => JSON.stringify([panel, point]);

function markedIn({ readings }: VehicleReadings): MarkedAt {
  const marked = new Set(
    readings.flatMap((one) => (one.marked ? [key(one.panel, one.point)] : [])),
  );
  return (panel, point) => marked.has(key(panel, point));
}

/** Of the film as a whole, on the face: what enters a comparison. */
function readersAt({ readings }: VehicleReadings, inputs: readonly ReadInput[]): ReadBy {
  const operatorOf = operatorsBy(readings, inputs);
  const film = readings.filter(({ layer, place }) => layer === '' && place === 'face');
  const at = groupBy(film, ({ panel, point }) => key(panel, point));
  return (panel, point) =>
    (at.get(key(panel, point)) ?? []).map((reading) => operatorOf(reading) ?? null);
}

const needsTwo = (only: LoadedFile | undefined): Diagnostic =>
  error(
    'compare-one-visit',
    only === undefined
      ? 'nothing to compare'
      : `${shownFile(only.name)} alone shows no change: a comparison needs readings from before and after`,
    { hint: 'leastcut compare before.csv after.csv' },
  );

const severalVehicles = (file: string, count: number): Diagnostic =>
  error(
    'usage-several-vehicles',
    `${shownFile(file)} holds ${count} vehicles, and a comparison is of one`,
    { hint: 'name it with --vehicle' },
  );

/** A file that names no vehicle is taken to be of the same; job and record have to be of it too. */
function otherVehicles(visits: readonly Visit[], request: VisitsRequest): readonly Diagnostic[] {
  const named = visits.filter(({ readings }) => readings.vehicle !== null);
  const [first] = named;
  const others = named
    .filter(({ readings }) => !isSameVehicle(readings.vehicle ?? '', first?.readings.vehicle ?? ''))
    .map(({ file, readings }) =>
      error(
        'compare-vehicles-differ',
        `${shownFile(file)} is of vehicle "${readings.vehicle}", ${shownFile(first?.file ?? '')} of "${first?.readings.vehicle}"`,
        { at: { file }, hint: 'give readings of one vehicle, or name it with --vehicle' },
      ),
    );
  const one = (first ?? visits[0])?.readings;
  const vehicles = one === undefined ? [] : [one];
  return [
    ...others,
    ...[jobMismatch(vehicles, request), recordMismatch(vehicles, request)].flatMap(
      (problem) => problem ?? [],
    ),
  ];
}
