/**
 * Whether all readings of a car are one value by more than chance: a gauge that is stuck, or rows filled down.
 *
 * Set down again, a gauge in order scatters by its repeatability u at the least, and paint varies besides. The chance
 * that n readings show one value on a display of step δ is at most (2·Φ(δ/2u) − 1)ⁿ: 0.26ⁿ at 1 µm and u = 1.5, and
 * 0.9ⁿ at 5 µm, where the spread rounds away. Under `falseAlarm` it is told.
 */
import { normalCdf } from '../../base/stats/normal.ts';
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
  const panels = new Set(total.map(({ panel }) => panel)).size;
  if (first === undefined || !isOne || total.length < rounds.fewest || panels < 2) return undefined;
  const reach = (step ?? finestStep(first)) / 2 / repeatability;
  const chance = (2 * normalCdf(reach) - 1) ** total.length;
  return chance < rounds.falseAlarm ? first.thickness : undefined;
}

/** By its digits, in mil if need be: `110.0` is no display of tens, while `110` may be. */
const finestStep = ({ thickness, decimals = 0 }: Reading): number =>
  Math.min(
    displayStep([thickness]),
    decimals > 0 ? MIL / 10 ** decimals : Number.POSITIVE_INFINITY,
  );
const MIL = 25.4;
