/** What a shop charges. */
import type { Currency, Minor, RoundingMode, Share } from './money.ts';
import { type TaxRule, withoutTax } from './tax.ts';
import type { MaterialUnit, Skill } from './work-model.ts';

/** A pack as it is bought and sold on: the price is of the whole pack. */
export type MaterialPrice = {
  readonly id: string;
  /** What the pack holds, in `unit`. */
  readonly pack: bigint;
  readonly unit: MaterialUnit;
  readonly price: Minor;
  /** What is on the shelf, in `unit`; null where nobody counts. */
  readonly stock: number | null;
};

/** Charged once for every job. */
export type FixedItem = {
  readonly name: string;
  readonly price: Minor;
  /** Its own rate of tax, where it has one. */
  readonly taxShare: Share | null;
};

export type Discount =
  | { readonly kind: 'amount'; readonly amount: Minor }
  | { readonly kind: 'share'; readonly share: Share };

/** What a customer may hold the shop to: an estimate may change, a quotation is a fixed offer. */
export type QuoteKind = 'estimate' | 'quotation';

/** What an hour costs, by the skill it wants; null where the list does not say. */
export type LabourRates = {
  readonly bySkill: ReadonlyMap<Skill, Minor>;
  readonly other: Minor | null;
};

export const rateOf = ({ bySkill, other }: LabourRates, skill: Skill): Minor | null =>
  bySkill.get(skill) ?? other;

export type PriceList = {
  readonly currency: Currency;
  readonly labour: LabourRates;
  readonly materials: readonly MaterialPrice[];
  /** On top of what materials cost. */
  readonly markup: Share;
  readonly fixed: readonly FixedItem[];
  /** The least that a job is charged at, before any tax that comes on top. */
  readonly minimum: Minor;
  readonly discount: Discount | null;
  readonly tax: TaxRule;
  /** How the amount of a line is rounded. */
  readonly rounding: RoundingMode;
  /** The least coin, where what is to be paid is rounded to it. */
  readonly cashStep: bigint | null;
  readonly deposit: Share;
};

/**
 * What materials cost the shop: packs without the tax that their prices may hold, as a quote has its lines and sums.
 * Each pack is rounded by itself, so that so many of them cost so many times its price.
 */
export const packsWithoutTax = ({
  materials,
  tax,
}: Pick<PriceList, 'materials' | 'tax'>): readonly MaterialPrice[] =>
  materials.map((one) => ({ ...one, price: withoutTax(one.price, tax) }));
