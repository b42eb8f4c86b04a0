/**
 * Points that stand out from their panel: flagged for another look, never removed.
 *
 * With a pool of other panels: |x − median| > t(1 − level/n; ν)·s_p·√(1 + 1.57/n), with s_p pooled over
 * the *other* panels, so that a low spot cannot hide in the spread it makes. Without one the panel has
 * only itself: from ten points on the generalised ESD test (Rosner 1983) for up to a fifth of the points,
 * from five on Grubbs' test for the farthest; under five nothing can be said.
 */
import { kept } from '../../base/kept.ts';
import { farthest, generalisedEsd, grubbsCritical } from '../../base/stats/outliers.ts';
import { studentTQuantile } from '../../base/stats/student-t.ts';
import { median as medianOf } from '../../base/stats/summary.ts';
import type { PanelPoint } from '../panel-points.ts';
import type { PooledSpread } from '../spread.ts';

/** Variance of a median of n normal values, in units of σ²/n, for large n: π/2. */
const MEDIAN_VARIANCE = 1.57;
/** Points under which a panel cannot witness against its own. */
const LEAST_FOR_GRUBBS = 5;
const LEAST_FOR_ESD = 10;
/** Of two points neither stands out from the other. */
const LEAST_BESIDE_OTHERS = 3;

/** Which rule looked for points that stand out; none where the points are too few to tell. */
export type FlagRule = 'other-panels' | 'esd' | 'grubbs' | 'none';

export type OutlyingPoints = {
  readonly low: readonly string[];
  readonly high: readonly string[];
  readonly rule: FlagRule;
};

/**
 * `others` is what the other panels say of the spread, null where they are too few to say anything; `level`
 * the chance of flagging any point of an even panel.
 */
export function outlyingPoints(
  points: readonly PanelPoint[],
  others: PooledSpread | null,
  level: number,
): OutlyingPoints {
  const values = points.map(({ thickness }) => thickness);
  const flagged =
    others === null ? standingAlone(values, level) : beyondReach(values, others, level);
  const rule = ruleFor(values.length, others);
  if (flagged.length === 0) return { low: [], high: [], rule };
  const centre = medianOf(values);
  const named = (side: (value: number) => boolean): readonly string[] =>
    points
      .filter(({ thickness }, index) => flagged.includes(index) && side(thickness))
      .map(({ point }) => point);
  return { low: named((value) => value < centre), high: named((value) => value > centre), rule };
}

function ruleFor(count: number, others: PooledSpread | null): FlagRule {
  if (others !== null) return count < LEAST_BESIDE_OTHERS ? 'none' : 'other-panels';
  if (count >= LEAST_FOR_ESD) return 'esd';
  return count < LEAST_FOR_GRUBBS ? 'none' : 'grubbs';
}

/** Kept: panels have few counts of points, and the other panels of a car few degrees of freedom. */
const reachInSds = kept(studentTQuantile, 1024);

function beyondReach(
  values: readonly number[],
  others: PooledSpread,
  level: number,
): readonly number[] {
  if (values.length < LEAST_BESIDE_OTHERS) return [];
  const t = reachInSds(1 - level / values.length, others.dofCeiling);
  const reach = t * Math.sqrt(others.variance) * Math.sqrt(1 + MEDIAN_VARIANCE / values.length);
  const centre = medianOf(values);
  return values.flatMap((value, k) => (Math.abs(value - centre) > reach ? [k] : []));
}

function standingAlone(values: readonly number[], level: number): readonly number[] {
  const n = values.length;
  if (n >= LEAST_FOR_ESD) {
    return generalisedEsd(values, { most: Math.max(1, Math.floor(n / 5)), level }).outliers;
  }
  if (n < LEAST_FOR_GRUBBS) return [];
  const { index, distance } = farthest(values);
  return distance > grubbsCritical(n, level, 2) ? [index] : [];
}
