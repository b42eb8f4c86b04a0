/** The vehicle as the last visit found it. */
import type { Outcome } from '../../base/diagnostics.ts';
import type { SurveyComparison } from '../../film/compare/compare-surveys.ts';
import type { VehicleReadings } from '../read/read-request.ts';
import { type SurveyResult, surveyVehicle } from '../survey/survey-vehicle.ts';
import { readingsLeft } from './compare-left.ts';
import { type Rises, recordsAround, visitPanels } from './compare-visit-record.ts';
import type { Visit, VisitsRequest } from './compare-visits.ts';

/** What an earlier record holds is earlier. */
const NONE: ReadonlySet<number> = new Set();

export type Standing = {
  /** As it stood before the work: without this visit, though a record that was named may hold it already. */
  readonly before: SurveyResult;
  /** By all that is known of it, with what came off at marked points on record: what was not read again stands as before. */
  readonly known: SurveyResult;
  /** By the later readings alone with what came off on record, as a survey of them says from now on. */
  readonly asked: SurveyResult;
};

export type Compared = {
  readonly first: Visit;
  readonly last: Visit;
  readonly total: SurveyComparison;
  readonly rises: Rises;
  /** Visits on record that what came off holds, by their places. */
  readonly held: ReadonlySet<number>;
};

export function standingNow(
  { first, last, total: { panels }, rises, held }: Compared,
  { settings, settingsAfter, job, filmRecord, spots = [] }: VisitsRequest,
): Outcome<Standing> {
  const { earlier, withThis } = recordsAround(filmRecord, visitPanels(panels, rises), held);
  const surveyed = (
    readings: VehicleReadings,
    record: typeof filmRecord,
    { inputs }: SurveyResult = last.surveyed,
    by = settingsAfter,
  ) => surveyVehicle({ readings, settings: by, job, filmRecord: record, inputs, spots }).value;
  const left = readingsLeft(first.readings.readings, last.readings.readings, panels);
  // Means over other points tell what came off too vaguely: put back, their scatter would look like film.
  const paired = visitPanels(
    panels.filter(({ by }) => by === 'pairs'),
    rises,
  );
  const known = surveyed(
    { ...last.readings, readings: left },
    recordsAround(earlier, paired, NONE).withThis,
  );
  const asked = surveyed(last.readings, withThis);
  const before =
    filmRecord === undefined
      ? first.surveyed
      : surveyed(first.readings, earlier, first.surveyed, settings);
  // What the readings themselves raise was said where they were read.
  return before === undefined || known === undefined || asked === undefined
    ? { diagnostics: [] }
    : { value: { before, known, asked }, diagnostics: [] };
}
