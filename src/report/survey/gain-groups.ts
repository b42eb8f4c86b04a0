/** Gains of many panels told so that each panel's own is known within a factor of two. */

/**
 * The fewest groups of neighbours by size in which the largest is no more than twice the least, or nothing to speak of;
 * of those the groups with the widest gaps between them. From the least to the largest; of losses by their size.
 */
export function alikeGroups<Gain extends { readonly gain: number }>(
  gains: readonly Gain[],
): readonly (readonly Gain[])[] {
  const sorted = [...gains].sort((one, other) => sizeOf(one) - sizeOf(other));
  // The best way to part what comes from each place on, found from the end.
  const partings: Parting<Gain>[] = [];
  partings[sorted.length] = { groups: [], gaps: 0 };
  for (let start = sorted.length - 1; start >= 0; start -= 1) {
    const ways = sorted.flatMap((last, end): readonly Parting<Gain>[] => {
      const rest = partings[end + 1];
      const first = sorted[start];
      if (end < start || rest === undefined || first === undefined || !isAlike(first, last)) {
        return [];
      }
      const next = sorted[end + 1];
      const gap = next === undefined ? 0 : Math.log(sizeOf(next) / sizeOf(last));
      return [{ groups: [sorted.slice(start, end + 1), ...rest.groups], gaps: gap + rest.gaps }];
    });
    partings[start] = ways.reduce(better);
  }
  return partings[0]?.groups ?? [];
}

type Parting<Gain> = { readonly groups: readonly (readonly Gain[])[]; readonly gaps: number };

function better<Gain>(one: Parting<Gain>, other: Parting<Gain>): Parting<Gain> {
  if (one.groups.length !== other.groups.length) {
    return one.groups.length < other.groups.length ? one : other;
  }
  return other.gaps > one.gaps ? other : one;
}

const sizeOf = ({ gain }: { readonly gain: number }): number => Math.abs(gain);

const isAlike = (least: { readonly gain: number }, most: { readonly gain: number }): boolean =>
  sizeOf(most) <= Math.max(MOST_APART * sizeOf(least), NOTHING_TO_SPEAK_OF);

const MOST_APART = 2;

/** µm, under which nobody asks whose it is. */
const NOTHING_TO_SPEAK_OF = 0.1;
