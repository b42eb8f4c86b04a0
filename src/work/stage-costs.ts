/**
 * What the materials of each stage cost the shop: what is used up of them at the price of a pack that
 * it is given, before any markup. What is on no list has no price and is left out; pads cost what is worn of them, which the
 * stages share as they share the pads.
 */
import type { WorkEstimate } from './estimate-work.ts';
import { divided, type Minor, total } from './money.ts';
import type { MaterialPrice } from './price-list.ts';
import { neededMaterials } from './to-buy.ts';

export type StageCost = { readonly stage: string; readonly materials: Minor };

/** Parts of a minor unit that are kept until a stage is summed up. */
const FINE = 1_000_000;

/** Stages that use something of the list, in their order, each to the nearest minor unit. */
export function stageCosts(
  work: WorkEstimate,
  prices: readonly MaterialPrice[],
): readonly StageCost[] {
  const needed = new Map(neededMaterials(work, prices).map((one) => [one.id, one]));
  return work.stages.flatMap(({ stage, materials }): readonly StageCost[] => {
    const costs = materials.flatMap(({ id, quantity }) => {
      const whole = needed.get(id);
      if (whole === undefined || whole.listed === null) return [];
      const used = whole.lasts ? (whole.usedUp * quantity) / whole.quantity : quantity;
      const { price, pack } = whole.listed;
      return [divided(BigInt(Math.round(FINE * used)) * price, pack, 'half-up')];
    });
    return costs.length === 0
      ? []
      : [{ stage: stage.id, materials: divided(total(costs), BigInt(FINE), 'half-up') }];
  });
}
