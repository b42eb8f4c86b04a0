/** Cells that gave no reading → the points where the film was beyond the range of the gauge. */
import type { OverRange } from '../../film/condition/over-range.ts';
import type { VehicleReadings } from '../read/read-request.ts';

/** Whatever the file writes for it; a lifted probe or an empty cell tells nothing of the film. */
export const overRangeIn = (leftOut: VehicleReadings['leftOut']): readonly OverRange[] =>
  leftOut.flatMap(({ class: why, panel, point, text, place = 'face' }) =>
    why === 'over-range' && panel !== null ? [{ panel, point, text, place }] : [],
  );
