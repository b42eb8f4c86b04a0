/**
 * Film that came on by more than wax, a coating or a gauge that moved makes: paint.
 *
 * From how much on is `leastOfPaint` of the model, over a panel or in a zone of it.
 */
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmChange } from './compare-change.ts';

type Compared = { readonly gained: boolean; readonly change: FilmChange | null };
type Painted = { readonly paint: Micrometres | null };

/** The most that the panel or a zone of it gained, where that is paint; else null. */
export function paintAmong(
  parts: readonly Compared[],
  leastOfPaint: Micrometres,
): Micrometres | null {
  const gains = parts.flatMap(({ gained, change }) =>
    gained && change !== null ? [-change.removed.value] : [],
  );
  const most = Math.max(0, ...gains);
  return most >= leastOfPaint ? micrometres(most) : null;
}

export type GainedPart = {
  readonly comparison: Painted;
  /** What of it came on from one visit to the next, where that is paint. */
  readonly rise: Painted | null;
};

/** By how much it was painted, over all visits or from one to the next; null where it was not. */
export function paintGained({ comparison, rise }: GainedPart): Micrometres | null {
  const [most] = [comparison.paint, rise?.paint ?? null]
    .filter((one) => one !== null)
    .toSorted((one, other) => other - one);
  return most ?? null;
}
