/** Search over sequences cut → refine → finish. Exhaustive: the space is small enough to look at all. */
import { groupBy } from '../../base/group-by.ts';
import { micrometres } from '../../base/units.ts';
import type { CorrectionModel, Stage } from '../removal/catalogue.ts';
import type { Combination } from '../removal/combination.ts';
import type { ForetoldRemoval } from '../removal/removal-knowledge.ts';
import { type Step, stepsId, strongestRung } from '../removal/step.ts';
import {
  type Constraint,
  type ConstraintContext,
  eachStepMilder,
  refusal,
  sequenceConstraints,
  stepConstraints,
  techniqueConstraints,
} from './constraints.ts';

/** A sequence that technique allows, with all that the choice looks at. */
export type Candidate = {
  readonly steps: readonly Step[];
  readonly removal: ForetoldRemoval;
  readonly strongest: number;
  /** Machine minutes per square metre. */
  readonly pace: number;
};

type MostSets = CorrectionModel['correction']['mostSets'];

/** How sequences are measured, and how long they may be. */
export type Measures = {
  /** Machine minutes per square metre. */
  readonly paceOf: (step: Step) => number;
  readonly foretell: (steps: readonly Step[]) => ForetoldRemoval;
  readonly mostSets: MostSets;
};

/** No step at all, one step, or so many sets of it. */
function stageChoices(
  ladder: readonly Combination[],
  stage: Stage,
  mostSets: MostSets,
): readonly (readonly Step[])[] {
  const sets = Array.from({ length: mostSets[stage] }, (_, i) => i + 1);
  return [
    [],
    ...ladder
      .filter(({ pad, product }) => pad.stages.includes(stage) && product.stages.includes(stage))
      .flatMap((combination) => sets.map((count) => [{ combination, sets: count }])),
  ];
}

/** Every sequence cut → refine → finish but the empty one; those that `goesOn` refuses are not continued. */
export function sequences(
  ladder: readonly Combination[],
  mostSets: MostSets,
  goesOn: (beginning: readonly Step[]) => boolean = () => true,
): readonly (readonly Step[])[] {
  const [cuts = [], refines = [], finishes = []] = (['cut', 'refine', 'finish'] as const).map(
    (stage) => stageChoices(ladder, stage, mostSets),
  );
  const beginnings = cuts.flatMap((cut) =>
    refines.map((refine) => [...cut, ...refine]).filter(goesOn),
  );
  return beginnings
    .flatMap((beginning) => finishes.map((finish) => [...beginning, ...finish]))
    .filter((steps) => steps.length > 0);
}

/** Combinations whose pad lies flat, and is not needlessly small. */
export const inReach = (
  ladder: readonly Combination[],
  context: Omit<ConstraintContext, 'budget'>,
): readonly Combination[] =>
  ladder.filter(
    (combination) => technique([{ combination, sets: 1 }], context, stepConstraints) === undefined,
  );

/** Why technique refuses the steps, or undefined. */
export const technique = (
  steps: readonly Step[],
  context: Omit<ConstraintContext, 'budget'>,
  constraints: readonly Constraint[] = techniqueConstraints,
): ReturnType<typeof refusal> =>
  refusal(steps, { ...context, budget: micrometres(Infinity) }, constraints);

/** Every sequence that the technique constraints allow, in no particular order; never the empty one. */
export const candidates = (
  ladder: readonly Combination[],
  context: Omit<ConstraintContext, 'budget'>,
  { paceOf, mostSets, foretell }: Measures,
): readonly Candidate[] =>
  // A beginning whose steps do not get milder cannot be mended by what follows it.
  sequences(
    inReach(ladder, context),
    mostSets,
    (beginning) => technique(beginning, context, [eachStepMilder]) === undefined,
  )
    .filter((steps) => technique(steps, context, sequenceConstraints) === undefined)
    .map((steps) => ({
      steps,
      removal: foretell(steps),
      strongest: strongestRung(steps),
      pace: steps.reduce((sum, step) => sum + paceOf(step), 0),
    }));

/** A candidate held against a panel's defects. */
export type RatedCandidate = Candidate & {
  /** Expected share of the general defects cleared. */
  readonly correction: number;
  /** Expected removal, µm. */
  readonly mean: number;
  /** The ln-SD at which its removal is held against what a panel allows. */
  readonly heldTo: number;
};

/** What is aimed at on a panel, with the differences that count as none. */
export type ChoiceLimits = {
  readonly aim: number;
  readonly area: number;
} & CorrectionModel['correction']['choice'];

