/** The vehicle as the last visit found it. */
import type { Outcome } from '../../base/diagnostics.ts';
import {
  type SurveyComparison,
  withAllPoints,
  withoutPointsApart,
} from '../../film/compare/compare-surveys.ts';
import type { VehicleReadings } from '../read/read-request.ts';
import { type SurveyResult, surveyVehicle } from '../survey/survey-vehicle.ts';
import { readingsLeft } from './compare-left.ts';
import { type Rises, recordsAround, visitPanels, withoutPlacesAt } from './compare-visit-record.ts';
import type { Visit, VisitsRequest } from './compare-visits.ts';
import { withoutOdd } from './odd-readings.ts';

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
  /** Panels on which the plan works a place deeper: what a record has of this visit's it says itself. */
  readonly deeper: ReadonlySet<string>;
};

export type Standings = {
  /** By all that was read. */
  readonly all: Standing;
  /** Without readings of points that stand out; the same where there are none. */
  readonly rest: Standing;
};

/** Of points that stand out other panels are told nothing. */
export function standings(compared: Compared, request: VisitsRequest): Outcome<Standings> {
  const { total } = compared;
  const all = standingNow({ ...compared, total: withAllPoints(total) }, request);
  if (all.value === undefined) return { diagnostics: all.diagnostics };
  if (total.panels.every(({ apart }) => apart === null)) {
    return { value: { all: all.value, rest: all.value }, diagnostics: [] };
  }
  const rest = standingNow(withoutApart(compared, request), request);
  return rest.value === undefined
    ? { diagnostics: rest.diagnostics }
    : { value: { all: all.value, rest: rest.value }, diagnostics: [] };
}

function withoutApart(
  { first, last, total, ...others }: Compared,
  { settings, job, spots = [] }: VisitsRequest,
): Compared {
  const of = (visit: Visit, odd: 'before' | 'after'): Visit['readings'] => ({
    ...visit.readings,
    readings: withoutOdd(visit.readings.readings, odd, total),
  });
  const readings = of(first, 'before');
  const { inputs } = first.surveyed;
  const surveyed =
    readings.readings === first.readings.readings
      ? first.surveyed
      : (surveyVehicle({ readings, settings, job, filmRecord: undefined, inputs, spots }).value ??
        first.surveyed);
  return {
    ...others,
    first: { ...first, readings, surveyed },
    last: { ...last, readings: of(last, 'after') },
    total: withoutPointsApart(total),
  };
}

function standingNow(
  { first, last, total: { panels }, rises, held, deeper }: Compared,
  { settings, settingsAfter, job, filmRecord: named, spots = [] }: VisitsRequest,
): Outcome<Standing> {
  const filmRecord = withoutPlacesAt(named, held, (panel) => deeper.has(panel));
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
      : surveyed(
          first.readings,
          withoutPlacesAt(earlier, held, () => true),
          first.surveyed,
          settings,
        );
  // What the readings themselves raise was said where they were read.
  return before === undefined || known === undefined || asked === undefined
    ? { diagnostics: [] }
    : { value: { before, known, asked }, diagnostics: [] };
}
