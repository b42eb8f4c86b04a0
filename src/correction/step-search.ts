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
import type { ForetoldRemoval } from './removal-knowledge.ts';
import { type Step, stepsId, strongestRung } from './step.ts';

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

/** Every sequence that the technique constraints allow, in no particular order; never the empty one. */
export function candidates(
  ladder: readonly Combination[],
  context: Omit<ConstraintContext, 'budget'>,
  { paceOf, mostSets, foretell }: Measures,
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
      removal: foretell(steps),
      strongest: strongestRung(steps),
      pace: steps.reduce((sum, step) => sum + paceOf(step), 0),
    }));
}

/** A candidate held against a panel's defects. */
export type RatedCandidate = Candidate & {
  /** Expected share of the general defects cleared. */
  readonly correction: number;
  /** Expected removal, µm. */
  readonly mean: number;
};

/** What is aimed at on a panel, with the differences that count as none. */
export type ChoiceLimits = {
  readonly aim: number;
  readonly area: number;
} & CorrectionModel['correction']['choice'];

/**
 * The best of the candidates that the limits allow: least shortfall from the aim (near ones are equal),
 * then the mildest strongest step, then the least removal, then time, then name. Undefined when nothing
 * fits.
 */
export function chooseSteps(
  all: readonly RatedCandidate[],
  limits: ChoiceLimits,
  allows: (removal: ForetoldRemoval) => boolean,
): RatedCandidate | undefined {
  const allowed = all.filter(({ removal }) => allows(removal));
  const shortfall = ({ correction }: RatedCandidate): number =>
    Math.max(0, limits.aim - correction);
  const least = allowed.reduce((smallest, one) => Math.min(smallest, shortfall(one)), 1);
  const equals = allowed.filter((one) => shortfall(one) <= least + limits.equalShortfall);
  const rank = ({ mean, strongest, pace }: RatedCandidate): readonly number[] => [
    strongest,
    Math.floor(mean / limits.removalBin),
    Math.round((pace * limits.area) as Minutes),
  ];
  return equals.reduce<RatedCandidate | undefined>(
    (leader, one) => (leader === undefined || precedes(one, leader, rank) ? one : leader),
    undefined,
  );
}

function precedes(
  a: RatedCandidate,
  b: RatedCandidate,
  rank: (candidate: RatedCandidate) => readonly number[],
): boolean {
  const left = rank(a);
  const right = rank(b);
  for (const [i, value] of left.entries()) {
    const other = right[i] ?? 0;
    if (value !== other) return value < other;
  }
  return stepsId(a.steps) < stepsId(b.steps);
}
