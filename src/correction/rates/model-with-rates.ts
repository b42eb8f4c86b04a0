/** The correction model as a shop's earlier vehicles leave it. */
import type { CorrectionModel } from '../removal/catalogue.ts';
import { ladder } from '../removal/combination.ts';
import { statedCombinationSd } from '../removal/removal-knowledge.ts';
import { learnRates } from './learn-rates.ts';
import type { RateEvidence, RatePriors } from './rate-evidence.ts';

export const ratePriors = (model: CorrectionModel): RatePriors => ({
  paintSd: model.removal.hardnessLogSd,
  paintShare: model.shopRates.paintShare,
  combinationSd: (combination) => statedCombinationSd(model, combination),
  combinationShare: model.shopRates.combinationShare,
  partsShare: model.shopRates.partsShare,
  stepSd: model.removal.stepLogSd,
});

/** Without evidence the model itself: what is built in stands to the last digit. */
export function modelWithRates(
  model: CorrectionModel,
  evidence: readonly RateEvidence[],
): CorrectionModel {
  if (evidence.length === 0) return { ...model, learned: null };
  const ids = ladder({ ...model, learned: null }).map(({ id }) => id);
  const learned = learnRates(evidence, ratePriors(model), ids);
  const owned = ids.flatMap((id) => {
    const known = learned.combinations.get(id);
    return known === undefined || known.observations === 0 ? [] : [known.own.sd];
  });
  const untold = Math.hypot(model.removal.combinationLogSd, Math.sqrt(learned.unobservedVariance));
  const usualSd = owned.length === 0 ? untold : Math.max(...owned);
  return { ...model, learned: { ...learned, usualSd } };
}
