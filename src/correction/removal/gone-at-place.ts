/**
 * What is held of a spot once its place was read: the forecast by what was measured, as of any removal. A spot is small,
 * and a probe beside it reads nothing gone: less than the middle of the forecast counts only where the reading, by all
 * that it may be off by (95 % on one side), bears it.
 */
import { Z_95 } from '../../base/stats/normal.ts';
import { micrometres } from '../../base/units.ts';
import type { PlaceWorked, RecordedRemoval } from '../../film/film-model.ts';
import { heldRemoval, type MeasuredRemoval } from './measured-removal.ts';

export function goneAtPlace(
  { median, high }: Pick<PlaceWorked, 'median' | 'high'>,
  measured: MeasuredRemoval,
): Pick<RecordedRemoval, 'mean' | 'sd'> {
  const logSd = Math.max(0, Math.log(high / median) / Z_95);
  const held = heldRemoval(median > 0 ? { median, logSd } : null, measured);
  const atMost = measured.value + Z_95 * measured.standardError;
  return { ...held, mean: micrometres(Math.max(held.mean, Math.min(median, atMost))) };
}
