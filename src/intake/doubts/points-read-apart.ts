/**
 * One point read more than once: with values too far apart for one place, 104 and 189, or where the other points
 * were read once. One of them may be of another point, its number a slip, or a row typed twice. All are read as
 * they stand, and told.
 *
 * Two readings of one place differ by 2·(a₀ + a₁·t) + 1.96·√2·s at most, each off by all that a gauge may be and
 * both set down with repeatability s: 10 µm on film of 100 µm, as built in.
 */
import { groupBy } from '../../base/group-by.ts';
import { repeatabilityLimit } from '../../base/stats/repeatability-limit.ts';
import type { Reading } from '../../film/reading.ts';
import type { Findings } from '../findings.ts';
import type { PlausibleReadings } from '../intake-options.ts';
import { readingPlace } from '../readings/reading-place.ts';
import type { Source } from '../rows/source.ts';

/** How far a gauge may be off, and how it scatters. */
export type Scatter = Pick<
  PlausibleReadings,
  'fixed' | 'proportional' | 'repeatability' | 'rounds'
>;

export const furthestApart = (
  film: number,
  { fixed, proportional, repeatability }: Omit<Scatter, 'rounds'>,
): number => 2 * (fixed + proportional * film) + repeatabilityLimit(repeatability);

/** Told once of a file: where many points are so, that is how it was measured. */
export function tellPointsApart(
  readings: readonly Reading[],
  scatter: Scatter,
  source: Source,
  findings: Findings,
): void {
  if (readings.every(({ repeat }) => repeat <= 1)) return;
  const points = [...groupBy(readings, pointKey).values()];
  const again = points.filter(({ length }) => length > 1);
  const isRare = again.length * mostRare < points.length;
  const doubted = again.flatMap(([first, ...others]) => {
    const far = others.find(({ thickness }) => isApart(thickness, first.thickness, scatter));
    const [second] = isRare ? others : [];
    const other = far ?? second;
    return other === undefined ? [] : [{ first, other, isFar: far !== undefined }];
  });
  const told = doubted.find(({ isFar }) => isFar) ?? doubted[0];
  if (told === undefined) return;
  const { first, other, isFar } = told;
  const also = doubted.length === 1 ? '' : `; so it is with ${doubted.length - 1} more points`;
  const why = isFar ? 'the two are too far apart for one place' : 'other points were read once';
  findings.add('warning', 'reading-doubted', () => ({
    message: `point ${other.point} of "${other.panel}" was read in line ${first.origin.line} as well, and ${why}${also}`,
    at: readingPlace(source, other),
    hint: 'if it is another point, number it so; if the same, take one out',
  }));
}

/** Fewer than one point in so many may be slips; of more of them it is how the car was measured. */
const mostRare = 3;

const isApart = (one: number, other: number, scatter: Scatter): boolean =>
  Math.abs(one - other) > furthestApart((one + other) / 2, scatter);

const pointKey = ({ vehicle, panel, point, layer, place }: Reading): string =>
  [vehicle ?? '', panel, point, layer, place].join('\0');
