/**
 * The straight line a gauge reads against shims, by least squares, and readings put right by it.
 *
 * reading = α + β·thickness is fitted over the shims, each weighed by its readings; what makes a reading
 * true is the inverse, −α/β + reading/β. One shim gives an offset alone. Only when asked for: a correction
 * from few shims adds its own error to every reading, and a gauge that passes its check needs none.
 */
import { type Micrometres, micrometres } from '../../base/units.ts';
import { decideError, type GaugeVerdict, overallVerdict, type ShimCheck } from './gauge-check.ts';

/** True thickness = offset + slope · reading. */
export type GaugeAdjustment = { readonly offset: Micrometres; readonly slope: number };

/** Beyond these a gauge is broken, or the shims were mixed up: it is not adjusted. */
export const ADJUSTABLE = { offset: 50, leastSlope: 0.5, mostSlope: 2 } as const;

export type FittedShim = Pick<ShimCheck, 'shim' | 'count' | 'mean'>;

/** Needs one shim. Null where the line is none that a sound gauge could show. */
export function fitAdjustment(shims: readonly FittedShim[]): GaugeAdjustment | null {
  const total = shims.reduce((sum, { count }) => sum + count, 0);
  const weighted = (of: (check: FittedShim) => number): number =>
    shims.reduce((sum, check) => sum + check.count * of(check), 0) / total;
  const x = weighted(({ shim }) => shim);
  const y = weighted(({ mean }) => mean);
  const sxx = weighted(({ shim }) => (shim - x) ** 2);
  const sxy = weighted(({ shim, mean }) => (shim - x) * (mean - y));
  const slope = sxx === 0 ? 1 : sxx / sxy;
  const offset = micrometres(x - slope * y);
  return isAdjustable({ offset, slope }) ? { offset, slope } : null;
}

const isAdjustable = ({ offset, slope }: GaugeAdjustment): boolean =>
  Math.abs(offset) <= ADJUSTABLE.offset &&
  slope >= ADJUSTABLE.leastSlope &&
  slope <= ADJUSTABLE.mostSlope;

/** The thickness that made a gauge show this reading. */
export const adjusted = (reading: Micrometres, { offset, slope }: GaugeAdjustment): Micrometres =>
  micrometres(offset + slope * reading);

/** What a shim's check says once its readings are adjusted. */
export type AdjustedShim = {
  readonly shim: Micrometres;
  readonly residual: Micrometres;
  readonly expanded: Micrometres;
  readonly verdict: GaugeVerdict;
};

export type AdjustedCheck = {
  readonly verdict: GaugeVerdict;
  readonly shims: readonly AdjustedShim[];
};

export type CheckedShim = Pick<ShimCheck, 'shim' | 'mean' | 'expanded' | 'permitted'>;

/**
 * The same decision on what is left of the errors. A line through as few shims as it has parameters meets
 * each of them whatever they say, which proves nothing: that is undecided until another shim is read.
 */
export function checkAdjusted(
  checks: readonly CheckedShim[],
  adjustment: GaugeAdjustment,
): AdjustedCheck {
  const shims = checks.map(({ shim, mean, expanded, permitted }) => {
    const residual = micrometres(adjusted(mean, adjustment) - shim);
    // Of U only the part of the readings grows with the slope; the shim's own part does not shrink.
    const own = micrometres(Math.max(1, adjustment.slope) * expanded);
    return { shim, residual, expanded: own, verdict: decideError(residual, own, permitted) };
  });
  const verdict = overallVerdict(shims);
  const different = new Set(checks.map(({ shim }) => shim)).size;
  const parameters = different === 1 ? 1 : 2;
  return {
    verdict: verdict === 'pass' && different <= parameters ? 'undecided' : verdict,
    shims,
  };
}
