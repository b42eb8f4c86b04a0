/**
 * The risk of a removal reckoned over the clear in place of the removal, for a clear known within far less than its
 * room: over the removal the risk is then all but a step, which no rule of equal steps meets, while over the clear
 * P(R > C − floor) = E Φ((ln m − ln(C − floor))/σ) hardly bends, and at no doubt at all it is the lognormal's own tail.
 */
import { normalCdf, normalDensity } from '../../base/stats/normal.ts';
import { normalRuleOf } from '../../base/stats/quadrature.ts';
import type { Micrometres } from '../../base/units.ts';
import type { ThinClear } from './thin-clear.ts';

/** A sum over all that a panel may be, with its two derivatives in the median. */
export type RiskTotal = { value: number; slope: number; curvature: number };

/** SDs of a clear in its room, and in what the removal spreads by there, from which it is narrow. */
const NARROW = 32;

/** Whether the clear is narrow beside its room over the floor and beside the removal. */
export const isNarrow = ({ mean, sd }: ThinClear, floor: Micrometres, logSd: number): boolean =>
  NARROW * sd < Math.min(1, logSd) * (mean - floor);

/** Adds the risk of a median over nothing, of a clear that is narrow. */
export function riskOverClear(
  { mean, sd }: ThinClear,
  floor: Micrometres,
  logSd: number,
): (median: number, chance: number, total: RiskTotal) => void {
  // Bends over many SDs of the clear: the widest steps do.
  const { nodes, weights } = normalRuleOf(Number.POSITIVE_INFINITY);
  const rooms = nodes.map((x) => Math.log(mean - floor + sd * x));
  return (median, chance, total) => {
    const log = Math.log(median);
    for (const [k, room] of rooms.entries()) {
      const z = (log - room) / logSd;
      const weight = chance * (weights[k] as number);
      const rising = (weight * normalDensity(z)) / (logSd * median);
      total.value += weight * normalCdf(z);
      total.slope += rising;
      total.curvature -= (rising * (z / logSd + 1)) / median;
    }
  };
}
