/**
 * Tax on the lines of a document. What is rounded, and when, is a rule of the country: each line by
 * itself, the lines of one rate together, or everything at once. Whichever it is, the tax of the lines
 * adds up to the tax that is shown.
 */
import { groupBy } from '../base/group-by.ts';
import { type Fraction, roundedTogether, sumRounded } from './apportion.ts';
import { divided, type Minor, type RoundingMode, type Share, WHOLE } from './money.ts';

/** What is rounded to a whole minor unit: each line, the lines of a rate, or the whole tax. */
export const taxLevels = ['line', 'rate', 'total'] as const;
export type TaxLevel = (typeof taxLevels)[number];

export type TaxRule = {
  /** As the document calls it: VAT, GST. */
  readonly name: string;
  /** Of what has no rate of its own. */
  readonly share: Share;
  readonly level: TaxLevel;
  readonly rounding: RoundingMode;
  /** Whether the prices of the list have the tax in them. */
  readonly included: boolean;
};

/** What is taxed of a line, as the price list has it, with or without its tax; and at which rate. */
export type Taxable = { readonly taxable: Minor; readonly taxShare: Share };

/** Before rounding: a·r, or, where the tax is in the amount, a·r/(1 + r). */
const exactTax = ({ taxable, taxShare }: Taxable, { included }: TaxRule): Fraction => ({
  dividend: taxable * taxShare,
  divisor: included ? WHOLE + taxShare : WHOLE,
});

/** A price of the list as it is without its tax, to the nearest minor unit. */
export const withoutTax = (price: Minor, { included, share }: TaxRule): Minor =>
  included ? divided(price * WHOLE, WHOLE + share, 'half-up') : price;

/** Each line with its tax in whole minor units, in their order. */
export function withTax<Line extends Taxable>(
  lines: readonly Line[],
  rule: TaxRule,
): readonly (Line & { readonly tax: Minor })[] {
  const numbered = lines.map((line, place) => ({
    of: { line, place },
    ...exactTax(line, rule),
  }));
  const groups = groupBy(numbered, ({ of }) => groupOf(of.line, of.place, rule.level));
  return [...groups.values()]
    .flatMap((members) => roundedTogether(members, sumRounded(members, rule.rounding)))
    .sort((a, b) => a.of.place - b.of.place)
    .map(({ of, amount }) => ({ ...of.line, tax: amount }));
}

/** Lines of one group are rounded together. */
function groupOf({ taxShare }: Taxable, place: number, level: TaxLevel): string {
  switch (level) {
    case 'line':
      return `line ${place}`;
    case 'rate':
      return `rate ${taxShare}`;
    case 'total':
      return 'total';
  }
}
