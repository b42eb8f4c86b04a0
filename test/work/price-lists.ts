/** Price lists for tests: nothing is charged but what a test says. */
import { type Share, shareOfPercent } from '../../src/work/money.ts';
import type { PriceList } from '../../src/work/price-list.ts';
import type { TaxRule } from '../../src/work/tax.ts';

export const noTax: TaxRule = {
  name: 'tax',
  share: 0n,
  level: 'total',
  rounding: 'half-up',
  included: false,
};

export const bareList: PriceList = {
  currency: { code: 'GBP', digits: 2 },
  labour: { bySkill: new Map(), other: null },
  materials: [],
  markup: 0n,
  fixed: [],
  minimum: 0n,
  discount: null,
  tax: noTax,
  rounding: 'half-up',
  cashStep: null,
  deposit: 0n,
};

export const percent = (value: number): Share => shareOfPercent(value);

export const flat = (price: bigint): PriceList['labour'] => ({ bySkill: new Map(), other: price });

export const fixedItem = (name: string, price: bigint, taxShare: Share | null = null) => ({
  name,
  price,
  taxShare,
});
