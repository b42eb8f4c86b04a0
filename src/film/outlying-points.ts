import { studentTQuantile } from '../base/stats/student-t.ts';
import { median as medianOf } from '../base/stats/summary.ts';
import type { PanelPoint } from './panel-points.ts';
import type { SpreadPrior } from './spread.ts';

/** Chance of flagging any point of an even panel. */
const FLAG_RISK = 0.05;
/** Variance of a median of n normal values, in units of σ²/n, for large n: π/2. */
const MEDIAN_VARIANCE = 1.57;

/**
 * Points that stand out from their panel: |x − median| > t(1 − .05/n; ν)·s_p·√(1 + 1.57/n), with s_p
 * pooled over the *other* panels so that a low spot cannot hide in the spread it makes. They are
 * flagged, never removed.
 */
export function outlyingPoints(
  points: readonly PanelPoint[],
  others: SpreadPrior,
): { readonly low: readonly string[]; readonly high: readonly string[] } {
  if (points.length < 3) return { low: [], high: [] };
  const dof = Math.min(others.dofCeiling, 1e6);
  const t = studentTQuantile(1 - FLAG_RISK / points.length, dof);
  const reach = t * Math.sqrt(others.variance) * Math.sqrt(1 + MEDIAN_VARIANCE / points.length);
  const centre = medianOf(points.map(({ thickness }) => thickness));
  return {
    low: points.filter(({ thickness }) => thickness < centre - reach).map(({ point }) => point),
    high: points.filter(({ thickness }) => thickness > centre + reach).map(({ point }) => point),
  };
}
