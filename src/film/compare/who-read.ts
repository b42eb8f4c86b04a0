/**
 * How far the people who read a part before are other than those who read it after.
 *
 * What a person reads apart is the same at each visit, and cancels in a difference as far as that person has the same
 * share of the mean both times: with wᵢ and w′ᵢ the shares of person i and s_L the SD of one, the difference is off by
 * s_L·√Σ(wᵢ − w′ᵢ)². That is 0 where each mean is of the same people, √2·s_L where it is of one before and of another
 * after. A reading that names nobody is of a person who reads at that visit alone.
 */
import type { GaugesCompared } from './compare-change.ts';

/** Who read a point of a panel, once for each reading; null for a reading of nobody who is named. */
export type ReadBy = (panel: string, point: string) => readonly (string | null)[];

export type Readers = { readonly before: ReadBy; readonly after: ReadBy };

export type PointsRead = {
  readonly panel: string;
  readonly before: readonly string[];
  readonly after: readonly string[];
};

/** The gauges, with what the people who read these points have in common; without `readers` nothing is known of it. */
export const asReadBy = (
  gauges: GaugesCompared,
  points: PointsRead,
  readers: Readers | undefined,
): GaugesCompared =>
  readers === undefined ? gauges : { ...gauges, readByOthers: contrast(points, readers) };

function contrast({ panel, before, after }: PointsRead, readers: Readers): number {
  const first = sharesOf(before.map((point) => readers.before(panel, point)));
  const second = sharesOf(after.map((point) => readers.after(panel, point)));
  const named = [...new Set([...first.named.keys(), ...second.named.keys()])];
  return Math.hypot(
    first.unnamed,
    second.unnamed,
    ...named.map((name) => (first.named.get(name) ?? 0) - (second.named.get(name) ?? 0)),
  );
}

/** Of the mean over points, each the mean of its readings. */
function sharesOf(points: readonly (readonly (string | null)[])[]) {
  const named = new Map<string, number>();
  let unnamed = 0;
  for (const readers of points) {
    // A point that nobody is known to have read.
    if (readers.length === 0) unnamed += 1 / points.length;
    for (const name of readers) {
      const share = 1 / (readers.length * points.length);
      if (name === null) unnamed += share;
      else named.set(name, (named.get(name) ?? 0) + share);
    }
  }
  return { named, unnamed };
}
