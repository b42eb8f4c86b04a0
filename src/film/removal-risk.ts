/** What the three published kinds of limit allow, at a stated risk and a stated spread of removal. */
import { normalCdf, normalQuantile } from '../base/stats/normal.ts';
import { expectOverNormal } from '../base/stats/quadrature.ts';
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
  return median === 0 ? below(0) : expectOverNormal((z) => below(median * Math.exp(logSd * z)));
}

/** The largest median removal that keeps `clearRisk` at `risk` or under; 0 when none does. */
export function clearAllowance(
  clear: ThinClear,
  floor: Micrometres,
  { risk, logSd }: { readonly risk: number; readonly logSd: number },
): Micrometres {
  const keeps = (median: number): boolean =>
    clearRisk(clear, floor, { median: micrometres(median), logSd }) <= risk;
  if (!keeps(0)) return micrometres(0);
  let low = 0;
  let high = Math.max(1, clear.mean - floor + 5 * clear.sd);
  while (keeps(high)) high *= 2;
  for (let step = 0; step < 60 && high - low > 1e-10; step += 1) {
    const middle = (low + high) / 2;
    if (keeps(middle)) low = middle;
    else high = middle;
  }
  return micrometres(low);
}

/** The largest median with P(R > ceiling) ≤ risk. */
export const ceilingAllowance = (
  ceiling: number,
  { risk, logSd }: { readonly risk: number; readonly logSd: number },
): Micrometres => micrometres(Math.max(0, ceiling) * Math.exp(-normalQuantile(1 - risk) * logSd));
