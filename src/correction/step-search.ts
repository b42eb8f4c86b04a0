/** Search over sequences cut → refine → finish. Exhaustive: the space is small enough to look at all. */
import type { Minutes } from '../base/units.ts';
import type { CorrectionModel, Stage } from './catalogue.ts';
import type { Combination } from './combination.ts';
import {
  type Constraint,
  type ConstraintContext,
  eachStepMilder,
  refusal,
  sequenceConstraints,
  stepConstraints,
} from './constraints.ts';
import { medianRemoval, type Step, stepsId, strongestRung } from './step.ts';

/** A sequence that technique allows, with all that the choice looks at. */
export type Candidate = {
  readonly steps: readonly Step[];
  readonly median: number;
  readonly strongest: number;
  /** Machine minutes per square metre. */
  readonly pace: number;
};

type MostSets = CorrectionModel['correction']['mostSets'];

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

/** Every sequence that the technique constraints allow, in no particular order; never the empty one. */
export function candidates(
  ladder: readonly Combination[],
  context: Omit<ConstraintContext, 'budget'>,
  paceOf: (step: Step) => number,
  mostSets: MostSets,
): readonly Candidate[] {
  const unbounded = { ...context, budget: Number.POSITIVE_INFINITY as ConstraintContext['budget'] };
  const allows =
    (constraints: readonly Constraint[]) =>
    (steps: readonly Step[]): boolean =>
      refusal(steps, unbounded, constraints) === undefined;
  const inReach = ladder.filter((combination) =>
    allows(stepConstraints)([{ combination, sets: 1 }]),
  );
  const [cuts, refines, finishes] = (['cut', 'refine', 'finish'] as const).map((stage) =>
    stageChoices(inReach, stage, mostSets),
  );
  // A beginning whose steps do not get milder cannot be mended by what follows it.
  const startsMilder = allows([eachStepMilder]);
  const beginnings = (cuts ?? []).flatMap((cut) =>
    (refines ?? []).map((refine) => [...cut, ...refine]).filter(startsMilder),
  );
  return beginnings
    .flatMap((beginning) => (finishes ?? []).map((finish) => [...beginning, ...finish]))
    .filter((steps) => steps.length > 0 && allows(sequenceConstraints)(steps))
    .map((steps) => ({
      steps,
      median: medianRemoval(steps),
      strongest: strongestRung(steps),
      pace: steps.reduce((sum, step) => sum + paceOf(step), 0),
    }));
}

export type Choice = {
  readonly candidate: Candidate;
  /** Expected share of the general defects cleared. */
  readonly correction: number;
};

/** What is aimed at on a panel and what may go, with the differences that count as none. */
export type ChoiceLimits = {
  readonly budget: number;
  readonly aim: number;
  readonly area: number;
} & CorrectionModel['correction']['choice'];

/**
 * The best candidate within the budget: least shortfall from the aim (near ones are equal), then the mildest strongest step, then the least removal, then time, then name. Undefined when
 * nothing fits.
 */
export function chooseSteps(
  all: readonly Candidate[],
  limits: ChoiceLimits,
  correctionOf: (median: number) => number,
  meanOf: (median: number) => number,
): Choice | undefined {
  const allowed = all.filter(({ median }) => median <= limits.budget);
  const shortfall = (median: number): number => Math.max(0, limits.aim - correctionOf(median));
  // Correction grows with removal, so the largest removal has the least shortfall.
  const most = allowed.reduce((largest, { median }) => Math.max(largest, median), 0);
  const ceiling = shortfall(most) + limits.equalShortfall;
  const equals = allowed.filter(({ median }) => shortfall(median) <= ceiling);
  const rank = ({ median, strongest, pace }: Candidate): readonly number[] => [
    strongest,
    Math.floor(meanOf(median) / limits.removalBin),
    Math.round((pace * limits.area) as Minutes),
  ];
  const best = equals.reduce<Candidate | undefined>(
    (leader, one) => (leader === undefined || precedes(one, leader, rank) ? one : leader),
    undefined,
  );
  return best === undefined
    ? undefined
    : { candidate: best, correction: correctionOf(best.median) };
}

function precedes(
  a: Candidate,
  b: Candidate,
  rank: (candidate: Candidate) => readonly number[],
): boolean {
  const left = rank(a);
  const right = rank(b);
  for (const [i, value] of left.entries()) {
    const other = right[i] ?? 0;
    if (value !== other) return value < other;
  }
  return stepsId(a.steps) < stepsId(b.steps);
}
