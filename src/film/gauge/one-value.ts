/**
 * Whether all readings of a car are one value by more than chance: a gauge that is stuck, or rows filled down.
 *
 * Set down again, a gauge in order scatters by its repeatability u at the least, and paint varies besides. The chance
 * that n readings show one value on a display of step δ is at most (2·Φ(δ/2u) − 1)ⁿ: 0.26ⁿ at 1 µm and u = 1.5, and
 * 0.9ⁿ at 5 µm, where the spread rounds away. Under `falseAlarm` it is told. One point may be read again and again
 * without lifting the gauge; two are not.
 */
import { normalCdf } from '../../base/stats/normal.ts';
import type { Micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import { displayStep } from '../panel-points.ts';
import type { Reading } from '../reading.ts';

/** Undefined where readings differ, are few, or may well be alike. */
export function oneValue(
  readings: readonly Reading[],
  { repeatability, rounds, step }: FilmModel['measurement'],
): number | undefined {
  const total = readings.filter(({ layer }) => layer === '');
  const [first] = total;
  const isOne = total.every(({ thickness }) => thickness === first?.thickness);
  const points = new Set(total.map(({ panel, point }) => JSON.stringify([panel, point]))).size;
  if (first === undefined || !isOne || total.length < rounds.fewest || points < 2) return undefined;
  const reach = (step ?? finestStep(first)) / 2 / repeatability;
  const chance = (2 * normalCdf(reach) - 1) ** total.length;
  return chance < rounds.falseAlarm ? first.thickness : undefined;
}

/** By its digits: `110` may be a display of tens. */
const finestStep = ({ thickness, decimals = 0 }: Reading): number =>
  decimals > 0
    ? Math.min(displayStep([thickness]), stepWritten(thickness, decimals))
    : displayStep([thickness]);

/**
 * Decimals tell the unit that was shown. In mil they are the step itself; in µm an export may write `.0` behind whole
 * ones, but hardly behind tens. A value that may be of either counts as the coarser.
 */
function stepWritten(thickness: Micrometres, decimals: number): number {
  const inMil = MIL / 10 ** decimals;
  return isMultiple(thickness, inMil) ? Math.max(inMil, WHOLE) : WHOLE;
}

const isMultiple = (value: number, step: number): boolean =>
  Math.abs(value / step - Math.round(value / step)) < 1e-6;

const MIL = 25.4;
const WHOLE = 1;
