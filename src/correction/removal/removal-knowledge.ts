/** What is known of how a paint gives way, before test spots and after them, and what steps take then. */
import { type Micrometres, micrometres, plus, scale } from '../../base/units.ts';
import type { ExpectedRemoval } from '../../film/limits/removal-risk.ts';
import { conflictWithPrior, noSurer } from '../spot/prior-conflict.ts';
import { learnRemoval, type RemovalPosterior } from '../spot/removal-posterior.ts';
import type { RemovalPriors, TrialObservation } from '../spot/trial-observation.ts';
import type { CorrectionModel } from './catalogue.ts';
import { type Combination, ladder } from './combination.ts';
import type { Step } from './step.ts';

export type Hardness = 'soft' | 'medium' | 'hard' | 'unknown';

/** A paint as far as its removal goes. */
export type PaintKnowledge = {
  readonly removal: RemovalPosterior;
  /** True until a test spot on this paint has been seen with its film. */
  readonly provisional: boolean;
  /**
   * Of repaint, of which nothing is known but what its own spots showed: combinations that were tried on it and brought
   * no colour. Nothing stronger is worked there. Absent of factory paint.
   */
  readonly triedHere?: ReadonlySet<string>;
  /**
   * Combinations that took of it what could be foretold, by the gauge, and the worst haze that they were seen to leave.
   * Absent where there are none.
   */
  readonly hazeSeen?: ReadonlyMap<string, number>;
  /**
   * The worst haze that each combination was seen to leave on it, film read or not: it leaves as much again, whatever it
   * leaves as a rule. Absent where nobody looked.
   */
  readonly worstHaze?: ReadonlyMap<string, number>;
};

/** A removal not yet made, and how it goes together with the depth scale (covariance of the logarithms). */
export type ForetoldRemoval = ExpectedRemoval & { readonly withDepth: number };

/** ln-SD of a removal before any test spot: hardness, the combination's own rate and the step. */
export const removalLogSd = ({
  hardnessLogSd,
  combinationLogSd,
  stepLogSd,
}: CorrectionModel['removal']): number => Math.hypot(hardnessLogSd, combinationLogSd, stepLogSd);

/** The same by what the shop's earlier vehicles taught, where they taught anything. */
export const foreseenLogSd = (model: CorrectionModel): number => {
  const { hardness, usualCombinationSd, stepSd } = removalPriors('unknown', model);
  return Math.hypot(hardness.sd, usualCombinationSd, stepSd);
};

/** Factor of removal for paint whose hardness is declared. */
const hardnessFactor = (hardness: Hardness, removal: CorrectionModel['removal']): number =>
  ({ soft: removal.softFactor, hard: removal.hardFactor, medium: 1, unknown: 1 })[hardness];

/** ln-SD of a combination's own rate before anything was measured; a rate that the shop states is as sure as it states. */
export const statedCombinationSd = (
  { rates, removal }: Pick<CorrectionModel, 'rates' | 'removal'>,
  combination: string,
): number => rates.get(combination)?.logSd ?? removal.combinationLogSd;

/** The same by what the shop's earlier vehicles taught of it. */
function combinationSd(model: CorrectionModel, combination: string): number {
  const known = model.learned?.combinations.get(combination);
  const doubt = Math.sqrt(model.learned?.unobservedVariance ?? 0);
  return known?.own.sd ?? Math.hypot(statedCombinationSd(model, combination), doubt);
}

/** What is held of a paint before any trial on it. A declared hardness acts beside what earlier vehicles taught. */
export const removalPriors = (hardness: Hardness, model: CorrectionModel): RemovalPriors => ({
  hardness: {
    mean: Math.log(hardnessFactor(hardness, model.removal)) + (model.learned?.nextPaint.mean ?? 0),
    sd: model.learned?.nextPaint.sd ?? model.removal.hardnessLogSd,
  },
  combinationSd: (combination) => combinationSd(model, combination),
  usualCombinationSd: model.learned?.usualSd ?? model.removal.combinationLogSd,
  stepSd: model.removal.stepLogSd,
  depthScaleSd: model.correction.depthScaleLogSd,
  depthLogSd: model.correction.depthLogSd,
  eyeSd: model.spot.eyeLogSd,
});

/** What the trials on one paint teach of it, in any order. */
export const paintKnowledge = (
  trials: readonly TrialObservation[],
  hardness: Hardness,
  model: CorrectionModel,
): PaintKnowledge =>
  trials.length === 0 ? untriedPaint(hardness, model) : learnPaint(trials, hardness, model);

