/** Search over sequences cut → refine → finish. Exhaustive: the space is small enough to look at all. */
import { micrometres } from '../../base/units.ts';
import type { CorrectionModel, Stage } from '../removal/catalogue.ts';
import type { Combination } from '../removal/combination.ts';
import { type ForetoldRemoval, meanRemoval } from '../removal/removal-knowledge.ts';
import { type Step, strongestRung } from '../removal/step.ts';
import {
  type Constraint,
  type ConstraintContext,
  endConstraints,
  isMilder,
  refusal,
  stepConstraints,
  techniqueConstraints,
} from './constraints.ts';

/** A sequence that technique allows, with all that the choice looks at. */
export type Candidate = {
  readonly steps: readonly Step[];
  readonly removal: ForetoldRemoval;
  /** Expected removal, µm. */
  readonly mean: number;
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

/** Each combination that a stage is worked with, in each number of sets. */
function stepsOf(
  stage: Stage,
  ladder: readonly Combination[],
  mostSets: MostSets,
): readonly Step[] {
  const counts = Array.from({ length: mostSets[stage] }, (_, i) => i + 1);
  return ladder
    .filter(({ pad, product }) => pad.stages.includes(stage) && product.stages.includes(stage))
    .flatMap((combination) => counts.map((sets) => ({ combination, sets })));
}

/** Every sequence cut → refine → finish but the empty one, in which each step may follow the one before. */
export const sequences = (
  ladder: readonly Combination[],
  mostSets: MostSets,
  mayFollow: (before: Step, step: Step) => boolean = () => true,
): readonly (readonly Step[])[] =>
  (['cut', 'refine', 'finish'] as const)
    .map((stage) => stepsOf(stage, ladder, mostSets))
    .reduce<readonly (readonly Step[])[]>(
      (beginnings, steps) =>
        beginnings.flatMap((beginning) => {
          const before = beginning.at(-1);
          const next =
            before === undefined ? steps : steps.filter((step) => mayFollow(before, step));
          return [beginning, ...next.map((step) => [...beginning, step])];
        }),
      [[]],
    )
    .filter((steps) => steps.length > 0);

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
): ReturnType<typeof refusal> => refusal(steps, withoutLimit(context), constraints);

const withoutLimit = (context: Omit<ConstraintContext, 'budget'>): ConstraintContext => ({
  ...context,
  budget: micrometres(Infinity),
});

/** Every sequence that the technique constraints allow, in no particular order; never the empty one. */
export function candidates(
  ladder: readonly Combination[],
  context: Omit<ConstraintContext, 'budget'>,
  { paceOf, mostSets, foretell }: Measures,
): readonly Candidate[] {
  const anyBudget = withoutLimit(context);
  return sequences(inReach(ladder, context), mostSets, isMilder)
    .filter((steps) => refusal(steps, anyBudget, endConstraints) === undefined)
    .map((steps) => {
      const removal = foretell(steps);
      return {
        steps,
        removal,
        mean: meanRemoval(removal),
        strongest: strongestRung(steps),
        pace: steps.reduce((sum, step) => sum + paceOf(step), 0),
      };
    });
}
