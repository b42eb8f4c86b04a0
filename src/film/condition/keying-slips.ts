/** Values that look like a slip of the key or of the decimal mark rather than film. */
import { type Remark, remark } from '../../base/remark.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import { median } from '../../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { PanelPoint } from '../panel-points.ts';
import type { Reading } from '../reading.ts';
import type { Condition } from './condition.ts';

/** How near to ten or a tenth of its neighbours a value must be, as a factor either way. */
const TOLERANCE = 1.25;
/** Neighbours that make a value stand alone. */
const LEAST_NEIGHBOURS = 2;

export type KeyingSlip = {
  readonly point: string;
  readonly thickness: Micrometres;
  readonly factor: 10 | 0.1;
};

/**
 * A lone value ten times, or a tenth of, the median of the panel's other points. It is asked about first,
 * before it is taken for a low or a high spot; it is never changed. Two such values are no slip.
 */
export function keyingSlips(points: readonly PanelPoint[]): readonly KeyingSlip[] {
  if (allAreNear(points)) return [];
  const slips = points.flatMap(({ point, thickness }, index): readonly KeyingSlip[] => {
    const others = points.filter((_, k) => k !== index).map((other) => other.thickness);
    if (others.length < LEAST_NEIGHBOURS) return [];
    const ratio = thickness / median(others);
    const factor = ([10, 0.1] as const).find((f) => isNear(ratio / f));
    return factor === undefined ? [] : [{ point, thickness, factor }];
  });
  return slips.length === 1 ? slips : [];
}

/** Nearly every panel: none of its values is as far from another as a slip must be from the middle of the others. */
function allAreNear(points: readonly PanelPoint[]): boolean {
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (const { thickness } of points) {
    if (thickness < least) least = thickness;
    if (thickness > most) most = thickness;
  }
  return least > 0 && most <= (10 / TOLERANCE) * least;
}

const isNear = (ratio: number): boolean => ratio > 1 / TOLERANCE && ratio < TOLERANCE;

/** Asked in words, before the value is taken for paint. */
export const keyingQuestion = ({ point, thickness, factor }: KeyingSlip): Remark =>
  remark(
    'keying-slip',
    says`point ${point} reads ${um(thickness, null)}, ${factor === 10 ? 'ten times' : 'a tenth of'} its neighbours: keyed wrongly?`,
    thickness,
  );

/** What was meant, if it was a slip. */
const meantBy = (thickness: Micrometres, { factor }: Pick<KeyingSlip, 'factor'>): Micrometres =>
  micrometres(factor === 10 ? thickness / 10 : thickness * 10);

/** The readings as they were meant, if each of these was a slip. */
export const asMeant = (
  readings: readonly Reading[],
  slips: ReadonlyMap<string, readonly KeyingSlip[]>,
): readonly Reading[] =>
  readings.map((one) => {
    const slip = slips.get(one.panel)?.find(({ point }) => point === one.point);
    return slip === undefined || one.layer !== '' || one.place !== 'face'
      ? one
      : { ...one, thickness: meantBy(one.thickness, slip) };
  });

/** A slip, and what the panel would be without it, all other slips of the car put right too. */
export type AskedSlip = KeyingSlip & {
  readonly condition: Condition;
  readonly budget: Micrometres;
};

/** What comes before anything else that is advised for the panel. */
export const readAgain = (slip: AskedSlip): Remark =>
  remark('read-again', says`read point ${slip.point} again before anything else: ${ifMeant(slip)}`);

/** `if 119 µm was meant, it is original and 4.53 µm may go`. */
export const ifMeant = (slip: AskedSlip): Sentence =>
  says`if ${um(meantBy(slip.thickness, slip), null)} was meant, it is ${slip.condition} and ${slip.budget === 0 ? 'nothing' : um(slip.budget, 2)} may go`;
