/**
 * Whether values rise and fall as the reference does, from place to place: invented ones scatter as film may, and do not
 * follow the film of this car.
 *
 * Kendall’s S over all pairs within groups of places, a group for each panel by its marks, or one of the panels by their
 * means (stratified as by Hirsch, Slack & Smith 1982, Water Resources Research 18: 107): pairs that the trainee has in the
 * order of the reference, less those the other way round. It knows only orders: a hand that reads more everywhere, a reading
 * far off, a repair move it by a few pairs. An honest hand is to show E = Σ (2Φ(λ|Δ|/√(2(σ² + λσ_ref²))) − 1), Δ the
 * difference of the reference between the two places, λ the share of it that is film, σ and σ_ref what both are uncertain by;
 * its variance is that of S in a normal law of τ = E/pairs (src/base/stats/kendall.ts).
 *
 * Told where so small an S has a chance under the false alarm of an honest hand, and is none that shows a law either: whoever
 * reads unsteadily follows the places less, and still more than by chance.
 */

import { kendallVariance } from '../base/stats/kendall.ts';
import { normalCdf } from '../base/stats/normal.ts';
import { sum } from '../base/sum.ts';

export type Place = { readonly own: number; readonly theirs: number };

/** Two places or more whose film is compared with each other. */
export type PlaceGroup = {
  readonly places: readonly Place[];
  /** Variances: of what an honest hand reads a place by, of the reference’s value, of its values over places (film and all). */
  readonly ofOwn: number;
  readonly ofReference: number;
  readonly spread: number;
};

export type NotFollowed = {
  readonly places: number;
  readonly groups: number;
  readonly pairs: number;
  /** Pairs of places in the order of the reference, those of two equal values by half, and how many an honest hand has. */
  readonly alike: number;
  readonly expected: number;
  /** Of so few with an honest hand. */
  readonly chance: number;
};

type Limits = {
  readonly falseAlarm: number;
  /** Chance under which pairs show that values follow the places after all. */
  readonly followedChance: number;
};

export function notFollowed(groups: readonly PlaceGroup[], limits: Limits): NotFollowed | null {
  const { places, pairs, s, expected, chance, spreadByChance } = followedIn(groups);
  if (chance >= limits.falseAlarm) return null;
  if (normalCdf(-s / spreadByChance) < limits.followedChance) return null;
  const alikeOf = (some: number): number => (pairs + some) / 2;
  const [alike, usual] = [alikeOf(s), alikeOf(expected)];
  return { places, groups: groups.length, pairs, alike, expected: usual, chance };
}

/** Values follow these places as well as an honest hand’s do, but for the chance given. */
export const areFollowed = (groups: readonly PlaceGroup[], usual: number): boolean =>
  followedIn(groups).chance >= usual;

/** S, the chance of one so small with an honest hand, and its SD where values do not follow at all. */
function followedIn(groups: readonly PlaceGroup[]) {
  const found = groups.map(followedInGroup);
  const total = (of: (one: (typeof found)[number]) => number): number => sum(found.map(of));
  const [pairs, s, expected] = [
    total((one) => one.pairs),
    total((one) => one.s),
    total((one) => one.expected),
  ];
  const spread = Math.sqrt(total((one) => one.variance));
  return {
    places: total(({ count }) => count),
    ...{ pairs, s, expected },
    chance: s >= expected ? 1 : normalCdf((s - expected) / spread),
    spreadByChance: Math.sqrt(total(({ count }) => kendallVariance(count))),
  };
}

function followedInGroup({ places, ofOwn, ofReference, spread }: PlaceGroup) {
  const film = spread === 0 ? 0 : Math.max(0, 1 - ofReference / spread);
  const apart = Math.sqrt(2 * (ofOwn + film * ofReference));
  const pairs = places.flatMap((one, i) =>
    places.slice(i + 1).map((other) => ({
      own: one.own - other.own,
      theirs: one.theirs - other.theirs,
    })),
  );
  const s = sum(pairs.map(({ own, theirs }) => Math.sign(own) * Math.sign(theirs)));
  const expected = sum(
    pairs.map(({ theirs }) => {
      const ofFilm = film * Math.abs(theirs);
      return ofFilm === 0 ? 0 : 2 * normalCdf(ofFilm / apart) - 1;
    }),
  );
  const variance = kendallVariance(places.length, expected / pairs.length);
  return { pairs: pairs.length, s, expected, variance, count: places.length };
}
