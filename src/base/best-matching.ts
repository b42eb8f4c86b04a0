/**
 * Who takes what, one each, so that all together are worth most: the assignment problem, by shortest augmenting paths
 * (the Hungarian method; H. W. Kuhn 1955, J. Munkres 1957), in n³ steps. `worth[i][j]` is what it is worth that i
 * takes j, −Infinity where it may not. Answers what each takes. Each must be free to take its own (`worth[i][i]` finite).
 */
import { at } from './at.ts';

export function bestMatching(worth: readonly (readonly number[])[]): readonly number[] {
  const matching: Matching = {
    worth,
    takenBy: worth.map(() => NOBODY),
    ofTakers: worth.map(() => 0),
    ofThings: worth.map(() => 0),
  };
  worth.forEach((_, taker) => {
    giveOne(matching, taker);
  });
  return worth.map((_, taker) => matching.takenBy.indexOf(taker));
}

const NOBODY = -1;

type Matching = {
  readonly worth: readonly (readonly number[])[];
  /** By thing. */
  readonly takenBy: number[];
  /** Prices, by which no pair costs less than 0 and those that are made cost 0. */
  readonly ofTakers: number[];
  readonly ofThings: number[];
};

/** What a thing is reached for, and over which thing before it. */
type Reached = { cost: number; over: number };

/** One more taker gets a thing; those who have one already move on along the cheapest path. */
function giveOne(matching: Matching, first: number): void {
  const { worth, takenBy, ofTakers, ofThings } = matching;
  const reached = worth.map((): Reached => ({ cost: Number.POSITIVE_INFINITY, over: NOBODY }));
  const settled: number[] = [];
  let [taker, spent, last] = [first, 0, NOBODY];
  do {
    for (const [thing, to] of reached.entries()) {
      if (settled.includes(thing)) continue;
      const price = at(ofTakers, taker) + at(ofThings, thing);
      const cost = spent - at(at(worth, taker), thing) - price;
      if (cost < to.cost) Object.assign(to, { cost, over: last });
    }
    last = cheapest(reached, settled);
    spent = at(reached, last).cost;
    settled.push(last);
    taker = at(takenBy, last);
  } while (taker !== NOBODY);
  ofTakers[first] = at(ofTakers, first) + spent;
  for (const thing of settled) {
    const saved = spent - at(reached, thing).cost;
    const owner = at(takenBy, thing);
    ofThings[thing] = at(ofThings, thing) - saved;
    if (owner !== NOBODY) ofTakers[owner] = at(ofTakers, owner) + saved;
  }
  moveOn(takenBy, reached, { first, last });
}

function cheapest(reached: readonly Reached[], settled: readonly number[]): number {
  const open = reached.map((_, thing) => thing).filter((thing) => !settled.includes(thing));
  return open.reduce((a, b) => (at(reached, b).cost < at(reached, a).cost ? b : a));
}

function moveOn(
  takenBy: number[],
  reached: readonly Reached[],
  { first, last }: { readonly first: number; readonly last: number },
): void {
  let thing = last;
  while (thing !== NOBODY) {
    const { over } = at(reached, thing);
    takenBy[thing] = over === NOBODY ? first : at(takenBy, over);
    thing = over;
  }
}
