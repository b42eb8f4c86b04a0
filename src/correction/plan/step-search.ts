/** Search over sequences cut → refine → finish. Exhaustive: the space is small enough to look at all. */
import { micrometres } from '../../base/units.ts';
import type { CorrectionModel, Stage } from '../removal/catalogue.ts';
import type { Combination } from '../removal/combination.ts';
import type { ForetoldRemoval } from '../removal/removal-knowledge.ts';
import { type Step, strongestRung } from '../removal/step.ts';
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
  const allow = (constraints: readonly Constraint[]) => (steps: readonly Step[]) =>
    refusal(steps, anyBudget, constraints) === undefined;
  // A beginning whose steps do not get milder cannot be mended by what follows it.
  return sequences(inReach(ladder, context), mostSets, allow([eachStepMilder]))
    .filter(allow(sequenceConstraints))
    .map((steps) => ({
      steps,
      removal: foretell(steps),
      strongest: strongestRung(steps),
      pace: steps.reduce((sum, step) => sum + paceOf(step), 0),
    }));
}
