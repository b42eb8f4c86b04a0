import { sum } from '../../base/sum.ts';
import { micrometres } from '../../base/units.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';

/** All that the visits took, what of it is gone all over the panel where that is less, where more went than might, where paint came on, which work nobody read, what was left, which places were worked deeper and which spots left colour. */
export const takenInAll = (visits: readonly RecordedRemoval[]): RecordedRemoval => {
  const colourAt = visits.flatMap((visit) => visit.colourAt ?? []);
  const overruns = visits.flatMap((visit) => visit.overruns ?? []);
  const gains = visits.flatMap((visit) => visit.gains ?? []);
  const unread = visits.flatMap((visit) => visit.unread ?? []);
  const left = visits.flatMap((visit) => visit.left ?? []);
  const places = visits.flatMap((visit) => visit.places ?? []);
  const allOver = sumOf(visits.map((visit) => visit.allOver ?? visit));
  const atPlaces = sum(
    visits.map((visit) => Math.max(0, visit.mean - (visit.allOver ?? visit).mean)),
  );
  return {
    // A visit at which film seems to have come on hides nothing of what went at a place.
    mean: micrometres(allOver.mean + atPlaces),
    sd: sumOf(visits).sd,
    ...(visits.some((visit) => visit.allOver !== undefined) ? { allOver } : {}),
    ...(colourAt.length === 0 ? {} : { colourAt }),
    ...(overruns.length === 0 ? {} : { overruns }),
    ...(gains.length === 0 ? {} : { gains }),
    ...(unread.length === 0 ? {} : { unread }),
    ...(left.length === 0 ? {} : { left }),
    ...(places.length === 0 ? {} : { places }),
  };
};

type Taken = Pick<RecordedRemoval, 'mean' | 'sd'>;

/** Σ of the means, at least 0, with √Σ of the variances. */
const sumOf = (visits: readonly Taken[]): Taken => ({
  mean: micrometres(Math.max(0, sum(visits.map((visit) => visit.mean)))),
  sd: micrometres(Math.hypot(...visits.map(({ sd }) => sd))),
});
