/**
 * What is done and used, at the prices of a list → the lines of a quote, its subtotal, tax and total.
 *
 * In this order: labour, materials with their markup, fixed items; the discount on their sum; whatever
 * is wanting to the minimum charge; tax. A quantity is rounded before it is priced, so that each line can
 * be reckoned again from what is shown.
 */
import { groupBy } from '../base/group-by.ts';
import { apportioned } from './apportion.ts';
import { divided, isExactNumber, type Minor, type Share, toCash, total, WHOLE } from './money.ts';
import { type MaterialPrice, type PriceList, rateOf } from './price-list.ts';
import { type Taxable, type TaxRule, withTax } from './tax.ts';
import type { MaterialUnit, Skill } from './work-model.ts';

/** A quantity in thousandths of its unit: exact, and as it is shown. */
export type Thousandths = bigint;
const ONE: Thousandths = 1000n;

export type Labour = { readonly skill: Skill; readonly minutes: bigint };
export type UsedMaterial = {
  readonly id: string;
  readonly name: string;
  readonly quantity: Thousandths;
  readonly unit: MaterialUnit;
};

/** What a job is priced from. */
export type Chargeable = {
  readonly labour: readonly Labour[];
  readonly materials: readonly UsedMaterial[];
};

export type LineKind = 'labour' | 'material' | 'fixed' | 'discount' | 'minimum';

/** A quantity and the price it goes by: so much for `per` of the unit. */
export type UnitPrice = {
  readonly quantity: Thousandths;
  readonly unit: 'min' | MaterialUnit;
  /** As the list has it: with its tax, where its prices hold it. */
  readonly price: Minor;
  readonly per: bigint;
  readonly markup: Share;
};

export type QuoteLine = {
  readonly kind: LineKind;
  /** The skill, the material's id, or the name of a fixed item; empty for what is about the whole. */
  readonly id: string;
  readonly name: string;
  /** Null where an amount is all there is. */
  readonly unitPrice: UnitPrice | null;
  readonly taxShare: Share;
  /** Without tax; the discount is under 0. */
  readonly amount: Minor;
  /** That of its amount; of a discount, under 0: what the taxes of the lines come to less for it. */
  readonly tax: Minor;
};

export type PricedJob = {
  readonly lines: readonly QuoteLine[];
  readonly subtotal: Minor;
  readonly tax: Minor;
  readonly total: Minor;
  /** The total as coins can pay it; the total itself where nothing is rounded to coins. */
  readonly payable: Minor;
  /** The part of it that is to be paid beforehand, as coins can pay it; null where none is asked for. */
  readonly deposit: Minor | null;
};

type Line = Omit<QuoteLine, 'tax'>;

/** Minutes that the price of an hour is for. */
const HOUR = 60n;

export function priceJob(job: Chargeable, list: PriceList): PricedJob {
  const listed = [...labourLines(job, list), ...materialLines(job, list), ...fixedLines(list)];
  const discounts = discountLines(listed, list);
  const lines = [...listed, ...discounts, ...minimumLine([...listed, ...discounts], list)];
  const taxed =
    list.tax.level === 'line'
      ? taxedByLine(lines, list.tax)
      : withTax(lines.map(asItStands), list.tax);
  const shown = taxed.map(({ line, tax }): QuoteLine => {
    return { ...line, tax, amount: list.tax.included ? line.amount - tax : line.amount };
  });
  const subtotal = total(shown.map(({ amount }) => amount));
  const tax = total(shown.map((line) => line.tax));
  const paid = (amount: Minor): Minor =>
    list.cashStep === null ? amount : toCash(amount, list.cashStep);
  const payable = paid(subtotal + tax);
  return {
    lines: shown,
    subtotal,
    tax,
    total: subtotal + tax,
    payable,
    deposit: depositOf(payable, subtotal + tax, list),
  };
}

/** To the nearest coin, and never over the total: coins may round what is to be paid to more than that. */
function depositOf(
  payable: Minor,
  total: Minor,
  { deposit, rounding, cashStep }: PriceList,
): Minor | null {
  if (deposit === 0n) return null;
  const exact = divided(payable * deposit, WHOLE, rounding);
  const asked = exact > total ? total : exact;
  if (cashStep === null) return asked;
  const inCoins = toCash(asked, cashStep);
  return inCoins > total ? inCoins - cashStep : inCoins;
}

/** False where an amount is beyond what JSON and spreadsheets hold exactly. */
export const isWithinNumbers = ({ lines, subtotal, total, payable }: PricedJob): boolean =>
  [subtotal, total, payable, ...lines.map(({ amount }) => amount)].every(isExactNumber);

/** A line for each skill; what the list has no rate for is not charged. */
function labourLines({ labour }: Chargeable, list: PriceList): readonly Line[] {
  const bySkill = groupBy(labour, ({ skill }) => skill);
  return [...bySkill].flatMap(([skill, parts]): readonly Line[] => {
    const price = rateOf(list.labour, skill);
    const minutes = total(parts.map((one) => one.minutes));
    if (price === null || minutes === 0n) return [];
    return [
      {
        kind: 'labour',
        id: skill,
        name: skill,
        unitPrice: { quantity: minutes * ONE, unit: 'min', price, per: HOUR, markup: 0n },
        taxShare: list.tax.share,
        amount: divided(minutes * price, HOUR, list.rounding),
      },
    ];
  });
}

