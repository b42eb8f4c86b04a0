/** What is to be said of a panel on which a place was worked deeper at a visit on record. */
import { type Remark, remark } from '../base/remark.ts';
import { bare, says, um } from '../base/sentence.ts';
import type { PanelFacts, PlaceWorked } from './film-model.ts';

type RecordedFacts = Pick<PanelFacts, 'recorded' | 'paintedDaysAgo'>;

/** None of a panel that was painted since: what went is no part of its paint. */
const placesOf = ({ recorded, paintedDaysAgo }: RecordedFacts): readonly PlaceWorked[] =>
  paintedDaysAgo === null ? (recorded?.places ?? []) : [];

/** Those of which no reading tells what went there. */
export const unreadPlaces = (facts: RecordedFacts): readonly PlaceWorked[] =>
  placesOf(facts).filter(({ taken }) => taken === undefined);

/** A kind of defect in words, of which a record or a plan has the id. */
export const defectText = (id: string): string => id.replaceAll('-', ' ');

/**
 * The name of the point at which a place is read: its defect, counted where a visit works several on one panel. A word
 * without a number among points that have numbers may be anything but a point.
 */
export const placePoint = (defect: string, nth: number): string =>
  `${defectText(defect)} ${nth + 1}`;

/** However it is written; the first goes by the defect alone as well. */
export function isPointOf(point: string, name: string): boolean {
  const [written, meant] = [wordsOf(point), wordsOf(name)];
  return written === meant || `${written} 1` === meant;
}

const wordsOf = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, ' ');

/** Places of one visit in their order, each with the name of its point. */
export const withPoints = <Place extends { readonly panel: string; readonly defect: string }>(
  places: readonly Place[],
): readonly (Place & { readonly point: string })[] =>
  places.map((place, i) => {
    const before = places
      .slice(0, i)
      .filter(({ panel, defect }) => panel === place.panel && defect === place.defect);
    return { ...place, point: placePoint(place.defect, before.length) };
  });

/** By its defect; with its number where the panel has several of that kind. */
export const placeName = (
  { defect, point }: { readonly defect: string; readonly point: string },
  ofPanel: readonly { readonly defect: string }[],
): string =>
  ofPanel.filter((one) => one.defect === defect).length > 1 ? point : defectText(defect);

export const placeNotes = (facts: RecordedFacts): readonly Remark[] =>
  placesOf(facts).map(placeNote);

function placeNote({ date, defect, point, median, high, taken }: PlaceWorked): Remark {
  const when = date === null ? 'at this visit' : `on ${date}`;
  const spot = says`${when} a spot at ${defectText(defect)} was to take ${um(median)} more (up to ${um(high)}) at one place`;
  if (median === 0 && taken !== undefined)
    return remark(
      'place-read',
      says`${when} more went at one place of ${defectText(defect)} than of the rest of the panel: by what was read there ${bare(taken.mean)} ± ${um(taken.sd)}, and it counts in what may go from the panel`,
      taken.mean,
    );
  return taken === undefined
    ? remark(
        'place-on-record',
        says`${spot}, which nobody has read since: keep off it till it is read, as a point called “${point}”; what may go is told of the rest of the panel`,
        median,
      )
    : remark(
        'place-read',
        says`${spot}: by what was read there ${bare(taken.mean)} ± ${um(taken.sd)} went, and it counts in what may go from the panel`,
        taken.mean,
      );
}
