/**
 * One set of combinations for the whole car.
 *
 * Each part brings the candidates that are as good for it: equal correction, the same strongest step,
 * removal of the same bin. Of these, every part takes one so that the car as a whole needs the fewest
 * combinations, since each costs a set-up and pads of its own; among as few, the ones that take the
 * fewest whole minutes, then the first by name. Where nothing is saved each part keeps its own best.
 *
 * Fewest sets that hit every part is a covering problem: it is searched by depth, one combination more at
 * a time, each branch opening on a part that has none of its candidates covered yet. What comes out does
 * not depend on the order of the parts.
 */
import { at } from '../../base/at.ts';
import { type Choice, isQuicker, type RatedCandidate, wholeMinutes } from './choose-steps.ts';

/** A part of the car that is worked, and the candidates that may stand for each other on it. */
export type PartChoice = Choice & { readonly area: number };

/** Combinations of one candidate, in the order of their names; and all of them as one name. */
type Kit = { readonly ids: readonly string[]; readonly name: string };

/** Each part asks for the kits of the same candidates under each aim: kept as long as the candidate is. */
const kits = new WeakMap<RatedCandidate, Kit>();

function kitOf(candidate: RatedCandidate): Kit {
  const known = kits.get(candidate);
  if (known !== undefined) return known;
  const ids = [...new Set(candidate.steps.map(({ combination }) => combination.id))].sort();
  const kit = { ids, name: ids.join(' ') };
  kits.set(candidate, kit);
  return kit;
}

const isWithin = ({ ids }: Kit, has: ReadonlySet<string>): boolean =>
  ids.every((id) => has.has(id));

const isPartOf = (one: Kit, other: Kit): boolean =>
  one.ids.length < other.ids.length && one.ids.every((id) => other.ids.includes(id));

/** What each part is worked with, in the order of the parts. */
export function fewestSetUps(parts: readonly PartChoice[]): readonly RatedCandidate[] {
  const own = parts.map(({ best }) => best);
  const ownCount = combinationsOf(own).size;
  const demands = demandsOf(parts);
  for (let count = leastCount(demands); count < ownCount; count += 1) {
    const kits = coveringKits(demands, count);
    if (kits === undefined) break;
    const [first, ...rest] = kits.map((kit) => workedWith(kit, parts));
    if (first !== undefined) {
      return rest.reduce((best, one) => (precedes(one, best, parts) ? one : best), first);
    }
  }
  return own;
}

function combinationsOf(ways: readonly RatedCandidate[]): ReadonlySet<string> {
  const ids = new Set<string>();
  for (const way of ways) for (const id of kitOf(way).ids) ids.add(id);
  return ids;
}

/** A group of parts that want the same: the kits that serve it, none of which holds another. */
type Demand = readonly Kit[];

function demandsOf(parts: readonly PartChoice[]): readonly Demand[] {
  const named = parts.map(({ equals }) => {
    const byName = new Map<string, Kit>();
    for (const one of equals) byName.set(kitOf(one).name, kitOf(one));
    const sorted = [...byName.values()].sort((one, other) => (one.name < other.name ? -1 : 1));
    const demand = sorted.filter((kit) => !sorted.some((other) => isPartOf(other, kit)));
    return [demand.map(({ name }) => name).join(', '), demand] as const;
  });
  return [...new Map(named)]
    .sort(([one, a], [other, b]) => a.length - b.length || (one < other ? -1 : 1))
    .map(([, demand]) => demand);
}

/** Demands that share no combination each need their own: never more than it takes. */
function leastCount(demands: readonly Demand[], has: ReadonlySet<string> = new Set()): number {
  const used = new Set<string>();
  let count = 0;
  for (const demand of demands) {
    const ids = new Set(demand.flatMap((kit) => kit.ids).filter((id) => !has.has(id)));
    if (demand.some((kit) => isWithin(kit, has)) || [...ids].some((id) => used.has(id))) continue;
    for (const id of ids) used.add(id);
    count += Math.min(...demand.map((kit) => kit.ids.filter((id) => !has.has(id)).length));
  }
  return count;
}

/** Looks taken at most; a car that needs more keeps each part's own best, and so do all like it. */
const MOST_LOOKS = 4000;

/** All kits of so many combinations that serve every demand; undefined when there are too many to look at. */
function coveringKits(
  demands: readonly Demand[],
  count: number,
): readonly ReadonlySet<string>[] | undefined {
  const found = new Map<string, ReadonlySet<string>>();
  const seen = new Set<string>();
  let looks = 0;
  const look = (has: ReadonlySet<string>): void => {
    const key = [...has].sort().join(' ');
    if (seen.has(key) || looks > MOST_LOOKS) return;
    seen.add(key);
    looks += 1;
    const open = demands.find((demand) => !demand.some((kit) => isWithin(kit, has)));
    if (open === undefined) {
      found.set(key, has);
      return;
    }
    if (has.size + leastCount(demands, has) > count) return;
    for (const kit of open) {
      const more = new Set([...has, ...kit.ids]);
      if (more.size <= count) look(more);
    }
  };
  look(new Set());
  return looks > MOST_LOOKS ? undefined : [...found.values()];
}

/** Each part's quickest candidate that the kit serves. */
const workedWith = (
  kit: ReadonlySet<string>,
  parts: readonly PartChoice[],
): readonly RatedCandidate[] =>
  parts.map((part) =>
    part.equals
      .filter((one) => isWithin(kitOf(one), kit))
      .reduce((leader, one) => (isQuicker(one, leader, part) ? one : leader)),
  );

/** Whether one way to work all parts takes fewer whole minutes, or comes first by name. */
function precedes(
  one: readonly RatedCandidate[],
  other: readonly RatedCandidate[],
  parts: readonly PartChoice[],
): boolean {
  const minutes = (all: readonly RatedCandidate[]): number =>
    all.reduce((sum, candidate, i) => sum + wholeMinutes(candidate, at(parts, i)), 0);
  const names = (all: readonly RatedCandidate[]): string =>
    [...new Set(all.flatMap((one) => kitOf(one).ids))].sort().join(' ');
  const gained = minutes(other) - minutes(one);
  return gained === 0 ? names(one) < names(other) : gained > 0;
}
