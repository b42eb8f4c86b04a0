/** What the three published kinds of limit allow, at a stated risk and a stated spread of removal. */
import { at } from '../../base/at.ts';
import {
  normalCdf,
  normalCdfFrom,
  normalDensity,
  normalQuantile,
} from '../../base/stats/normal.ts';
import { expectOverNormal, normalRuleOf } from '../../base/stats/quadrature.ts';
import { type Slope, solveIncreasing } from '../../base/stats/root.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { ThinClear } from './thin-clear.ts';

/** A removal not yet made: lognormal, by its median and the SD of its logarithm. */
export type ExpectedRemoval = { readonly median: Micrometres; readonly logSd: number };

/** Quantile of a lognormal removal. */
export const removalQuantile = ({ median, logSd }: ExpectedRemoval, p: number): Micrometres =>
  micrometres(median === 0 ? 0 : median * Math.exp(normalQuantile(p) * logSd));

/** Chance that the clear on the thinnest 5 % ends under `floor`: P(C₀₅ − R < floor), by quadrature. */
export function clearRisk(
  clear: ThinClear,
  floor: Micrometres,
  { median, logSd }: ExpectedRemoval,
): number {
  const below = (removed: number): number => {
    const z = (floor + removed - clear.mean) / clear.sd;
    return normalCdfFrom(z, normalDensity(z));
  };
  return median === 0
    ? below(0)
    : expectOverNormal((z) => below(median * Math.exp(logSd * z)), turnWidth(clear, floor, logSd));
}

/** How far z has to move for the clear left to pass its floor: sd over the removal's slope an sd beyond. */
const turnWidth = ({ mean, sd }: ThinClear, floor: Micrometres, logSd: number): number =>
  sd / (Math.max(logSd, 1e-9) * (Math.max(mean - floor, 0) + sd));

/** A clear that a panel may have, with the chance of it. */
export type PossibleClear = { readonly clear: ThinClear; readonly chance: number };

type RiskTerms = { readonly risk: number; readonly logSd: number };

/** The largest median removal that keeps `clearRisk` at `risk` or under; 0 when none does. */
export const clearAllowance = (
  clear: ThinClear,
  floor: Micrometres,
  terms: RiskTerms,
): Micrometres => allowanceOver([{ clear, chance: 1 }], floor, terms);

/**
 * The same where the clear may be one of several, as likely as is said: the sum of `clearRisk` over all of them, each
 * by its chance, is kept at `risk` or under. Chances may add up to less than 1: what is left is no matter of the clear.
 */
export function allowanceOver(
  possible: readonly PossibleClear[],
  floor: Micrometres,
  { risk, logSd }: RiskTerms,
): Micrometres {
  const untouched = possible.reduce(
    (sum, { clear, chance }) => sum + chance * normalCdf((floor - clear.mean) / clear.sd),
    0,
  );
  if (untouched > risk) return micrometres(0);
  const sums = possible.map((one) => riskSum(one, floor, logSd));
  // ln(risk/allowed) is near enough a parabola that one step leaves a thousandth, and the next a millionth of that.
  const excess = (median: number): Slope => {
    const total = { value: 0, slope: 0, curvature: 0 };
    for (const sum of sums) sum(median, total);
    const slope = total.slope / total.value;
    return {
      value: Math.log(total.value / risk),
      slope,
      curvature: total.curvature / total.value - slope * slope,
    };
  };
  const [likeliest] = possible;
  if (likeliest === undefined) throw new Error('no clear to keep');
  const start = roughAllowance(likeliest.clear, floor, { risk, logSd });
  const sharpest = Math.min(...possible.map(({ clear }) => clear.sd));
  const [relative, absolute] = [2e-3 * logSd, 2e-3 * sharpest];
  // Beyond nothing the risk goes on as smoothly, so that no step is cut off there.
  return micrometres(Math.max(0, solveIncreasing(excess, { start, relative, absolute })));
}

/** Adds `clearRisk` of a median and its two derivatives in that, by the chance of the clear, to a total. */
function riskSum(
  { clear, chance }: PossibleClear,
  floor: Micrometres,
  logSd: number,
): (median: number, total: { value: number; slope: number; curvature: number }) => void {
  const { sd } = clear;
  const room = (clear.mean - floor) / sd;
  const { nodes, weights } = normalRuleOf(turnWidth(clear, floor, logSd));
  const terms = nodes.map((z, k) => ({
    per: Math.exp(logSd * z) / sd,
    weight: chance * at(weights, k),
  }));
  return (median, total) => {
    for (const { per, weight } of terms) {
      const z = median * per - room;
      const density = normalDensity(z);
      const slope = weight * density * per;
      total.value += weight * normalCdfFrom(z, density);
      total.slope += slope;
      total.curvature -= slope * per * z;
    }
  };
}

/** The same with the removal taken as normal of SD median · logSd: where the search starts. */
function roughAllowance(
  { mean, sd }: ThinClear,
  floor: Micrometres,
  { risk, logSd }: RiskTerms,
): number {
  const room = mean - floor;
  const z = normalQuantile(1 - risk);
  let median = Math.max(0, room - z * sd);
  for (let k = 0; k < 4; k += 1) median = Math.max(0, room - z * Math.hypot(sd, median * logSd));
  return Math.max(0.1, median);
}

/** The largest median with P(R > ceiling) ≤ risk. */
export const ceilingAllowance = (ceiling: number, { risk, logSd }: RiskTerms): Micrometres =>
  micrometres(Math.max(0, ceiling) * Math.exp(-normalQuantile(1 - risk) * logSd));
