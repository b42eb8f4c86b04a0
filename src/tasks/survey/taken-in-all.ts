import { micrometres } from '../../base/units.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';

/** All that the visits took, what of it is gone all over the panel where that is less, where more went than might, where paint came on, what was left, which places were worked deeper and which spots left colour. */
export const takenInAll = (visits: readonly RecordedRemoval[]): RecordedRemoval => {
  const colourAt = visits.flatMap((visit) => visit.colourAt ?? []);
  const overruns = visits.flatMap((visit) => visit.overruns ?? []);
  const gains = visits.flatMap((visit) => visit.gains ?? []);
  const left = visits.flatMap((visit) => visit.left ?? []);
  const places = visits.flatMap((visit) => visit.places ?? []);
  return {
    ...sumOf(visits),
    ...(visits.some(({ allOver }) => allOver !== undefined)
      ? { allOver: sumOf(visits.map((visit) => visit.allOver ?? visit)) }
      : {}),
    ...(colourAt.length === 0 ? {} : { colourAt }),
    ...(overruns.length === 0 ? {} : { overruns }),
    ...(gains.length === 0 ? {} : { gains }),
    ...(left.length === 0 ? {} : { left }),
    ...(places.length === 0 ? {} : { places }),
  };
};

type Taken = Pick<RecordedRemoval, 'mean' | 'sd'>;

/** Σ of the means, at least 0, with √Σ of the variances. */
const sumOf = (visits: readonly Taken[]): Taken => ({
  mean: micrometres(
    Math.max(
      0,
      visits.reduce((sum, { mean }) => sum + mean, 0),
    ),
  ),
  sd: micrometres(Math.hypot(...visits.map(({ sd }) => sd))),
});
