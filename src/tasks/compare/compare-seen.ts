/** What the readings of all visits show together, and which visits on record they speak of. */
import { spoken } from '../../base/remark.ts';
import type { GaugesCompared } from '../../film/compare/compare-change.ts';
import { compareSurveys, type SurveyComparison } from '../../film/compare/compare-surveys.ts';
import type { ReadInput } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';
import { readersOf } from '../survey/operators-differ.ts';
import { risesOver, type VisitStep } from './compare-film-doubts.ts';
import { gaugesCompared, type NamedGauges } from './compare-gauges.ts';
import {
  type NamedPlaces,
  type PlacePoints,
  placesNamed,
  pointsOfPlaces,
  withoutPlaces,
} from './compare-places-read.ts';
import type { Planned } from './compare-plan.ts';
import { type Rises, visitPanels } from './compare-visit-record.ts';
import type { Visit, VisitsRequest } from './compare-visits.ts';
import { type VisitsOnRecord, visitsOnRecord } from './visits-on-record.ts';

export type Visits = {
  readonly first: Visit;
  readonly last: Visit;
  readonly all: readonly Visit[];
};

export type Seen = {
  readonly inputs: readonly ReadInput[];
  readonly assumptions: readonly Assumption[];
  readonly total: SurveyComparison;
  readonly steps: readonly VisitStep[];
  readonly rises: Rises;
  readonly found: VisitsOnRecord;
  /** Points called by a defect, of which neither a plan nor the record tells. */
  readonly named: readonly NamedPlaces[];
};

type SeenRequest = VisitsRequest & { readonly gauges: NamedGauges };

export function seenOver(visits: Visits, planned: Planned, request: SeenRequest): Seen {
  const { first, last, all } = visits;
  const inputs = onceEach(all.flatMap(({ surveyed }) => surveyed.inputs));
  const readers = [readersOfVisit(first), readersOfVisit(last)] as const;
  const { gauges, assumption } = gaugesCompared({ ...request, inputs, readers });
  const { defects } = request.settings.correction;
  const surveys = all.map(({ surveyed }) => surveyed.survey);
  const named = placesNamed(surveys, planned, defects);
  const { total, steps } = changesOver(visits, pointsOfPlaces(planned, named), gauges, request);
  const rises = risesOver(steps);
  const found = visitsOnRecord(
    visitsKnown(request),
    [comparedReadings(first), comparedReadings(last)],
    visitPanels(total.panels, rises),
    request.settings.film.compare,
  );
  const assumptions = [assumption, ...(named.length === 0 ? [] : [takenForPlaces(named)])];
  const onRecord = new Set(
    visitsKnown(request).flatMap(({ places = [] }) => places.map(({ panel }) => panel)),
  );
  const unknown = named.filter(({ panel }) => !onRecord.has(panel.id));
  return { inputs, assumptions, total, steps, rises, found, named: unknown };
}

function takenForPlaces(named: readonly NamedPlaces[]): Assumption {
  const places = named.flatMap(({ panel, points }) =>
    points.map(({ point }) => `“${point.trim()}” of ${panel.name}`),
  );
  return {
    ...spoken(
      `${places.join(', ')}: by the name the place of a spot, and left out of what came off the panel`,
    ),
    code: 'place-by-name',
    origin: 'built-in',
  };
}

const readersOfVisit = ({ readings, surveyed }: Visit): readonly string[] =>
  readersOf(readings.readings, surveyed.inputs);

export const visitsKnown = ({ filmRecord }: Pick<VisitsRequest, 'filmRecord'>) =>
  filmRecord?.value.file.visits ?? [];

/** From the first visit to the last, and from each to the next. */
function changesOver(
  { first, last, all }: Visits,
  ofPlaces: PlacePoints,
  gauges: GaugesCompared,
  { settings }: SeenRequest,
): { readonly total: SurveyComparison; readonly steps: readonly VisitStep[] } {
  const surveyOf = ({ surveyed }: Visit) => withoutPlaces(surveyed.survey, ofPlaces);
  const compare = (from: Visit, to: Visit): SurveyComparison =>
    compareSurveys(surveyOf(from), surveyOf(to), {
      marked: { before: from.marked, after: to.marked },
      readers: { before: from.readBy, after: to.readBy },
      gauges,
      model: settings.film,
      scatterDof: settings.correction.spot.scatterDof,
    });
  const steps = all.slice(1).map((to, i) => {
    const from = all[i] ?? first;
    return { from: from.file, to: to.file, comparison: compare(from, to) };
  });
  return { total: compare(first, last), steps };
}

const comparedReadings = ({ file, days, surveyed: { survey } }: Visit) => ({ file, days, survey });

/** Each survey of a visit names the test spots anew. */
const onceEach = (inputs: readonly ReadInput[]): readonly ReadInput[] =>
  inputs.filter(({ file }, i) => inputs.findIndex((one) => one.file === file) === i);
