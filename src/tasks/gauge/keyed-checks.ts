/**
 * Readings of shims that are the shim by a factor: 25.4 either way is another unit, ten either way a decimal mark in the
 * wrong place. No gauge is off by so much: what was written is to be mended, and not the gauge.
 */
import { at } from '../../base/at.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import { MICROMETRES_PER_MIL } from '../../base/units.ts';
import { isNear, timesOf } from '../../film/condition/keying-slips.ts';
import type { ShimReading } from '../../film/gauge/gauge-check.ts';

const UNITS = [MICROMETRES_PER_MIL, 1 / MICROMETRES_PER_MIL] as const;
const FACTORS = [...UNITS, 10, 0.1] as const;

/** What to mend, by the first of them; null where there is none. */
export function keyedText(readings: readonly ShimReading[]): Sentence | null {
  const keyed = readings
    .filter(({ shim }) => shim > 0)
    .flatMap((one) =>
      FACTORS.filter((factor) => isNear(one.reading / one.shim / factor)).map((factor) => ({
        ...one,
        factor,
      })),
    );
  if (keyed.length === 0) return null;
  const { reading, shim, factor } = at(keyed, 0);
  const isUnit = UNITS.some((one) => one === factor);
  const what = isUnit
    ? 'mil and µm mixed up? Name the unit that the gauge showed'
    : 'a decimal mark in the wrong place? Write what the gauge showed';
  return says`Look at the figures before the gauge: ${um(reading, null)} is ${timesOf({ factor })} the shim of ${um(shim, null)}${keyed.length === 1 ? '' : `, and so with ${keyed.length - 1} more`}: ${what}, and check again.`;
}
