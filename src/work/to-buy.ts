/** What a job uses up, against what is on the shelf: packs to buy. */
import type { WorkEstimate } from './estimate-work.ts';
import type { Material } from './materials.ts';
import { packs } from './packs.ts';
import type { MaterialPrice } from './price-list.ts';

export type NeededMaterial = Material & {
  /** What the price list says of it; null where it is not on the list. */
  readonly listed: MaterialPrice | null;
  /** Whole packs that stock does not cover; null where nobody says what is in stock. */
  readonly toBuy: number | null;
};

export const neededMaterials = (
  { jobMaterials }: WorkEstimate,
  prices: readonly MaterialPrice[],
): readonly NeededMaterial[] =>
  jobMaterials.map((material) => {
    const listed = prices.find(({ id }) => id === material.id) ?? null;
    const toBuy =
      listed === null || listed.stock === null
        ? null
        : packs(material.quantity, Number(listed.pack), listed.stock);
    return { ...material, listed, toBuy };
  });
