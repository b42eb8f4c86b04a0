/** `leastcut/film-record/1`: what these readings say came off, added to what earlier visits took. */

import { withPoints } from '../../film/place-note.ts';
import type {
  FilmRecord,
  FilmRecordFile,
  FilmRecordVisit,
  KnownVisit,
  WrittenPlace,
} from '../../formats/film-record.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import { writtenPlaces } from '../../tasks/compare/compare-places.ts';
import { isMeasured, kept, takenText } from '../../tasks/compare/compare-visit-record.ts';

type Written = Pick<
  CompareResult,
  'vehicle' | 'visit' | 'unread' | 'planned' | 'places' | 'deeper' | 'newSpots' | 'again'
> & { readonly before: Pick<CompareResult['before'], 'facts'> };

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
  {
    vehicle,
    visit: panels,
    unread,
    planned,
    places,
    deeper,
    newSpots,
    again,
    before: { facts },
  }: Written,
  date: string,
  earlier: FilmRecord | undefined,
): FilmRecordFile {
  const before = earlier?.file;
  const name = before?.vehicle ?? vehicle;
  const visits = (before?.visits ?? [])
    .filter(isOfADay)
    .map((visit, i) => (i === again ? visit : withReadPlaces(visit, facts)));
  const written = writtenPlaces(places, panels);
  const foretold = unread.map(({ entry }) => entry);
  const withUnread = (visit: FilmRecordVisit): FilmRecordVisit =>
    planned ? { ...visit, panels: [...visit.panels.filter(isMeasured), ...foretold] } : visit;
  const withSpots = (visit: FilmRecordVisit): FilmRecordVisit => {
    const held = withPlaces(visit, written, deeper);
    return newSpots.length === 0 ? held : { ...held, spots: [...(held.spots ?? []), ...newSpots] };
  };
  return {
    ...before,
    schema: 'leastcut/film-record/1',
    ...(name === null ? {} : { vehicle: name }),
    visits:
      again !== null
        ? visits.map((visit, i) =>
            i === again ? withSpots(withUnread(readAnew(visit, panels))) : visit,
          )
        : visits.toSpliced(placeOf(date, visits), 0, withSpots(withUnread({ date, panels }))),
  };
}

/** A plan that is named again says the same of its panels, or what was worked of it. */
function withPlaces(
  visit: FilmRecordVisit,
  places: readonly WrittenPlace[],
  named: ReadonlySet<string>,
): FilmRecordVisit {
  if (named.size === 0) return visit;
  const { places: known = [], ...rest } = visit;
  const all = [...known.filter(({ panel }) => !named.has(panel)), ...places];
  return all.length === 0 ? rest : { ...rest, places: all };
}

/** A place that was read before this work stays read: whoever comes later need not read it again. */
function withReadPlaces(
  visit: FilmRecordVisit,
  facts: Written['before']['facts'],
): FilmRecordVisit {
  const { places } = visit;
  if (places === undefined) return visit;
  return {
    ...visit,
    places: withPoints(places).map(({ point, ...place }) => {
      const known = facts.get(place.panel)?.recorded.value?.places ?? [];
      const read = known.find((one) => one.date === visit.date && one.point === point)?.measured;
      return place.taken_um !== undefined || read === undefined
        ? place
        : { ...place, taken_um: kept(read.value), taken_sd_um: kept(read.standardError) };
    }),
  };
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
