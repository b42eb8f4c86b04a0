/**
 * What a comparison left of a panel, once test spots were made since: it has those taken off that were on record by then,
 * and no later one. A word in doubt that held it back may be settled by one of those.
 */
import { micrometres } from '../../base/units.ts';
import type { LeftAfterVisit } from '../../film/film-model.ts';
import { type PlacesRead, takenAtSpots } from './places-of-spots.ts';
import type { PanelSpot } from './spots-on-record.ts';

export function leftAfterSpots(
  left: readonly LeftAfterVisit[],
  spots: readonly PanelSpot[],
  read: PlacesRead,
): readonly LeftAfterVisit[] {
  return left.flatMap((one) => {
    const { visit = 0, most, zones = {}, isNearLine = false } = one;
    const since = spots.filter(({ recorded }) => recorded === null || recorded.visit > visit);
    if (isNearLine && since.length > 0) return [];
    const gone = takenAtSpots(since, read).mean;
    const lessThat = (film: number) => micrometres(Math.max(0, film - gone));
    return {
      ...one,
      most: lessThat(most),
      zones: Object.fromEntries(
        Object.entries(zones).map(([name, film]) => [name, lessThat(film)]),
      ),
    };
  });
}
