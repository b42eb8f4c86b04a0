/**
 * Points where the film was beyond the range of the gauge: no reading, and in no mean, but on metal thicker than
 * anything that the gauge shows. That is filler, unless the probe was lifted: reading the point again settles which.
 */
import { type Remark, remark } from '../../base/remark.ts';
import type { PointPlace, Reading } from '../reading.ts';

export type OverRangePoint = {
  /** Null where nothing names it. */
  readonly point: string | null;
  /** What stood in the place of a reading: `OL`. */
  readonly text: string;
  readonly place: PointPlace;
};

/** Of a vehicle; the panel by its id. */
export type OverRange = OverRangePoint & { readonly panel: string };

/** Those that nothing contradicts: a reading of the whole film at the same point shows that the probe was lifted. */
export const notReadSince = (
  overRange: readonly OverRangePoint[],
  readings: readonly Reading[],
): readonly OverRangePoint[] =>
  overRange.filter(
    (over) =>
      !readings.some(
        ({ layer, point, place }) => layer === '' && point === over.point && place === over.place,
      ),
  );

/** The code of what it is that such points show, wherever that is told. */
export const OVER_RANGE = 'over-range';

/** Whether that is what makes it filler, or where nothing was read may be. */
export const restsOnOverRange = ({ evidence }: { readonly evidence: readonly Remark[] }): boolean =>
  evidence.some(({ code }) => code === OVER_RANGE);

/** `point 3 is beyond the range of the gauge ("OL"): filler, unless the probe was lifted`. */
export const overRangeEvidence = (over: readonly OverRangePoint[]): Remark =>
  remark(
    OVER_RANGE,
    `${pointsOver(over)} ${over.length === 1 ? 'is' : 'are'} beyond the range of the gauge (${textsOf(over)}): counts as filler, unless the probe was lifted`,
  );

/** What comes before anything else that is advised for the panel. */
export const readOverRangeAgain = (over: readonly OverRangePoint[]): Remark =>
  remark(
    'read-again',
    `read ${pointsOver(over)} again before anything else: film read there settles it, beyond the range again it is filler`,
  );

/** `points 2, 3 (edge)`. */
export function pointsOver(over: readonly OverRangePoint[]): string {
  const names = over.map(({ point, place }) =>
    place === 'face' ? (point ?? '?') : `${point ?? '?'} (${place})`,
  );
  const each = [...new Set(names)];
  return `${each.length === 1 ? 'point' : 'points'} ${each.join(', ')}`;
}

/** `"OL", ">2000"`. */
export const textsOf = (over: readonly OverRangePoint[]): string =>
  [...new Set(over.map(({ text }) => `"${text}"`))].join(', ');
