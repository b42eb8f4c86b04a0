/** The ladder on a paint after its test spots: what each rung takes now, and which one is tried next. */
import { valueAt } from '../../base/at.ts';
import { normalCdf, normalQuantile } from '../../base/stats/normal.ts';
import type { Micrometres } from '../../base/units.ts';
import { removalQuantile } from '../../film/limits/removal-risk.ts';
import { type Defect, medianDepth } from '../defects.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import { type Combination, ladder, stagesOf } from '../removal/combination.ts';
import { foretell, ladderOn, type PaintKnowledge } from '../removal/removal-knowledge.ts';
import type { SpotTrial } from './spot-trial.ts';

export type RungState =
  /** Milder than one that did not clear, or that did not clear itself. */
  | 'too-mild'
  /** Tried, and it cleared. */
  | 'cleared'
  /** One set of it takes more than may go. */
  | 'over-budget'
  | 'open';

export type Rung = {
  /** With what a set of it takes on this paint. */
  readonly combination: Combination;
  /** The same before any trial. */
  readonly before: Micrometres;
  /** 90 % range of one set now. */
  readonly low: Micrometres;
  readonly high: Micrometres;
  /** Chance to reach the aim within so many sets as the model grants. */
  readonly chance: number;
  readonly tried: boolean;
  readonly state: RungState;
};

export type LadderCase = {
  readonly trials: readonly SpotTrial[];
  readonly paint: PaintKnowledge;
  /** What is to be cleared, and which share of it. */
  readonly defect: Defect;
  readonly aim: number;
  /** What may go at a removal's ln-SD; null where the film was not read. */
  readonly budgetAt: ((logSd: number) => number) | null;
  readonly model: CorrectionModel;
};

/** Mildest first. Small pads and hands are for tight places: they stand on it only where they were tried. */
export function spotLadder(ladderCase: LadderCase): readonly Rung[] {
  const { trials, paint, model } = ladderCase;
  const tried = new Set(trials.map(({ combination }) => combination.id));
  const usual = new Map(ladder(model).map(({ id, perSet }) => [id, perSet]));
  const fullSize = Math.max(0, ...powered(model).map(({ padDiameter }) => padDiameter));
  const rungs = ladderOn(paint, model).filter(
    (one) =>
      tried.has(one.id) ||
      (one.machine.motion.kind !== 'hand' && one.machine.padDiameter >= fullSize && isUseful(one)),
  );
  const mostTooMild = Math.max(
    -1,
    ...trials.map((trial) => {
      const at = rungs.findIndex(({ id }) => id === trial.combination.id);
      // What is milder than one that left too much has less chance than it, however much that has.
      return didNotClear(trial, ladderCase) ? at : leftTooMuch(trial, ladderCase.aim) ? at - 1 : -1;
    }),
  );
  return rungs.map((combination, i): Rung => {
    const oneSet = foretell([{ combination, sets: 1 }], paint, model.removal.stepLogSd);
    return {
      combination,
      before: valueAt(usual, combination.id),
      low: removalQuantile(oneSet, 0.05),
      high: removalQuantile(oneSet, 0.95),
      chance: chanceWithin(combination, model.spot.sets, ladderCase),
      tried: tried.has(combination.id),
      state: stateOf(combination, i <= mostTooMild, ladderCase),
    };
  });
}

/** Pad and product go together; and nobody finishes by rotary, for it leaves holograms. */
const isUseful = (one: Combination): boolean =>
  stagesOf(one).some((stage) => stage !== 'finish' || one.machine.motion.kind !== 'rotary');

const leftTooMuch = (trial: SpotTrial, aim: number): boolean =>
  trial.cleared !== null && !hasCleared(trial, aim);

const powered = ({ machines }: CorrectionModel) =>
  machines.filter(({ motion }) => motion.kind !== 'hand');

function stateOf(
  combination: Combination,
  tooMild: boolean,
  { trials, paint, aim, budgetAt, model }: LadderCase,
): RungState {
  if (trials.some((trial) => trial.combination.id === combination.id && hasCleared(trial, aim))) {
    return 'cleared';
  }
  if (tooMild) return 'too-mild';
  const { median, logSd } = foretell([{ combination, sets: 1 }], paint, model.removal.stepLogSd);
  return budgetAt !== null && median > budgetAt(logSd) ? 'over-budget' : 'open';
}

export const hasCleared = ({ cleared }: SpotTrial, aim: number): boolean =>
  cleared !== null && cleared >= aim;

/** It had all its sets and left too much, or one more set has little chance either. */
function didNotClear(trial: SpotTrial, ladderCase: LadderCase): boolean {
  const { aim, model, paint } = ladderCase;
  if (!leftTooMuch(trial, aim)) return false;
  if (trial.sets >= model.spot.sets) return true;
  const perSet = trial.combination.perSet * Math.exp(paint.removal.of(trial.combination.id).mean);
  const now = { ...trial.combination, perSet: perSet as Micrometres };
  return chanceWithin(now, model.spot.sets, ladderCase) < model.spot.leastChance;
}

/**
 * Chance that so many sets clear the aimed share on this panel: its own correction is
 * Φ((ln R − ln D)/σ_D), so ln R − ln D must reach σ_D·Φ⁻¹(aim), with what is not known of R and of D.
 */
export function chanceWithin(
  combination: Combination,
  sets: number,
  { paint, defect, aim, model }: Pick<LadderCase, 'paint' | 'defect' | 'aim' | 'model'>,
): number {
  const depth = medianDepth(defect);
  if (depth === 0) return 1;
  const { depthScale } = paint.removal;
  const { median, logSd, withDepth } = foretell(
    [{ combination, sets }],
    paint,
    model.removal.stepLogSd,
  );
  const reached = Math.log(median / depth) - depthScale.mean;
  const needed = model.correction.depthLogSd * normalQuantile(aim);
  return normalCdf((reached - needed) / Math.sqrt(logSd ** 2 + depthScale.sd ** 2 - 2 * withDepth));
}
