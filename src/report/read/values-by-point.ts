/** The readings of a panel in a line: one after the other, or point by point where some were repeated. */
import { groupBy } from '../../base/group-by.ts';
import { thicknessText } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { Reading } from '../../film/reading.ts';

/** `112.4 109.8`, or `1: 101.8 100.3; 2: 102.1 102.9`; what belongs together is not parted. */
export function valuesByPoint(readings: readonly Reading[], unit: LengthUnit): string {
  const values = (own: readonly Reading[]): readonly string[] =>
    own.map(({ thickness: value }) => thicknessText(value, unit));
  const points = [...groupBy(readings, pointName)];
  return points.length === readings.length
    ? values(readings).join(' ')
    : points.map(([name, own]) => [`${name}:`, ...values(own)].join(HELD)).join('; ');
}

const HELD = '\u00a0';

/** Layers and places off the face are points of their own. */
const pointName = ({ point, layer, place }: Reading): string =>
  [point, layer, place === 'face' ? '' : place].filter((word) => word !== '').join(' ');
