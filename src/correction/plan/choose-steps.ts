/**
 * Which of the candidates a part of a panel is worked with: of those within its limits that clear enough,
 * the mildest.
 *
 * Candidates of the same strongest step and a removal of the same bin are equally mild. They stand
 * together, the mildest first, and the choice goes to the first of these classes that holds one which may
 * go and clears enough. What may go does not depend on the aim: the classes worth looking at are found once
 * for a part, and each aim is a look into those.
 */
import { at } from '../../base/at.ts';
import type { Micrometres } from '../../base/units.ts';
import { removalQuantile } from '../../film/limits/removal-risk.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import { stepsId } from '../removal/step.ts';
import type { Candidate, Columns } from './candidate-columns.ts';

/** A candidate held against a panel's defects. */
export type RatedCandidate = Candidate & {
  /** Expected share of the general defects cleared. */
  readonly correction: number;
  /** The ln-SD at which its removal is held against what a panel allows. */
  readonly heldTo: number;
};

/** What is aimed at on a panel, with the differences that count as none. */
export type ChoiceLimits = {
  readonly aim: number;
  readonly area: number;
} & CorrectionModel['correction']['choice'];

/** Candidates in classes of equal mildness, the mildest first. */
export type Classes<One extends Candidate> = {
  readonly count: number;
  /** Members of a class. */
  readonly members: (place: number) => readonly One[];
  /** The least and the most that a member of each takes. */
  readonly leastRemoval: readonly number[];
  readonly mostRemoval: readonly number[];
  /** The strongest step of its members, by the order of care. */
  readonly strongestOf: (place: number) => number;
};

/** Members of a class held against some defects, and the most that one of them clears. */
type RatedClass = {
  readonly members: readonly RatedCandidate[];
  readonly mostCleared: number;
};

/** All candidates for some defects: of thousands of classes few are looked into. */
export type Ranked = Omit<Classes<Candidate>, 'members'> & {
  /** The ln-SDs that they are held to. */
  readonly heldTo: readonly number[];
  /** A class by its place. */
  readonly rated: (place: number) => RatedClass;
  /** What takes less than this clears no more than the one that is named. */
  readonly leastToClearMore: (than: RatedCandidate) => number;
};

/** Number of the bin that the expected removal falls into. */
export const removalBinOf = (
  { mean }: Pick<RatedCandidate, 'mean'>,
  { removalBin }: Pick<ChoiceLimits, 'removalBin'>,
): number => Math.floor(mean / removalBin);

export const inClasses = <One extends Candidate>(
  all: readonly One[],
  choice: CorrectionModel['correction']['choice'],
): Classes<One> =>
  columnsInClasses(
    {
      median: all.map(({ removal }) => removal.median),
      mean: all.map(({ mean }) => mean),
      strongest: all.map(({ strongest }) => strongest),
      at: (place) => at(all, place),
    },
    choice,
  );

export function columnsInClasses<One extends Candidate>(
  columns: Columns<One>,
  choice: CorrectionModel['correction']['choice'],
): Classes<One> {
  const { median, strongest } = columns;
  const { mildness, places } = byMildness(columns, choice);
  const starts: number[] = [];
  const leastRemoval: number[] = [];
  const mostRemoval: number[] = [];
  for (let k = 0; k < places.length; k += 1) {
    const removal = median[places[k] as number] as number;
    const last = starts.length - 1;
    if (mildness[k] !== mildness[k - 1]) {
      starts.push(k);
      leastRemoval.push(removal);
      mostRemoval.push(removal);
    } else if (removal < (leastRemoval[last] as number)) leastRemoval[last] = removal;
    else if (removal > (mostRemoval[last] as number)) mostRemoval[last] = removal;
  }
  const members = (place: number): readonly One[] =>
    Array.from(places.subarray(starts[place], starts[place + 1]), columns.at);
  const strongestOf = (place: number): number =>
    strongest[places[starts[place] as number] as number] as number;
  return { count: places.length, members, leastRemoval, mostRemoval, strongestOf };
}

