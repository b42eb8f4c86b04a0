/** Search over sequences cut → refine → finish. Exhaustive: the space is small enough to look at all. */
import { micrometres } from '../../base/units.ts';
import type { CorrectionModel, Stage } from '../removal/catalogue.ts';
import type { Combination } from '../removal/combination.ts';
import { type ForetoldRemoval, meanRemoval } from '../removal/removal-knowledge.ts';
import { hazeAfterStep, type Step, strongestRung } from '../removal/step.ts';
import {
  type Constraint,
  type ConstraintContext,
  isMilder,
  lastStepNotRotary,
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

const STAGES: readonly Stage[] = ['cut', 'refine', 'finish'];

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

/** Every sequence cut → refine → finish but the empty one. */
export const sequences = (
  ladder: readonly Combination[],
  mostSets: MostSets,
): readonly (readonly Step[])[] =>
  STAGES.map((stage) => stepsOf(stage, ladder, mostSets))
    .reduce<readonly (readonly Step[])[]>(
      (beginnings, steps) =>
        beginnings.flatMap((beginning) => [
          beginning,
          ...steps.map((step) => [...beginning, step]),
        ]),
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

/** A step, with what is the same of it wherever it stands. */
type Move = {
  readonly step: Step;
  readonly pace: number;
  readonly mayBeLast: boolean;
};

/** A sequence as far as it has come, with what its steps come to together. */
type Beginning = {
  readonly last: Move;
  readonly before: Beginning | undefined;
  readonly pace: number;
  readonly haze: number;
};

/**
 * Every sequence that the technique constraints allow, in no particular order; never the empty one. Most of
 * ten thousand leave haze or are no milder at their end: each is looked at as a shorter one with a step
 * more, and measured when it is allowed.
 */
export function candidates(
  ladder: readonly Combination[],
  context: Omit<ConstraintContext, 'budget'>,
  { paceOf, mostSets, foretell }: Measures,
): readonly Candidate[] {
  const reached = inReach(ladder, context);
  const moveOf = (step: Step): Move => ({
    step,
    pace: paceOf(step),
    mayBeLast: technique([step], context, [lastStepNotRotary]) === undefined,
  });
  const stages = STAGES.map((stage) => stepsOf(stage, reached, mostSets).map(moveOf));
  const found: Candidate[] = [];
  const goOn = (before: Beginning | undefined, place: number): void => {
    const moves = stages[place];
    if (moves === undefined) {
      if (before?.last.mayBeLast === true && before.haze <= context.hazeAllowed) {
        found.push(measured(before, foretell));
      }
      return;
    }
    goOn(before, place + 1);
    for (const last of moves) {
      if (before === undefined || isMilder(before.last.step, last.step)) {
        goOn(withStep(before, last, context), place + 1);
      }
    }
  };
  goOn(undefined, 0);
  return found;
}

const withStep = (
  before: Beginning | undefined,
  last: Move,
  { hazeCleared }: Pick<ConstraintContext, 'hazeCleared'>,
): Beginning => ({
  last,
  before,
  pace: (before?.pace ?? 0) + last.pace,
  haze: hazeAfterStep(before?.haze ?? 0, last.step, hazeCleared),
});

function measured(end: Beginning, foretell: Measures['foretell']): Candidate {
  const steps = stepsTo(end);
  const removal = foretell(steps);
  return {
    steps,
    removal,
    mean: meanRemoval(removal),
    strongest: strongestRung(steps),
    pace: end.pace,
  };
}

const stepsTo = ({ before, last }: Beginning): readonly Step[] =>
  before === undefined ? [last.step] : [...stepsTo(before), last.step];
