/** Trials without colour on the pad where a finish without a clear is stated: one of the two is wrong. */
import { type Remark, remark } from '../../base/remark.ts';
import type { FinishOf } from '../../correction/spot/spot-next.ts';
import { onlyGained, type SpotTrial } from '../../correction/spot/spot-trial.ts';
import { isColourNormal, spotsNamed } from '../../film/limits/colour-at-spot.ts';
import type { EffectiveFacts } from '../settings/panel-facts.ts';

export const showingClear = (
  trials: readonly SpotTrial[],
  finishOf: FinishOf,
): readonly SpotTrial[] =>
  trials.filter(
    (trial) =>
      trial.colourOnPad === false && !onlyGained(trial) && isColourNormal(finishOf(trial.panel)),
  );

/** Till it is settled the finish is held to be unknown, as in a survey: the lesser of both reckonings counts. */
export const heldFacts = (facts: EffectiveFacts, shown: readonly SpotTrial[]): EffectiveFacts =>
  shown.length === 0 ? facts : { ...facts, finish: { ...facts.finish, value: 'unknown' } };

export const clearRemarks = (shown: readonly SpotTrial[]): readonly Remark[] =>
  shown.length === 0
    ? []
    : [
        remark(
          'spot-clear-shown',
          `${spotsNamed(shown.map(({ spot }) => spot))} left no colour on the pad, though a finish without a clear is stated: a clear lies there, or nobody looked at the pad; till that is settled the finish is held to be unknown, and the lesser of both reckonings counts`,
        ),
      ];
