/** Shares of several panels as one figure, or from the least to the most. */
import { shown } from '../../base/rounding.ts';

/** `3` or `2–4`, in per cent. */
export function percentRange(shares: readonly number[]): string {
  if (shares.length === 0) return '–';
  const low = shown(100 * Math.min(...shares), 0);
  const high = shown(100 * Math.max(...shares), 0);
  return low === high ? low : `${low}–${high}`;
}