/** Candidates in such order, and with such figures beside them, that a choice looks at few of them. */
export type Ranked = {
  /** As they are preferred, the rest being equal: mildest strongest step, then least removal by bins. */
  readonly mildestFirst: readonly RatedCandidate[];
  /** Their corrections, medians and spreads (by place in `spreads`), in the same order. */
  readonly corrections: Float64Array;
  readonly medians: Float64Array;
  readonly spreadOf: Uint16Array;
  readonly spreads: readonly Spread[];
};

/** Candidates held to one ln-SD, by rising removal, and the most that any up to each of them clears. */
type Spread = {
  readonly heldTo: number;
  readonly medians: readonly number[];
  readonly mostCleared: readonly number[];
};

/** Number of the bin that the expected removal falls into. */
export const removalBinOf = (
  { mean }: Pick<RatedCandidate, 'mean'>,
  { removalBin }: Pick<ChoiceLimits, 'removalBin'>,
): number => Math.floor(mean / removalBin);

export function ranked(
  all: readonly RatedCandidate[],
  choice: CorrectionModel['correction']['choice'],
): Ranked {
  const mildestFirst = [...all].sort(
    (one, other) =>
      one.strongest - other.strongest || removalBinOf(one, choice) - removalBinOf(other, choice),
  );
  const spreads = [...groupBy(all, (one) => one.heldTo)].map(([heldTo, group]) =>
    spreadOf(heldTo, group),
  );
  const places = new Map(spreads.map(({ heldTo }, place) => [heldTo, place]));
  return {
    mildestFirst,
    corrections: Float64Array.from(mildestFirst, ({ correction }) => correction),
    medians: Float64Array.from(mildestFirst, ({ removal }) => removal.median),
    spreadOf: Uint16Array.from(mildestFirst, ({ heldTo }) => places.get(heldTo) ?? 0),
    spreads,
  };
}

function spreadOf(heldTo: number, group: readonly RatedCandidate[]): Spread {
  const rising = [...group].sort((one, other) => one.removal.median - other.removal.median);
  let most = 0;
  const mostCleared = rising.map(({ correction }) => {
    most = Math.max(most, correction);
    return most;
  });
  return { heldTo, medians: rising.map(({ removal }) => removal.median), mostCleared };
}

/** The most that a candidate within what its spread allows clears; 0 where none is. */
const mostCleared = (spreads: readonly Spread[], allowed: readonly number[]): number =>
  spreads.reduce((most, { medians, mostCleared: cleared }, place) => {
    const within = countUpTo(medians, allowed[place] ?? 0);
    return Math.max(most, cleared[within - 1] ?? 0);
  }, 0);

/** The most that any candidate clears within what may go at the ln-SD it is held to; 0 where none does. */
export const mostWithin = ({ spreads }: Ranked, allowed: (heldTo: number) => number): number =>
  mostCleared(
    spreads,
    spreads.map(({ heldTo }) => allowed(heldTo)),
  );

/** How many of some rising values are at most `limit`. */
function countUpTo(rising: readonly number[], limit: number): number {
  let [from, to] = [0, rising.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((rising[middle] ?? 0) <= limit) from = middle + 1;
    else to = middle;
  }
  return from;
}

/** The best candidate, and all that are as good but for time and name; it is one of them. */
export type Choice = {
  readonly best: RatedCandidate;
  readonly equals: readonly RatedCandidate[];
};

/**
 * The best of the candidates that the limits allow: least shortfall from the aim (near ones are equal),
 * then the mildest strongest step, then the least removal, then time, then name. Undefined when nothing
 * fits.
 */
export function chooseSteps(
  all: Ranked,
  limits: ChoiceLimits,
  allowed: (heldTo: number) => number,
): Choice | undefined {
  const { mildestFirst, corrections, medians, spreadOf: spread, spreads } = all;
  const most = spreads.map(({ heldTo }) => allowed(heldTo));
  const enough = Math.min(limits.aim, mostCleared(spreads, most)) - limits.equalShortfall;
  const equals: RatedCandidate[] = [];
  for (let index = 0; index < mildestFirst.length; index += 1) {
    if ((corrections[index] ?? 0) < enough) continue;
    if ((medians[index] ?? 0) > (most[spread[index] ?? 0] ?? 0)) continue;
    const one = mildestFirst[index];
    const [first] = equals;
    if (one === undefined || (first !== undefined && !isAsMild(one, first, limits))) break;
    equals.push(one);
  }
  const [first] = equals;
  return first === undefined ? undefined : { best: quickest(first, equals, limits), equals };
}

/** The same strongest step, and a removal of the same bin. */
const isAsMild = (
  one: RatedCandidate,
  other: RatedCandidate,
  limits: Pick<ChoiceLimits, 'removalBin'>,
): boolean =>
  one.strongest === other.strongest && removalBinOf(one, limits) === removalBinOf(other, limits);

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
