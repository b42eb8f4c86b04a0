/** Values that look like a slip of the key or of the decimal mark rather than film. */
import { type Remark, remark } from '../../base/remark.ts';
import { says, um } from '../../base/sentence.ts';
import { median } from '../../base/stats/summary.ts';
import type { Micrometres } from '../../base/units.ts';
import type { PanelPoint } from '../panel-points.ts';

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
  const slips = points.flatMap(({ point, thickness }, index): readonly KeyingSlip[] => {
    const others = points.filter((_, k) => k !== index).map((other) => other.thickness);
    if (others.length < LEAST_NEIGHBOURS) return [];
    const ratio = thickness / median(others);
    const factor = ([10, 0.1] as const).find((f) => isNear(ratio / f));
    return factor === undefined ? [] : [{ point, thickness, factor }];
  });
  return slips.length === 1 ? slips : [];
}

const isNear = (ratio: number): boolean => ratio > 1 / TOLERANCE && ratio < TOLERANCE;

/** Asked in words, before the value is taken for paint. */
export const keyingQuestion = ({ point, thickness, factor }: KeyingSlip): Remark =>
  remark(
    'keying-slip',
    says`point ${point} reads ${um(thickness, null)}, ${factor === 10 ? 'ten times' : 'a tenth of'} its neighbours: keyed wrongly?`,
    thickness,
  );

/** What comes before anything else that is advised for the panel. */
export const readAgain = ({ point }: KeyingSlip): Remark =>
  remark('read-again', `read point ${point} again before anything else`);
