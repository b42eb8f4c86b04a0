/** `leastcut/film-record/1`: what these readings say came off, added to what earlier visits took. */
import type {
  FilmRecord,
  FilmRecordFile,
  FilmRecordVisit,
  KnownVisit,
  WrittenPlace,
} from '../../formats/film-record.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import { writtenPlaces } from '../../tasks/compare/compare-places.ts';
import { takenText } from '../../tasks/compare/compare-visit-record.ts';

type Written = Pick<CompareResult, 'vehicle' | 'visit' | 'places' | 'newSpots' | 'again'>;

export const filmRecordText = (
  result: Written,
  date: string,
  earlier: FilmRecord | undefined,
): string => `${JSON.stringify(filmRecordFile(result, date, earlier), null, 2)}\n`;

/**
 * The visits as they stood, and this one among them by its day; one that stands there already is given the test spots
 * that it lacks, and is not added again.
 */
export function filmRecordFile(
  { vehicle, visit: panels, places, newSpots, again }: Written,
  date: string,
  earlier: FilmRecord | undefined,
): FilmRecordFile {
  const before = earlier?.file;
  const name = before?.vehicle ?? vehicle;
  const visits = (before?.visits ?? []).filter(isOfADay);
  const deeper = writtenPlaces(places, panels);
  const withSpots = (visit: FilmRecordVisit): FilmRecordVisit => {
    const held = withPlaces(visit, deeper);
    return newSpots.length === 0 ? held : { ...held, spots: [...(held.spots ?? []), ...newSpots] };
  };
  return {
    ...before,
    schema: 'leastcut/film-record/1',
    ...(name === null ? {} : { vehicle: name }),
    visits:
      again !== null
        ? visits.map((visit, i) => (i === again ? withSpots(readAnew(visit, panels)) : visit))
        : visits.toSpliced(placeOf(date, visits), 0, withSpots({ date, panels })),
  };
}

/** A plan that is named again says the same of its panels. */
function withPlaces(visit: FilmRecordVisit, places: readonly WrittenPlace[]): FilmRecordVisit {
  if (places.length === 0) return visit;
  const named = new Set(places.map(({ panel }) => panel));
  const others = (visit.places ?? []).filter(({ panel }) => !named.has(panel));
  return { ...visit, places: [...others, ...places] };
}

/** What was read anew takes the place of what stood there of its panel; the same figures stay as they were written. */
function readAnew(visit: FilmRecordVisit, panels: Written['visit']): FilmRecordVisit {
  if (takenText(visit.panels) === takenText(panels)) return visit;
  const anew = new Map(panels.map((one) => [one.panel, one]));
  const known = new Set(visit.panels.map(({ panel }) => panel));
  return {
    ...visit,
    panels: [
      ...visit.panels.map((one) => anew.get(one.panel) ?? one),
      ...panels.filter(({ panel }) => !known.has(panel)),
    ],
  };
}

/** As every visit of a record that was read is. */
const isOfADay = (visit: KnownVisit): visit is FilmRecordVisit => visit.date !== null;

/** After every visit that is not later. */
const placeOf = (date: string, visits: FilmRecordFile['visits']): number =>
  visits.findLastIndex((one) => one.date <= date) + 1;
