/**
 * What may go off a panel near its line at the risk that is taken, whichever side of the line it lies on.
 *
 * With chance p it is what it would be on the other side: a removal of median m then keeps its limits with
 * p·P(broken there) + (1 − p)·P(broken here). On either side P is the risk to the clear (`clearRisk`); a removal
 * that another limit of that side forbids breaks it for certain, and so does any where nothing is known of the
 * clear. That risk grows with m: `workTo` is the largest m that keeps it, found between what the two sides allow.
 */
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { Allowance } from '../limits/allowance.ts';
import type { RemovalTerms } from '../limits/removal-limits.ts';
import { clearRisk } from '../limits/removal-risk.ts';
import type { OverBoth } from './condition-sureness.ts';

/** `otherChance` is that of the other side; `here` allows more than `there`. */
export function overBothSides(
  here: Allowance,
  there: Allowance,
  otherChance: number,
  { risk, logSd }: RemovalTerms,
): OverBoth {
  const riskOf = (median: number): number =>
    otherChance * riskOn(there, median, logSd) + (1 - otherChance) * riskOn(here, median, logSd);
  const riskOfBudget = riskOf(here.budget);
  let [low, high]: readonly [number, number] = [there.budget, here.budget];
  if (riskOfBudget <= risk) low = high;
  while (high - low > FINE_ENOUGH) {
    const middle = (low + high) / 2;
    if (riskOf(middle) <= risk) low = middle;
    else high = middle;
  }
  return { workTo: micrometres(low), riskOfBudget };
}

/** µm; a page shows hundredths. */
const FINE_ENOUGH = 1e-4;

function riskOn({ topcoat, limits }: Allowance, median: number, logSd: number): number {
  const forbidden = limits.some(({ code, value }) => code !== 'clear' && value < median);
  if (forbidden || topcoat === null) return 1;
  return clearRisk(topcoat.clear, topcoat.clearFloor, { median: micrometres(median), logSd });
}

export const worksToLess = (budget: Micrometres, { workTo }: OverBoth): boolean =>
  budget - workTo > FINE_ENOUGH;
