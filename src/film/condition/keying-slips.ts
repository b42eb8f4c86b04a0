/** Values that look like a slip of the key or of the decimal mark rather than film. */
import { type Remark, remark } from '../../base/remark.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import { median } from '../../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { PanelPoint } from '../panel-points.ts';
import type { Reading } from '../reading.ts';
import type { Condition } from './condition.ts';

/** How near to ten or a tenth of its neighbours a value must be, as a factor either way. */
export const SLIP_TOLERANCE = 1.25;
/** Neighbours that make a value stand alone. */
const LEAST_NEIGHBOURS = 2;

export type KeyingSlip = {
  readonly point: string;
  readonly thickness: Micrometres;
  /** Of its neighbours, or of the other panels. */
  readonly factor: number;
  /** How many points slipped alike, where all of its panel did. */
  readonly ofPanel?: number;
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
  return least > 0 && most <= (10 / SLIP_TOLERANCE) * least;
}

export const isNear = (ratio: number): boolean =>
  ratio > 1 / SLIP_TOLERANCE && ratio < SLIP_TOLERANCE;

/** Asked in words, before the value is taken for paint. */
export const keyingQuestion = (slip: KeyingSlip): Remark =>
  remark(
    'keying-slip',
    slip.ofPanel === undefined
      ? says`point ${slip.point} reads ${um(slip.thickness, null)}, ${timesOf(slip)} its neighbours: keyed wrongly?`
      : says`all ${slip.ofPanel} points read about ${um(slip.thickness, null)}, ${timesOf(slip)} the other panels: ${isOfUnit(slip) ? 'in another unit' : 'keyed wrongly'}?`,
    slip.thickness,
  );

const isOfUnit = ({ factor }: Pick<KeyingSlip, 'factor'>): boolean =>
  factor !== 10 && factor !== 0.1;

/** `ten times`: of its neighbours, or of the other panels. */
export function timesOf(slip: Pick<KeyingSlip, 'factor'>): string {
  const isMore = slip.factor > 1;
  if (isOfUnit(slip)) return isMore ? '25.4 times' : 'a 25.4th of';
  return isMore ? 'ten times' : 'a tenth of';
}

/** What was meant, if it was a slip. */
const meantBy = (thickness: Micrometres, { factor }: Pick<KeyingSlip, 'factor'>): Micrometres =>
  micrometres(factor > 1 ? thickness / factor : (thickness * Math.round(10 / factor)) / 10);

/** The readings as they were meant, if each of these was a slip. */
export const asMeant = (
  readings: readonly Reading[],
  slips: ReadonlyMap<string, readonly KeyingSlip[]>,
): readonly Reading[] =>
  readings.map((one) => {
    const slip = slips
      .get(one.panel)
      ?.find(({ point, ofPanel }) => ofPanel !== undefined || point === one.point);
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
  remark(
    'read-again',
    says`read ${slip.ofPanel === undefined ? `point ${slip.point}` : 'all of it'} again before anything else: ${ifMeant(slip)}`,
  );

/** `if 119 µm was meant, it is original and 4.53 µm may go`. */
export const ifMeant = (slip: AskedSlip): Sentence =>
  says`if ${um(meantBy(slip.thickness, slip), slip.ofPanel === undefined ? null : 0)} was meant, it is ${slip.condition} and ${slip.budget === 0 ? 'nothing' : um(slip.budget, 2)} may go`;
