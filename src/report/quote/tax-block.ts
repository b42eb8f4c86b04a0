/** Why the tax of a quote is not quite what its rate makes of the subtotal: whoever reckons it again must find why. */
import {
  type Currency,
  divided,
  type Minor,
  type RoundingMode,
  type Share,
  total,
  WHOLE,
} from '../../work/money.ts';
import type { PricedJob } from '../../work/price-job.ts';
import type { PriceList } from '../../work/price-list.ts';
import type { TaxRule } from '../../work/tax.ts';
import { type Block, paragraph } from '../model.ts';
import { amountText, moneyText, shareText } from './money-text.ts';

/** A price under the name that its column has. */
type TitledPrice = { readonly title: string; readonly priced: PricedJob | null };

/** A tax of several rates rate by rate; and why, where one is not its rate of what it is of, rounded as anybody does. */
export function taxBlocks(prices: readonly TitledPrice[], list: PriceList): readonly Block[] {
  const { tax } = list;
  const lines = prices.flatMap(({ priced }) => priced?.lines ?? []);
  const rates = [...new Set(lines.map(({ taxShare }) => taxShare))];
  return rates.length > 1
    ? [
        ...rates.map((share) => rateBlock(share, prices, list)),
        ...oddBlocks(tax.name, rates, prices, list),
      ]
    : oddBlocks(`${tax.name} ${shareText(tax.share)}`, rates, prices, list);
}

/** One shows the rule. */
function oddBlocks(
  label: string,
  rates: readonly Share[],
  prices: readonly TitledPrice[],
  { tax, currency }: PriceList,
): readonly Block[] {
  const [odd] = prices.flatMap(({ title, priced }) =>
    rates.flatMap((share) => {
      const text = priced === null ? null : oddTax(taxedAt(share, priced), share, currency);
      return text === null ? [] : [`${title} ${text}`];
    }),
  );
  return odd === undefined ? [] : [paragraph(label, `${ruleText(tax, currency)}: ${odd}`)];
}

/** What the lines of a rate come to, and their tax. */
type Taxed = { readonly base: Minor; readonly due: Minor };

function taxedAt(share: Share, { lines }: PricedJob): Taxed {
  const own = lines.filter((line) => line.taxShare === share);
  return { base: total(own.map(({ amount }) => amount)), due: total(own.map(({ tax }) => tax)) };
}

/** `enhance 1.26 on 18.00, full 2.10 on 30.00`, or once where all are alike. */
function rateBlock(
  share: Share,
  prices: readonly TitledPrice[],
  { tax, currency }: PriceList,
): Block {
  const texts = prices.flatMap(({ title, priced }) => {
    if (priced === null) return [];
    const { base, due } = taxedAt(share, priced);
    return [{ title, text: `${amountText(due, currency)} on ${amountText(base, currency)}` }];
  });
  const alike = new Set(texts.map(({ text }) => text)).size === 1;
  const said = alike
    ? texts.slice(0, 1).map(({ text }) => text)
    : texts.map(({ title, text }) => `${title} ${text}`);
  return paragraph(`${tax.name} ${shareText(share)}`, said.join(', '));
}

function oddTax({ base, due }: Taxed, share: Share, currency: Currency): string | null {
  if (due === divided(base * share, WHOLE, 'half-up')) return null;
  return `${amountText(due, currency)}, exactly ${exactText(base * share, currency)}`;
}

function ruleText({ level, rounding, included }: TaxRule, currency: Currency): string {
  const parts = [
    ...(included ? ['taken out of prices that hold it'] : []),
    ...(level === 'line' ? ['reckoned line by line'] : []),
    `rounded ${ROUNDED[rounding]} ${moneyText(1n, currency)}`,
  ];
  return parts.join(', ');
}

const ROUNDED: Readonly<Record<RoundingMode, string>> = {
  'half-up': 'to the nearest',
  'half-even': 'to the nearest',
  down: 'down to full',
  up: 'up to full',
};

/** An amount in millionths of a minor unit, to its last figure. */
function exactText(millionths: bigint, currency: Currency): string {
  const whole = amountText(millionths / WHOLE, currency);
  const places = String(WHOLE).length - 1;
  const rest = String(millionths % WHOLE)
    .padStart(places, '0')
    .replace(/0+$/, '');
  const point = rest !== '' && currency.digits === 0 ? '.' : '';
  return `${whole}${point}${rest}`;
}
