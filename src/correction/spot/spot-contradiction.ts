/** What is said of a test spot that contradicts what was held of paints before it. */
import { type Remark, remark } from '../../base/remark.ts';
import { says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { conflictWithPrior } from './prior-conflict.ts';
import { observationOf, type RemovedFilm, type SpotTrial } from './spot-trial.ts';
import type { RemovalPriors } from './trial-observation.ts';

export const usualRemoval = ({ combination, sets }: SpotTrial): Micrometres =>
  micrometres(combination.perSet * sets);

/** `place` as in " on bonnet"; nothing where it does not contradict. */
export function contradiction(
  trial: SpotTrial,
  removed: RemovedFilm,
  priors: RemovalPriors,
  place = '',
): readonly Remark[] {
  const conflict = conflictWithPrior(observationOf(trial, removed), priors);
  if (conflict === null) return [];
  const took = says`test spot ${trial.spot}${place} took ${um(removed.mean)} where ${um(usualRemoval(trial), 2)} is usual: outside 95 % of what paints and ways of working differ by`;
  return [remark('spot-contradicts', says`${took}. ${OUTCOME[conflict]}`, removed.mean)];
}

const OUTCOME = {
  more: 'It makes nothing surer, and no more may go for it',
  less: 'It counts for nothing, and no step is stronger for it: check its readings, work it once more on a fresh place',
} as const;
