/** What holds a panel whose word rests on points beyond the range of the gauge. */
import { type OverRangePoint, pointsOver } from '../condition/over-range.ts';
import { type Allowance, bounded } from './allowance.ts';

/** The same allowance, which points wait to be read again in place of why repaint waits for a test spot. */
export const heldByRange = (
  allowed: Allowance,
  overRange: readonly OverRangePoint[],
): Allowance => ({
  ...allowed,
  ...bounded(
    allowed.limits.map((limit) =>
      limit.code === 'test-spot'
        ? {
            ...limit,
            text: `${pointsOver(overRange)} beyond the range of the gauge, so filler unless the probe was lifted: read again; beyond it again, a test spot comes first`,
          }
        : limit,
    ),
  ),
});