const learnPaint = (
  trials: readonly TrialObservation[],
  hardness: Hardness,
  model: CorrectionModel,
): PaintKnowledge => {
  const priors = removalPriors(hardness, model);
  const judged = trials.map((trial) => ({ trial, conflict: conflictWithPrior(trial, priors) }));
  const believed = judged.flatMap(({ trial, conflict }) => (conflict === 'less' ? [] : [trial]));
  const learnt = learnRemoval(believed, priors);
  const isInConflict = judged.some(({ conflict }) => conflict !== null);
  const worst = worstHazeOf(trials);
  const seen = isInConflict ? [] : [...worst].filter(([id]) => isRead(id, trials));
  return {
    removal: isInConflict ? noSurer(learnt, learnRemoval([], priors)) : learnt,
    provisional: believed.every(({ removed }) => removed === null),
    ...(seen.length === 0 ? {} : { hazeSeen: new Map(seen) }),
    ...(worst.size === 0 ? {} : { worstHaze: worst }),
  };
};

const isRead = (id: string, trials: readonly TrialObservation[]): boolean =>
  trials.some(({ combination, removed }) => combination === id && removed !== null);

function worstHazeOf(trials: readonly TrialObservation[]): ReadonlyMap<string, number> {
  const worst = new Map<string, number>();
  for (const { combination, haze } of trials) {
    if (haze === undefined || haze === null) continue;
    worst.set(combination, Math.max(haze, worst.get(combination) ?? 0));
  }
  return worst;
}

/** Paints that nobody tried are known alike: one for each hardness, kept as long as the model it follows from. */
const untriedPaints = new WeakMap<CorrectionModel, Map<Hardness, PaintKnowledge>>();

function untriedPaint(hardness: Hardness, model: CorrectionModel): PaintKnowledge {
  const known = untriedPaints.get(model) ?? new Map<Hardness, PaintKnowledge>();
  untriedPaints.set(model, known);
  const paint = known.get(hardness) ?? learnPaint([], hardness, model);
  known.set(hardness, paint);
  return paint;
}

/** Combinations in the order in which this paint shows them, mildest first, each with the haze that it leaves there. */
export function ladderOn(
  { removal, worstHaze }: PaintKnowledge,
  model: CorrectionModel,
): readonly Combination[] {
  const rungs = ladder(model, (id) => Math.exp(removal.of(id).mean));
  if (worstHaze === undefined) return rungs;
  // A trial that was cleaner than the rule may have been so by its light or its luck.
  return rungs.map((one) => ({ ...one, haze: Math.max(one.haze, worstHaze.get(one.id) ?? 0) }));
}

/** Those of them that may be worked on it: none where nothing was proved on it that the shop has. */
export function workableOn(paint: PaintKnowledge, model: CorrectionModel): readonly Combination[] {
  const rungs = ladderOn(paint, model);
  const most = strongestTried(paint, rungs);
  if (paint.triedHere === undefined) return rungs;
  return most === undefined ? [] : rungs.filter(({ rung }) => rung <= most.rung);
}

/** The strongest that was tried, where nothing stronger may be worked. */
export const strongestTried = (
  { triedHere }: PaintKnowledge,
  rungs: readonly Combination[],
): Combination | undefined =>
  triedHere === undefined ? undefined : rungs.findLast(({ id }) => triedHere.has(id));

/**
 * Steps on a paint: the sum of their medians; as ln-SD that of their rates, each by its share in the sum,
 * and that of a step.
 *
 * What is left of doubt about the rates is taken as shared by a plan's combinations: those on one machine
 * or one pad share part of theirs, nobody has measured how much, and so the spread is never understated.
 */
export function foretell(
  steps: readonly Step[],
  paint: PaintKnowledge,
  stepSd: number,
): ForetoldRemoval {
  const [first, ...rest] = steps.map((step) => stepRemoval(step, paint));
  return first === undefined
    ? { median: micrometres(0), logSd: stepSd, withDepth: 0 }
    : foretold(rest.reduce(together, first), stepSd);
}

/** What steps take together, and what is known of their rates, that of each times what it takes. */
export type SummedRemoval = {
  readonly median: Micrometres;
  readonly rateSds: number;
  readonly withDepth: number;
};

export function stepRemoval(
  { combination, sets }: Step,
  { removal }: PaintKnowledge,
): SummedRemoval {
  const median = scale(combination.perSet, sets);
  const { sd, withDepth } = removal.of(combination.id);
  return { median, rateSds: median * sd, withDepth: median * withDepth };
}

export const together = (some: SummedRemoval, more: SummedRemoval): SummedRemoval => ({
  median: plus(some.median, more.median),
  rateSds: some.rateSds + more.rateSds,
  withDepth: some.withDepth + more.withDepth,
});

export const foretold = (
  { median, rateSds, withDepth }: SummedRemoval,
  stepSd: number,
): ForetoldRemoval => ({
  median,
  logSd: Math.hypot(rateSds / median, stepSd),
  withDepth: withDepth / median,
});

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