/**
 * Places of all in the order of their mildness. By one number, the strongest step before the bin and that before the
 * place: numbers are sorted without being asked about two by two.
 */
function byMildness<One>(
  { mean, strongest }: Columns<One>,
  choice: CorrectionModel['correction']['choice'],
): { readonly mildness: Float64Array; readonly places: Float64Array } {
  const count = mean.length;
  const bins = mean.map((each) => removalBinOf({ mean: each }, choice));
  const binCount = bins.reduce((most, bin) => Math.max(most, bin), 0) + 1;
  const sorted = Float64Array.from(
    bins,
    (bin, place) => ((strongest[place] as number) * binCount + bin) * count + place,
  ).sort();
  const mildness = sorted.map((one) => Math.floor(one / count));
  const places = sorted.map((one, k) => one - (mildness[k] as number) * count);
  return { mildness, places };
}

/**
 * `rate` holds a candidate against the defects; it is asked about a class when that is first looked into. Unless it is
 * told how much that takes, anything may clear more than something else.
 */
export function ranked<One extends Candidate>(
  { members: membersOf, ...rest }: Classes<One>,
  heldTo: readonly number[],
  rate: (one: One) => RatedCandidate,
  leastToClearMore: Ranked['leastToClearMore'] = () => 0,
): Ranked {
  const known: RatedClass[] = [];
  const rateClass = (place: number): RatedClass => {
    const members = membersOf(place).map(rate);
    return { members, mostCleared: Math.max(0, ...members.map(({ correction }) => correction)) };
  };
  return {
    ...rest,
    heldTo,
    leastToClearMore,
    rated: (place) => {
      const found = known[place] ?? rateClass(place);
      known[place] = found;
      return found;
    },
  };
}

/** All of them, the mildest first. */
export const allRated = ({ leastRemoval, rated }: Ranked): readonly RatedCandidate[] =>
  leastRemoval.flatMap((_, place) => rated(place).members);

const mostClearing = (some: readonly RatedCandidate[]): RatedCandidate | undefined =>
  some.reduce<RatedCandidate | undefined>(
    (most, one) => (most === undefined || one.correction > most.correction ? one : most),
    undefined,
  );

/** What a part allows of the candidates, whatever is aimed at. */
export type Within = {
  /** Of so many. */
  readonly lookedAt: number;
  /** The most that any of them clears; 0 where nothing may go. */
  readonly mostCleared: number;
  /** One of them takes more than may go: else nothing but the shop's own things keeps a part from more. */
  readonly isHeldByFilm: boolean;
  /** Of each class what may go, the mildest first; none that clears no more than a milder one. */
  readonly climb: readonly {
    readonly members: readonly RatedCandidate[];
    readonly mostCleared: number;
  }[];
  /** What was tried on this paint; absent where nothing was. */
  readonly proven?: ProvenWays;
};

/** Ways whose strongest step was tried on this paint. */
export type ProvenWays = {
  /** Those steps, by the order of care. */
  readonly cares: ReadonlySet<number>;
  /** Of each class what may go, the mildest first. */
  readonly classes: () => readonly (readonly RatedCandidate[])[];
};

/** `allowed` says how much may go at the ln-SD that a candidate is held to. */
export function within(all: Ranked, allowed: (heldTo: number) => number): Within {
  const { leastRemoval } = all;
  const allowances = all.heldTo.map(allowed);
  const [least, widest] = [Math.min(...allowances), Math.max(...allowances)];
  const climb: Within['climb'][number][] = [];
  // Even what clears nothing is a way, where nothing milder is.
  let most = -1;
  let needed = 0;
  const next = (from: number): number => nextBetween(needed, widest, all, from);
  for (let place = next(0); place < leastRemoval.length; place = next(place + 1)) {
    const rated = all.rated(place);
    if (rated.mostCleared <= most) continue;
    const members = rated.members.filter(
      ({ removal, heldTo }) => removal.median <= allowed(heldTo),
    );
    const best = mostClearing(members);
    if (best === undefined || best.correction <= most) continue;
    climb.push({ members, mostCleared: best.correction });
    most = best.correction;
    needed = all.leastToClearMore(best);
  }
  const isHeldByFilm = all.mostRemoval.some((removal) => removal > least);
  return { lookedAt: all.count, mostCleared: Math.max(0, most), isHeldByFilm, climb };
}

