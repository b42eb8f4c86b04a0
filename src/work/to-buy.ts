/** What a job needs and uses up, against what is on the shelf: packs to buy. */
import { valueAt } from '../base/at.ts';
import type { WorkEstimate } from './estimate-work.ts';
import { type Material, TOWELS, totals } from './materials.ts';
import { packs } from './packs.ts';
import type { MaterialPrice } from './price-list.ts';

export type NeededMaterial = Material & {
  /** What is gone of it after the job, in shares of a piece too: of pads what is worn of them. */
  readonly usedUp: number;
  /** Whether what lies ready serves the next job as well: pads until worn out, towels once washed. */
  readonly lasts: boolean;
  /** What the price list says of it; null where it is not on the list. */
  readonly listed: MaterialPrice | null;
  /** Whole packs that stock does not cover; null where nobody says what is in stock. */
  readonly toBuy: number | null;
};

export function neededMaterials(
  { jobMaterials, stages, pads }: WorkEstimate,
  prices: readonly MaterialPrice[],
): readonly NeededMaterial[] {
  const inShares = new Map(
    totals(
      stages.flatMap(({ materials }) => materials),
      false,
    ).map((one) => [one.id, one.quantity]),
  );
  return jobMaterials.map((material) => {
    const { id, quantity } = material;
    const pad = pads.find((one) => one.id === id);
    const listed = prices.find((one) => one.id === id) ?? null;
    const toBuy =
      listed === null || listed.stock === null
        ? null
        : packs(quantity, Number(listed.pack), listed.stock);
    return {
      id,
      material: material.material,
      quantity,
      unit: material.unit,
      usedUp: id === TOWELS ? 0 : (pad?.wornOut ?? valueAt(inShares, id)),
      lasts: pad !== undefined || id === TOWELS,
      listed,
      toBuy,
    };
  });
}
