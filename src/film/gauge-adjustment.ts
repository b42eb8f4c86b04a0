/**
 * The straight line a gauge reads against shims, by least squares, and readings put right by it.
 *
 * Only when asked for: a correction from few shims adds its own error to every reading, and a gauge that
 * passes its check needs none. One shim gives an offset; two or more, offset and slope:
 * reading = offset + slope·thickness.
 */
import { type Micrometres, micrometres } from '../base/units.ts';
import type { GaugeCheck } from './gauge-check.ts';

export type GaugeAdjustment = { readonly offset: Micrometres; readonly slope: number };

export function fitAdjustment({ shims }: GaugeCheck): GaugeAdjustment {
  const total = shims.reduce((sum, { count }) => sum + count, 0);
  const weighted = (of: (check: GaugeCheck['shims'][number]) => number): number =>
    shims.reduce((sum, check) => sum + check.count * of(check), 0) / total;
  const x = weighted(({ shim }) => shim);
  const y = weighted(({ mean }) => mean);
  const sxx = weighted(({ shim }) => (shim - x) ** 2);
  const sxy = weighted(({ shim, mean }) => (shim - x) * (mean - y));
  const slope = sxx === 0 ? 1 : sxy / sxx;
  return { offset: micrometres(y - slope * x), slope };
}

/** The thickness that made a gauge show this reading. */
export const adjusted = (reading: Micrometres, { offset, slope }: GaugeAdjustment): Micrometres =>
  micrometres((reading - offset) / slope);