/** The first class from a place on of which something takes so much, and something no more; past the last, if none. */
function nextBetween(
  least: number,
  most: number,
  { leastRemoval, mostRemoval }: Pick<Ranked, 'leastRemoval' | 'mostRemoval'>,
  from: number,
): number {
  for (let place = from; place < leastRemoval.length; place += 1) {
    const isOut = (leastRemoval[place] as number) > most;
    if (!isOut && (mostRemoval[place] as number) >= least) return place;
  }
  return leastRemoval.length;
}

/** The best candidate, and all that are as good but for time and name; it is one of them. */
export type Choice = {
  readonly best: RatedCandidate;
  readonly equals: readonly RatedCandidate[];
  /** What would be the best but for what was tried on this paint. */
  readonly instead?: RatedCandidate;
};

/**
 * The best of what a part allows: least shortfall from the aim (near ones are equal), then the mildest
 * strongest step, then the least removal, then time, then name; but what was tried on this paint first, where it takes
 * no more. Undefined where nothing may go.
 */
export function chooseSteps(
  { climb, mostCleared, proven }: Within,
  limits: ChoiceLimits,
): Choice | undefined {
  const enough = Math.min(limits.aim, mostCleared) - limits.equalShortfall;
  const { members = [] } = climb.find((one) => one.mostCleared >= enough) ?? {};
  const first = choiceAmong(members, enough, limits);
  if (proven === undefined || first === undefined || proven.cares.has(first.best.strongest)) {
    return first;
  }
  for (const some of proven.classes()) {
    const noMore = some.filter((one) => takesNoMore(one, first.best));
    const tried = choiceAmong(noMore, enough, limits);
    if (tried !== undefined) return { ...tried, instead: first.best };
  }
  return first;
}

/** Of those of one class that clear enough. */
function choiceAmong(
  members: readonly RatedCandidate[],
  enough: number,
  limits: Pick<ChoiceLimits, 'area'>,
): Choice | undefined {
  const equals = members.filter(({ correction }) => correction >= enough);
  const [first] = equals;
  return first === undefined ? undefined : { best: quickest(first, equals, limits), equals };
}

/** Neither in the middle nor at the upper end. */
export const takesNoMore = (one: RatedCandidate, other: RatedCandidate): boolean =>
  one.removal.median <= other.removal.median && mostTaken(one) <= mostTaken(other);

/** In nine cases of ten, at most. */
export const mostTaken = ({ removal }: Pick<RatedCandidate, 'removal'>): Micrometres =>
  removalQuantile(removal, 0.95);

/** Machine time on the panel in whole minutes. */
export const wholeMinutes = (
  { pace }: Pick<Candidate, 'pace'>,
  { area }: Pick<ChoiceLimits, 'area'>,
): number => Math.round(pace * area);

/** The one that takes the fewest whole minutes; of several, the first by name. */
const quickest = (
  first: RatedCandidate,
  some: readonly RatedCandidate[],
  limits: Pick<ChoiceLimits, 'area'>,
): RatedCandidate =>
  some.reduce((leader, one) => (isQuicker(one, leader, limits) ? one : leader), first);

export function isQuicker(
  one: RatedCandidate,
  other: RatedCandidate,
  limits: Pick<ChoiceLimits, 'area'>,
): boolean {
  const gained = wholeMinutes(other, limits) - wholeMinutes(one, limits);
  return gained === 0 ? stepsId(one.steps) < stepsId(other.steps) : gained > 0;
}
