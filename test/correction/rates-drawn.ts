/** A shop whose true rates are known, and the vehicles it worked on: for checks of what is learnt. */
import type { RateEvidence, RatePriors } from '../../src/correction/rates/rate-evidence.ts';
import { normal } from '../samples/seeded-random.ts';

export const usualPriors: RatePriors = {
  paintSd: 0.35,
  paintShare: 0.25,
  combinationSd: () => 0.4,
  combinationShare: 0.75,
  partsShare: 0.75,
  stepSd: 0.15,
};

export const measured = (
  vehicle: string,
  combination: string,
  foretold: number,
  value: number,
  standardError: number,
): RateEvidence => ({
  vehicle,
  steps: [{ combination, foretold }],
  sets: 2,
  removed: { value, standardError },
});

type Plan = readonly (readonly [combination: string, foretold: number])[];

/** ln factors as the model draws them: the shop's once, a vehicle's and its combinations' each time. */
export function drawnShop(random: () => number, priors: RatePriors, ids: readonly string[]) {
  const { paintSd, paintShare, combinationSd, combinationShare, stepSd } = priors;
  const usualPaint = Math.sqrt(paintShare) * paintSd * normal(random);
  const rates = new Map(
    ids.map((id) => [
      id,
      usualPaint + Math.sqrt(combinationShare) * combinationSd(id) * normal(random),
    ]),
  );
  /** ln factors of the steps of a plan on a new vehicle. */
  const vehicle = (plan: Plan): readonly number[] => {
    const paint = Math.sqrt(1 - paintShare) * paintSd * normal(random);
    const own = new Map(
      ids.map((id) => [id, Math.sqrt(1 - combinationShare) * combinationSd(id) * normal(random)]),
    );
    return plan.map(
      ([id]) => (rates.get(id) ?? 0) + paint + (own.get(id) ?? 0) + stepSd * normal(random),
    );
  };
  return { usualPaint, rates, vehicle };
}
