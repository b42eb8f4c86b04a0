/** What a vehicle's test spots showed, as observations for the shop's rates file. */
import type { ReadTrial } from '../../correction/spot/spot-advice.ts';
import { type FinishOf, isThroughClear } from '../../correction/spot/spot-next.ts';
import { hasRisen } from '../../correction/spot/spot-trial.ts';
import type { RateObservation } from '../../formats/rates.ts';

/** One of each trial that showed something of the paint that it was meant for, by gauge or by eye. */
export const spotObservations = (
  trials: readonly ReadTrial[],
  about: { readonly date: string; readonly vehicle: string; readonly finishOf: FinishOf },
): readonly RateObservation[] =>
  trials.flatMap(({ trial, removed }) => {
    if (removed === null && trial.cleared === null) return [];
    if (isThroughClear(trial, about.finishOf) || hasRisen(trial, removed)) return [];
    const [note, ...more] = trial.notes;
    return [
      {
        date: about.date,
        vehicle: about.vehicle,
        panel: trial.panel,
        steps: [{ combination: trial.combination.id, sets: trial.sets }],
        ...(removed === null
          ? {}
          : { removed: { mean: removed.mean, standardError: removed.standardError } }),
        ...(trial.cleared === null ? {} : { cleared: trial.cleared }),
        ...(trial.haze === null ? {} : { hazeGrade: trial.haze }),
        ...(note === undefined ? {} : { note: more.length === 0 ? note : [note, ...more] }),
      },
    ];
  });
