/**
 * Places that a visit on record worked deeper than their panel, once somebody read them: what is held to have gone there
 * is gone from the panel as a test spot's is, at one place of it. Of one visit each is a place of its own, so no place
 * lost more than the most; a later visit may have worked the same, so its most adds to that.
 */
import { groupBy } from '../../base/group-by.ts';
import { sum } from '../../base/sum.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { goneAtPlace } from '../../correction/removal/gone-at-place.ts';
import type { MeasuredRemoval } from '../../correction/removal/measured-removal.ts';
import type { FilmModel, PlaceWorked, RecordedRemoval } from '../../film/film-model.ts';
import { gatherPoints, type PanelPoint } from '../../film/panel-points.ts';
import { isPointOf } from '../../film/place-note.ts';
import { missingAtPlace } from '../../film/place-reading.ts';
import type { Reading } from '../../film/reading.ts';
import type { DaysRead } from '../read/days-read.ts';
import type { EffectiveFacts } from '../settings/panel-facts.ts';

type Facts = ReadonlyMap<string, EffectiveFacts>;

type Read = {
  readonly readings: readonly Reading[];
  /** When they were read; null where nothing tells. */
  readonly days: DaysRead | null;
};

export function placesRead(facts: Facts, { readings, days }: Read, model: FilmModel): Facts {
  const read = [...facts].flatMap(([id, own]) => {
    const { value: recorded } = own.recorded;
    if (recorded?.places === undefined) return [];
    const points = gatherPoints(
      readings.filter(
        ({ panel, layer, place }) => panel === id && layer === '' && place === 'face',
      ),
    );
    const places = byPoint(recorded.places, points, (place) => isSince(place, days), model);
    const value = withPlaces(recorded, places);
    return [[id, { ...own, recorded: { ...own.recorded, value } }] as const];
  });
  return read.length === 0 ? facts : new Map([...facts, ...read]);
}

/** Of a visit that is compared just now the comparison tells; readings of an earlier day are no reading since. */
const isSince = ({ date }: PlaceWorked, days: DaysRead | null): boolean =>
  date !== null && (days === null || days.from.slice(0, date.length) >= date);

function byPoint(
  places: readonly PlaceWorked[],
  points: readonly PanelPoint[],
  isSinceThen: (place: PlaceWorked) => boolean,
  model: FilmModel,
): readonly PlaceWorked[] {
  const others = points.filter(({ point }) => !places.some((one) => isPointOf(point, one.point)));
  const measured = places.map((place) =>
    place.measured === undefined ? place : { ...place, taken: goneAtPlace(place, place.measured) },
  );
  return measured.map((place): PlaceWorked => {
    if (place.taken !== undefined || !isSinceThen(place)) return place;
    const found = points.find(({ point }) => isPointOf(point, place.point));
    const missing = found === undefined ? null : missingAtPlace(found, others, model);
    if (missing === null) return place;
    const sameMark = measured.filter(({ point }) => isPointOf(point, place.point));
    const own = shareOf(place, sameMark, missing);
    return { ...place, measured: own, taken: goneAtPlace(place, own) };
  });
}

/** Several visits at one mark took together what is missing there: each that was not read, its part by its forecast. */
function shareOf(
  { median }: PlaceWorked,
  sameMark: readonly PlaceWorked[],
  { value, standardError }: MeasuredRemoval,
): MeasuredRemoval {
  const known = sum(sameMark.map(({ taken }) => taken?.mean ?? 0));
  const unread = sameMark.filter(({ taken }) => taken === undefined);
  const all = sum(unread.map((one) => one.median));
  const share = all > 0 ? median / all : 1 / unread.length;
  return { value: micrometres((value - known) * share), standardError };
}

/** What the visits took beside the places stays gone all over the panel. */
function withPlaces(recorded: RecordedRemoval, places: readonly PlaceWorked[]): RecordedRemoval {
  const read = places.flatMap(({ date, taken }) => (taken === undefined ? [] : [{ date, taken }]));
  if (read.length === 0) return { ...recorded, places };
  const ofVisits = [...groupBy(read, ({ date }) => date).values()].map(mostOf);
  const { mean, sd } = recorded;
  return {
    ...recorded,
    mean: micrometres(mean + sum(ofVisits.map((one) => one.mean))),
    sd: hypot([sd, ...ofVisits.map((one) => one.sd)]),
    allOver: recorded.allOver ?? { mean, sd },
    places,
  };
}

type Taken = Pick<RecordedRemoval, 'mean' | 'sd'>;

const mostOf = (places: readonly { readonly taken: Taken }[]): Taken => ({
  mean: micrometres(Math.max(...places.map(({ taken }) => taken.mean))),
  sd: micrometres(Math.max(...places.map(({ taken }) => taken.sd))),
});

const hypot = (sds: readonly Micrometres[]): Micrometres => micrometres(Math.hypot(...sds));
