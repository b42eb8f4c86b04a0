/** Next rung, next refining step, one more set, done, or stop: and why. */
import { valueAt } from '../../base/at.ts';
import type { Finish } from '../../film/film-model.ts';
import { isColourNormal } from '../../film/limits/colour-at-spot.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import { type Combination, ladder, stagesOf } from '../removal/combination.ts';
import { ladderOn, type PaintKnowledge } from '../removal/removal-knowledge.ts';
import { hasCleared, type Rung } from './spot-ladder.ts';
import type { SpotOverrun } from './spot-overrun.ts';
import type { SpotTrial } from './spot-trial.ts';

export type NextCode =
  | 'start'
  | 'again'
  | 'step-up'
  | 'refine'
  | 'done'
  | 'stop-colour'
  | 'stop-overrun'
  | 'stop-risk'
  | 'stop-ladder';

export type FinishOf = (panel: string) => Finish;

export type NextStep = {
  readonly code: NextCode;
  /** What to try, or what did it; null where to stop. */
  readonly combination: Combination | null;
  /** What is held of the haze of one that did it, where that is more than the aim lets stand. */
  readonly haze?: HeldHaze;
};

export type HeldHaze = {
  /** On the spots that cleared, at its worst; what is held of it where nobody looked. */
  readonly seen: number;
  /** A spot that was cleaner than the rule does not lower it: so a plan holds it too. */
  readonly held: number;
  readonly allowed: number;
  /** What a plan has follow it; null where the shop has nothing that would refine it. */
  readonly follows: Combination | null;
};

export type NextCase = {
  readonly trials: readonly SpotTrial[];
  readonly ladder: readonly Rung[];
  readonly paint: PaintKnowledge;
  /** Of a panel by its name. */
  readonly finishOf: FinishOf;
  readonly aim: number;
  readonly hazeAllowed: number;
  /** Trials that surely took more than might go where they were worked. */
  readonly overruns: readonly SpotOverrun[];
  readonly model: CorrectionModel;
};

/**
 * Colour on the pad is normal on single-stage paint; elsewhere it is the base coat, or a wrong finish. What such a
 * trial took says nothing of how a clear gives way.
 */
export const isThroughClear = ({ colourOnPad, panel }: SpotTrial, finishOf: FinishOf): boolean =>
  colourOnPad === true && !isColourNormal(finishOf(panel));

export function nextStep(nextCase: NextCase): NextStep {
  const { trials, finishOf, hazeAllowed } = nextCase;
  if (trials.some((trial) => isThroughClear(trial, finishOf)))
    return { code: 'stop-colour', combination: null };
  if (nextCase.overruns.length > 0) return { code: 'stop-overrun', combination: null };
  const mildest = clearedBy(nextCase);
  if (mildest === undefined) return nextRung(nextCase);
  const { combination } = mildest;
  const seen = hazeSeen(combination, nextCase);
  const held = Math.max(seen, combination.haze);
  if (held <= hazeAllowed) return { code: 'done', combination };
  const isSeen = seen > hazeAllowed;
  const follows = refiningStep(combination, isSeen ? seen : held, nextCase) ?? null;
  if (isSeen && follows !== null) return { code: 'refine', combination: follows };
  return { code: 'done', combination, haze: { seen, held, allowed: hazeAllowed, follows } };
}

/** The mildest rung of which a trial cleared. */
export const clearedBy = ({
  trials,
  ladder: rungs,
  aim,
}: Pick<NextCase, 'trials' | 'ladder' | 'aim'>): Rung | undefined =>
  rungs.find(({ combination }) =>
    trials.some((trial) => trial.combination.id === combination.id && hasCleared(trial, aim)),
  );

/** As seen on its trials that cleared; what it usually leaves where nobody looked. */
function hazeSeen({ id, haze }: Combination, { trials, aim }: NextCase): number {
  const seen = trials
    .filter((trial) => trial.combination.id === id && hasCleared(trial, aim))
    .flatMap((trial) => trial.haze ?? []);
  return seen.length === 0 ? haze : Math.max(...seen);
}

function nextRung({ trials, ladder: rungs, model }: NextCase): NextStep {
  const worth = rungs.filter(
    ({ state, chance }) => state !== 'too-mild' && chance >= model.spot.leastChance,
  );
  const [next] = worth;
  if (next === undefined) return { code: 'stop-ladder', combination: null };
  if (next.state === 'over-budget') return { code: 'stop-risk', combination: next.combination };
  if (next.tried) return { code: 'again', combination: next.combination };
  const judged = trials.some(({ cleared }) => cleared !== null);
  return { code: judged ? 'step-up' : 'start', combination: next.combination };
}

/**
 * The step that clears the haze another left: by dual action, where holograms are less likely, its pad the largest that
 * is no wider than the other's, as it works the same place; milder than the other, and leaving what is allowed; the
 * mildest that does it in one set, else the one that cuts most.
 * Reckoned on usual paint: hard paint gives way less, and is hazed less as well.
 */
export function refiningStep(
  after: Combination,
  haze: number,
  { paint, hazeAllowed, model }: Pick<NextCase, 'paint' | 'hazeAllowed' | 'model'>,
): Combination | undefined {
  const usual = new Map(ladder(model).map(({ id, perSet }) => [id, perSet]));
  const needed = (haze - hazeAllowed) * model.correction.haze.cleared;
  const widest = widestOrbital(model, after.machine.padDiameter);
  const milder = ladderOn(paint, model).filter(
    (one) =>
      one.machine.motion.kind === 'orbital' &&
      one.machine.padDiameter === widest &&
      one.perSet < after.perSet &&
      one.haze <= hazeAllowed &&
      stagesOf(one).some((stage) => stage !== 'cut'),
  );
  return milder.find(({ id }) => valueAt(usual, id) >= needed) ?? milder.at(-1);
}

const widestOrbital = ({ machines }: CorrectionModel, within: number): number =>
  Math.max(
    0,
    ...machines
      .filter(({ motion, padDiameter }) => motion.kind === 'orbital' && padDiameter <= within)
      .map(({ padDiameter }) => padDiameter),
  );
