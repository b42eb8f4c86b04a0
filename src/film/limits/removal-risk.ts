/** What the three published kinds of limit allow, at a stated risk and a stated spread of removal. */
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
  const below = (removed: number): number => normalCdf((floor + removed - clear.mean) / clear.sd);
  return median === 0
    ? below(0)
    : expectOverNormal((z) => below(median * Math.exp(logSd * z)), turnWidth(clear, floor, logSd));
}

/** How far z has to move for the clear left to pass its floor: sd over the removal's slope there. */
const turnWidth = (clear: ThinClear, floor: Micrometres, logSd: number): number =>
  clear.sd / (Math.max(logSd, 1e-9) * Math.max(clear.mean - floor, clear.sd));

/** The largest median removal that keeps `clearRisk` at `risk` or under; 0 when none does. */
export function clearAllowance(
  clear: ThinClear,
  floor: Micrometres,
  { risk, logSd }: { readonly risk: number; readonly logSd: number },
): Micrometres {
  const { mean, sd } = clear;
  const room = mean - floor;
  if (normalCdf(-room / sd) > risk) return micrometres(0);
  const { nodes, weights } = normalRuleOf(turnWidth(clear, floor, logSd));
  const factors = nodes.map((z) => Math.exp(logSd * z));
  // `clearRisk` and its slope in the median, node by node. Newton's last step squares what is left.
  const excess = (median: number): Slope => {
    let value = 0;
    let slope = 0;
    for (let k = 0; k < factors.length; k += 1) {
      const factor = factors[k] ?? 1;
      const weight = weights[k] ?? 0;
      const z = (median * factor - room) / sd;
      const density = normalDensity(z);
      value += weight * normalCdfFrom(z, density);
      slope += (weight * density * factor) / sd;
    }
    return { value: value - risk, slope };
  };
  const median = solveIncreasing(excess, {
    start: roughAllowance(room, sd, { risk, logSd }),
    low: 0,
    relative: 1e-6,
    absolute: 1e-6,
  });
  return micrometres(median);
}

/** The same with the removal taken as normal of SD median · logSd: where the search starts. */
function roughAllowance(
  room: number,
  sd: number,
  { risk, logSd }: { readonly risk: number; readonly logSd: number },
): number {
  const z = normalQuantile(1 - risk);
  let median = Math.max(0, room - z * sd);
  for (let k = 0; k < 4; k += 1) median = Math.max(0, room - z * Math.hypot(sd, median * logSd));
  return Math.max(0.1, median);
}

/** The largest median with P(R > ceiling) ≤ risk. */
export const ceilingAllowance = (
  ceiling: number,
  { risk, logSd }: { readonly risk: number; readonly logSd: number },
): Micrometres => micrometres(Math.max(0, ceiling) * Math.exp(-normalQuantile(1 - risk) * logSd));
