/** Search over sequences cut → refine → finish. Exhaustive: the space is small enough to look at all. */
import { micrometres } from '../../base/units.ts';
import { type CorrectionModel, STAGES, type Stage } from '../removal/catalogue.ts';
import { type Combination, stagesOf } from '../removal/combination.ts';
import { type SummedRemoval, together } from '../removal/removal-knowledge.ts';
import { type HazeEffect, hazeAfterEffect, hazeEffect, type Step } from '../removal/step.ts';
import {
  type Beginning,
  type CandidateColumns,
  emptyColumns,
  type LastStep,
} from './candidate-columns.ts';
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
type Move = LastStep & {
  readonly haze: HazeEffect;
  /** Whether it may end a sequence, as far as it goes by itself: no step before it lessens the haze that it leaves. */
  readonly mayBeLast: boolean;
};

/** Steps as far as they have come, with what they come to together. */
type Sequence = Beginning & { readonly last: Step | undefined; readonly haze: number };

const NO_STEP: Sequence = {
  steps: [],
  last: undefined,
  removal: { median: micrometres(0), rateSds: 0, withDepth: 0 },
  pace: 0,
  haze: 0,
};

/**
 * Every sequence that the technique constraints allow, in no particular order; never the empty one. They are measured and
 * not yet made: of ten thousand most leave haze or are no milder at their end, and each is looked at as a shorter one with
 * a step more.
 */
export function candidateColumns(
  ladder: readonly Combination[],
  context: Omit<ConstraintContext, 'budget'>,
  { paceOf, removalOf, stepLogSd, mostSets }: Measures,
): CandidateColumns {
  const reached = inReach(ladder, context);
  const moveOf = (step: Step): Move => ({
    step,
    removal: removalOf(step),
    pace: paceOf(step),
    haze: hazeEffect(step, context.hazeCleared),
    mayBeLast: technique([step], context, [lastStepNotRotary, hazeCleared]) === undefined,
  });
  const found = emptyColumns(stepLogSd);
  const beginnings = [NO_STEP];
  const goOn = (before: Sequence, moves: readonly Move[]): void => {
    for (const move of milderThan(before, moves)) {
      const haze = hazeAfterEffect(before.haze, move.haze);
      if (move.mayBeLast && haze <= context.hazeAllowed) found.add(before, move);
      beginnings.push(withMove(before, move, haze));
    }
  };
  const end = (before: Sequence, moves: readonly Move[]): void => {
    for (const move of milderThan(before, moves)) {
      if (hazeAfterEffect(before.haze, move.haze) <= context.hazeAllowed) found.add(before, move);
    }
  };
  for (const stage of STAGES) {
    const moves = stepsOf(stage, reached, mostSets).map(moveOf);
    const finishes = moves.filter(({ mayBeLast }) => mayBeLast);
    // What does without this stage stays a beginning.
    for (const before of beginnings.slice()) {
      if (stage === 'finish') end(before, finishes);
      else goOn(before, moves);
    }
  }
  return found.all();
}

/** They stand as the ladder does, the mildest first. */
function milderThan({ last }: Sequence, moves: readonly Move[]): readonly Move[] {
  if (last === undefined) return moves;
  const tooStrong = moves.findIndex(({ step }) => !isMilder(last, step));
  return tooStrong === -1 ? moves : moves.slice(0, tooStrong);
}

const withMove = (before: Sequence, { step, removal, pace }: Move, haze: number): Sequence => ({
  steps: [...before.steps, step],
  last: step,
  removal: together(before.removal, removal),
  pace: before.pace + pace,
  haze,
});
