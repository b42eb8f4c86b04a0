/** What the three published kinds of limit allow, at a stated risk and a stated spread of removal. */
import { normalCdf, normalDensity, normalQuantile } from '../base/stats/normal.ts';
import { expectOverNormal } from '../base/stats/quadrature.ts';
import { solveIncreasing } from '../base/stats/root.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
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
  const excess = (median: number): number =>
    clearRisk(clear, floor, { median: micrometres(median), logSd }) - risk;
  if (excess(0) > 0) return micrometres(0);
  const slope = (median: number): number =>
    expectOverNormal(
      (z) => {
        const factor = Math.exp(logSd * z);
        return (
          (normalDensity((floor + median * factor - clear.mean) / clear.sd) * factor) / clear.sd
        );
      },
      turnWidth(clear, floor, logSd),
    );
  const median = solveIncreasing((x) => ({ value: excess(x), slope: slope(x) }), {
    start: Math.max(0.1, (clear.mean - floor) / 2),
    low: 0,
    relative: 1e-12,
    absolute: 1e-12,
  });
  return micrometres(median);
}

/** The largest median with P(R > ceiling) ≤ risk. */
export const ceilingAllowance = (
  ceiling: number,
  { risk, logSd }: { readonly risk: number; readonly logSd: number },
): Micrometres => micrometres(Math.max(0, ceiling) * Math.exp(-normalQuantile(1 - risk) * logSd));
