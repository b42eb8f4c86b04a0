/**
 * What may go off a panel near its line at the risk that is taken over both sides of it together; on one of them alone
 * the risk is higher.
 *
 * With chance p it is what it would be on the other side: a removal of median m then keeps its limits with
 * p·P(broken there) + (1 − p)·P(broken here). On either side P is the risk to the clear (`clearRisk`); a removal
 * that the total or any other reason of that side forbids breaks it for certain, and so does any where nothing is
 * known of the clear. That risk grows with m: `workTo` is the largest m that keeps it, between what the sides allow.
 */
import { spoken } from '../../base/remark.ts';
import { says, um } from '../../base/sentence.ts';
import { micrometres } from '../../base/units.ts';
import { type Allowance, bounded, type UnsaidAllowance } from '../limits/allowance.ts';
import type { Limit, LimitCode } from '../limits/limit.ts';
import type { RemovalTerms } from '../limits/removal-limits.ts';
import { clearRisk } from '../limits/removal-risk.ts';
import type { OtherSide, OverBoth } from './condition-sureness.ts';

/** What may go on one side of a line; its limits need no words. */
export type OneSide = Pick<UnsaidAllowance, 'topcoat' | 'budget'> & {
  readonly limits: readonly Pick<Limit, 'code' | 'value'>[];
};

/** `otherChance` is that of the other side; `here` allows more than `there`. */
export function overBothSides(
  here: OneSide,
  there: OneSide,
  otherChance: number,
  { risk, logSd }: RemovalTerms,
): OverBoth {
  const onHere = (median: number): number => riskOn(here, median, logSd);
  const onThere = (median: number): number => riskOn(there, median, logSd);
  const riskOf = (median: number): number =>
    otherChance * onThere(median) + (1 - otherChance) * onHere(median);
  const riskOfBudget = riskOf(here.budget);
  let [low, high]: readonly [number, number] = [there.budget, here.budget];
  if (riskOfBudget <= risk) low = high;
  while (high - low > FINE_ENOUGH) {
    const middle = (low + high) / 2;
    if (riskOf(middle) <= risk) low = middle;
    else high = middle;
  }
  return {
    workTo: micrometres(low),
    riskOfBudget,
    riskLeft: riskOf(low),
    riskHere: onHere(low),
    riskThere: onThere(low),
  };
}

/** µm; a page shows hundredths. */
const FINE_ENOUGH = 1e-4;

/**
 * Limits that a removal may pass by chance, as is reckoned, or without harm to the film that is there: that film which
 * a panel would lack was polished off is one thing more that nobody knows, and counts against its life alone.
 */
const HAS_RISK: readonly LimitCode[] = ['clear', 'life'];

function riskOn({ topcoat, limits }: OneSide, median: number, logSd: number): number {
  const forbidden = limits.some(({ code, value }) => !HAS_RISK.includes(code) && value < median);
  if (forbidden || topcoat === null) return 1;
  return clearRisk(topcoat.clear, topcoat.clearFloor, { median: micrometres(median), logSd });
}

/** µm; less than a page shows is held back from nobody. */
export const HELD_BACK = 0.01;

/** What may go if the word holds, held to what may go while nobody knows whether it does. */
export function heldToBothSides(
  here: Allowance,
  { workTo }: OverBoth,
  condition: OtherSide['condition'],
): Allowance {
  if (here.budget - workTo < HELD_BACK) return here;
  const most = workTo < HELD_BACK ? 'nothing' : says`no more than ${um(workTo, 2)}`;
  const nearLine: Limit = {
    code: 'near-line',
    ...spoken(says`near its line: ${most} till it is settled whether it is ${condition}`),
    value: workTo,
  };
  return { ...here, ...bounded([...here.limits, nearLine]) };
}
