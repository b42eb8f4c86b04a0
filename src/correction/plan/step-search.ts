/** Search over sequences cut → refine → finish. Exhaustive: the space is small enough to look at all. */
import { micrometres } from '../../base/units.ts';
import { type CorrectionModel, STAGES, type Stage } from '../removal/catalogue.ts';
import { type Combination, stagesOf } from '../removal/combination.ts';
import {
  type ForetoldRemoval,
  foretold,
  meanRemoval,
  type SummedRemoval,
  together,
} from '../removal/removal-knowledge.ts';
import { hazeAfterStep, type Step } from '../removal/step.ts';
import {
  type Constraint,
  type ConstraintContext,
  hazeCleared,
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
  readonly removalOf: (step: Step) => SummedRemoval;
  readonly stepLogSd: number;
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
    .filter((combination) => stagesOf(combination).includes(stage))
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
  readonly removal: SummedRemoval;
  readonly pace: number;
  /** Whether it may end a sequence, as far as it goes by itself: no step before it lessens the haze that it leaves. */
  readonly mayBeLast: boolean;
};

/** Steps as far as they have come, with what they come to together. */
type Sequence = {
  readonly steps: readonly [Step, ...Step[]];
  readonly last: Step;
  readonly removal: SummedRemoval;
  readonly pace: number;
  readonly haze: number;
};

/**
 * Every sequence that the technique constraints allow, in no particular order; never the empty one. Of ten
 * thousand most leave haze or are no milder at their end: each is looked at as a shorter one with a step
 * more, and measured when it is allowed.
 */
export function candidates(
  ladder: readonly Combination[],
  context: Omit<ConstraintContext, 'budget'>,
  { paceOf, removalOf, stepLogSd, mostSets }: Measures,
): readonly Candidate[] {
  const reached = inReach(ladder, context);
  const moveOf = (step: Step): Move => ({
    step,
    removal: removalOf(step),
    pace: paceOf(step),
    mayBeLast: technique([step], context, [lastStepNotRotary, hazeCleared]) === undefined,
  });
  const movesOf = (stage: Stage): readonly Move[] => {
    const moves = stepsOf(stage, reached, mostSets).map(moveOf);
    // After a finish there is nothing.
    return stage === 'finish' ? moves.filter(({ mayBeLast }) => mayBeLast) : moves;
  };
  const stages = STAGES.map(movesOf);
  const found: Candidate[] = [];
  const goOn = (before: Sequence | undefined, place: number): void => {
    const moves = stages[place];
    if (moves === undefined) return;
    goOn(before, place + 1);
    const goesOn = place + 1 < stages.length;
    for (const move of moves) {
      // They stand as the ladder does, the mildest first.
      if (before !== undefined && !isMilder(before.last, move.step)) return;
      const haze = hazeAfterStep(before?.haze ?? 0, move.step, context.hazeCleared);
      const mayEnd = move.mayBeLast && haze <= context.hazeAllowed;
      if (!mayEnd && !goesOn) continue;
      const sequence = withMove(before, move, haze);
      if (mayEnd) found.push(measured(sequence, stepLogSd));
      if (goesOn) goOn(sequence, place + 1);
    }
  };
  goOn(undefined, 0);
  return found;
}

const withMove = (
  before: Sequence | undefined,
  { step, removal, pace }: Move,
  haze: number,
): Sequence =>
  before === undefined
    ? { steps: [step], last: step, removal, pace, haze }
    : {
        steps: [...before.steps, step],
        last: step,
        removal: together(before.removal, removal),
        pace: before.pace + pace,
        haze,
      };

/** Each step is milder than the one before: the first is the strongest. */
function measured({ steps, removal: summed, pace }: Sequence, stepLogSd: number): Candidate {
  const [{ combination }] = steps;
  const removal = foretold(summed, stepLogSd);
  return { steps, removal, mean: meanRemoval(removal), strongest: combination.rung, pace };
}