/** What the list has no price for is not charged. */
const materialLines = ({ materials }: Chargeable, list: PriceList): readonly Line[] =>
  list.materials.flatMap((entry) => {
    const uses = materials.filter(({ id }) => id === entry.id);
    const quantity = total(uses.map((one) => one.quantity));
    return uses.slice(0, 1).map((use) => materialLine(use, quantity, entry, list));
  });

function materialLine(
  { id, name, unit }: UsedMaterial,
  quantity: Thousandths,
  { price, pack }: MaterialPrice,
  { markup, rounding, tax }: PriceList,
): Line {
  return {
    kind: 'material',
    id,
    name,
    unitPrice: { quantity, unit, price, per: pack, markup },
    taxShare: tax.share,
    amount: divided(quantity * price * (WHOLE + markup), pack * ONE * WHOLE, rounding),
  };
}

const fixedLines = ({ fixed, tax }: PriceList): readonly Line[] =>
  fixed.map(({ name, price, taxShare }) => ({
    kind: 'fixed',
    id: name,
    name,
    unitPrice: null,
    taxShare: taxShare ?? tax.share,
    amount: price,
  }));

/** A line for each rate of tax, so that each rate is taxed on what is left of it. */
function discountLines(
  lines: readonly Line[],
  { discount, rounding }: Pick<PriceList, 'discount' | 'rounding'>,
): readonly Line[] {
  const before = total(lines.map(({ amount }) => amount));
  if (discount === null || before === 0n) return [];
  const asked =
    discount.kind === 'amount'
      ? discount.amount
      : divided(before * discount.share, WHOLE, rounding);
  const isAll = asked >= before;
  const off = isAll ? before : asked;
  // By rate, so that what is left over does not go by the order of the lines.
  const rates = [...groupBy(lines, ({ taxShare }) => taxShare)].sort(([a], [b]) => Number(b - a));
  return apportioned(off, rates, ([, group]) => total(group.map(({ amount }) => amount))).flatMap(
    ({ of: [taxShare], amount }) => (amount === 0n ? [] : [whole('discount', -amount, taxShare)]),
  );
}

type TaxedLine = Taxable & { readonly line: Line };

const asItStands = (line: Line): TaxedLine => ({
  line,
  taxable: line.amount,
  taxShare: line.taxShare,
});

type LineWithTax = { readonly line: Line; readonly tax: Minor };

/**
 * For a tax that is rounded line by line. A discount on the whole has, as in EN 16931, an amount, a rate and
 * a tax of its own for each rate. Rounded by itself that tax might come to more than the tax of what it takes
 * off; so it is the difference that the discount makes to the rounded taxes of the lines of its rate.
 */
function taxedByLine(lines: readonly Line[], rule: TaxRule): readonly LineWithTax[] {
  const full = withTax(lines.map(asItStands), rule);
  const left = withTax(afterDiscount(lines), rule);
  return full.map(({ line, tax }) => {
    if (line.kind !== 'discount') return { line, tax };
    const taxOf = (all: readonly (TaxedLine & { readonly tax: Minor })[]): Minor =>
      total(all.filter((one) => isDiscountedBy(one.line, line)).map((one) => one.tax));
    return { line, tax: taxOf(left) - taxOf(full) };
  });
}

const isDiscountedBy = ({ kind, taxShare }: Line, discount: Line): boolean =>
  kind !== 'discount' && kind !== 'minimum' && taxShare === discount.taxShare;

/** What the discount leaves of each line. */
function afterDiscount(lines: readonly Line[]): readonly TaxedLine[] {
  const listed = lines.filter(({ kind }) => kind !== 'discount' && kind !== 'minimum');
  const discounts = lines.filter(({ kind }) => kind === 'discount');
  const shares = discounts.flatMap(({ taxShare, amount }) => {
    const ofRate = listed.filter((line) => line.taxShare === taxShare);
    return apportioned(amount, ofRate, (line) => line.amount);
  });
  const off = new Map(shares.map(({ of, amount }) => [of, amount]));
  return lines.map((line) => ({
    ...asItStands(line),
    taxable: line.amount + (off.get(line) ?? 0n),
  }));
}

function minimumLine(lines: readonly Line[], { minimum, tax }: PriceList): readonly Line[] {
  const wanting = minimum - total(lines.map(({ amount }) => amount));
  return wanting > 0n ? [whole('minimum', wanting, tax.share)] : [];
}

const whole = (kind: 'discount' | 'minimum', amount: Minor, taxShare: Share): Line => ({
  kind,
  id: '',
  name: kind === 'discount' ? 'discount' : 'up to the minimum charge',
  unitPrice: null,
  taxShare,
  amount,
});
