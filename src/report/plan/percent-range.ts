/** Shares of several panels as one figure, or from the least to the most. */
import { rangeShown, shown } from '../../base/rounding.ts';

/** `3` or `2–4`, in per cent. */
export const percentRange = (shares: readonly number[]): string =>
  shares.length === 0 ? '–' : rangeShown(shares, (share) => shown(100 * share, 0));
