import { micrometres } from '../../base/units.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';

/** All that the visits took: Σ of the means, at least 0, with √Σ of the variances. */
export const takenInAll = (visits: readonly RecordedRemoval[]): RecordedRemoval => ({
  mean: micrometres(
    Math.max(
      0,
      visits.reduce((sum, { mean }) => sum + mean, 0),
    ),
  ),
  sd: micrometres(Math.hypot(...visits.map(({ sd }) => sd))),
});
