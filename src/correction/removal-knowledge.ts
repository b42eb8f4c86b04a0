/** What is known of how a paint gives way, before test spots and after them, and what steps take then. */
import { type Micrometres, micrometres } from '../base/units.ts';
import type { ExpectedRemoval } from '../film/removal-risk.ts';
import type { CorrectionModel } from './catalogue.ts';
import { type Combination, ladder } from './combination.ts';
import { learnRemoval, type RemovalPosterior } from './removal-posterior.ts';
import { medianRemoval, type Step } from './step.ts';
import type { RemovalPriors, TrialObservation } from './trial-observation.ts';

export type Hardness = 'soft' | 'medium' | 'hard' | 'unknown';

/** A paint as far as its removal goes. */
export type PaintKnowledge = {
  readonly removal: RemovalPosterior;
  /** True until a test spot on this paint has been seen with its film. */
  readonly provisional: boolean;
};

/** A removal not yet made, and how it goes together with the depth scale (covariance of the logarithms). */
export type ForetoldRemoval = ExpectedRemoval & { readonly withDepth: number };

/** ln-SD of a removal before any test spot: hardness, the combination's own rate and the step. */
export const removalLogSd = ({
  hardnessLogSd,
  combinationLogSd,
  stepLogSd,
}: CorrectionModel['removal']): number => Math.hypot(hardnessLogSd, combinationLogSd, stepLogSd);

/** Factor of removal for paint whose hardness is declared. */
const hardnessFactor = (hardness: Hardness, removal: CorrectionModel['removal']): number =>
  ({ soft: removal.softFactor, hard: removal.hardFactor, medium: 1, unknown: 1 })[hardness];

/** What is held of a paint before any trial; a rate that the shop measured is as sure as it states. */
export const removalPriors = (
  hardness: Hardness,
  { removal, correction, spot, rates }: CorrectionModel,
): RemovalPriors => ({
  hardness: {
    mean: Math.log(hardnessFactor(hardness, removal)),
    sd: removal.hardnessLogSd,
  },
  combinationSd: (combination) => rates.get(combination)?.logSd ?? removal.combinationLogSd,
  usualCombinationSd: removal.combinationLogSd,
  stepSd: removal.stepLogSd,
  depthScaleSd: correction.depthScaleLogSd,
  depthLogSd: correction.depthLogSd,
  eyeSd: spot.eyeLogSd,
});

/** What the trials on one paint teach of it, in any order. */
export const paintKnowledge = (
  trials: readonly TrialObservation[],
  hardness: Hardness,
  model: CorrectionModel,
): PaintKnowledge => ({
  removal: learnRemoval(trials, removalPriors(hardness, model)),
  provisional: trials.every(({ removed }) => removed === null),
});

/** Combinations in the order in which this paint shows them, mildest first. */
export const ladderOn = (
  { removal }: PaintKnowledge,
  model: CorrectionModel,
): readonly Combination[] => ladder(model, (id) => Math.exp(removal.of(id).mean));

/**
 * Steps on a paint: the sum of their medians; as ln-SD that of their rates, each by its share in the sum,
 * and that of a step.
 *
 * What is left of doubt about the rates is taken as shared by a plan's combinations: those on one machine
 * or one pad share part of theirs, nobody has measured how much, and so the spread is never understated.
 */
export function foretell(
  steps: readonly Step[],
  { removal }: PaintKnowledge,
  stepSd: number,
): ForetoldRemoval {
  const median = medianRemoval(steps);
  const weighted = (of: (id: string) => number): number =>
    steps.reduce(
      (sum, { combination, sets }) =>
        sum + (median === 0 ? 0 : (sets * combination.perSet) / median) * of(combination.id),
      0,
    );
  return {
    median,
    logSd: Math.hypot(
      weighted((id) => removal.of(id).sd),
      stepSd,
    ),
    withDepth: weighted((id) => removal.of(id).withDepth),
  };
}

/** ln-SD of one step by a combination that nobody tried on this paint. */
export const untriedLogSd = ({ removal }: PaintKnowledge, stepSd: number): number =>
  Math.hypot(removal.untried.sd, stepSd);

/** Mean of a lognormal: median·exp(σ²/2). */
export const meanRemoval = ({ median, logSd }: ExpectedRemoval): Micrometres =>
  micrometres(median * Math.exp(logSd ** 2 / 2));

export type HardnessWord = 'soft' | 'medium' | 'hard';

/** The declared word whose factor is nearest on the log scale. */
export function hardnessWord(
  { removal }: PaintKnowledge,
  { softFactor, hardFactor }: CorrectionModel['removal'],
): HardnessWord {
  const { mean } = removal.hardness;
  if (mean > Math.log(softFactor) / 2) return 'soft';
  return mean < Math.log(hardFactor) / 2 ? 'hard' : 'medium';
}
