/** Why the tax of a quote is not quite what its rate makes of the subtotal: whoever reckons it again must find why. */
import {
  type Currency,
  divided,
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

/** A tax of several rates rate by rate; of one, none where it is the rate of its subtotal, rounded as anybody does. */
export function taxBlocks(prices: readonly TitledPrice[], list: PriceList): readonly Block[] {
  const { tax, currency } = list;
  const lines = prices.flatMap(({ priced }) => priced?.lines ?? []);
  const rates = [...new Set(lines.map(({ taxShare }) => taxShare))];
  if (rates.length > 1) return rates.map((share) => rateBlock(share, prices, list));
  // One shows the rule.
  const [odd] = prices.flatMap(({ title, priced }) => {
    const text = priced === null ? null : oddTax(priced, currency);
    return text === null ? [] : [`${title} ${text}`];
  });
  const label = `${tax.name} ${shareText(tax.share)}`;
  return odd === undefined ? [] : [paragraph(label, `${ruleText(tax, currency)}: ${odd}`)];
}

/** `enhance 1.26 on 18.00, full 2.10 on 30.00`, or once where all are alike. */
function rateBlock(
  share: Share,
  prices: readonly TitledPrice[],
  { tax, currency }: PriceList,
): Block {
  const texts = prices.flatMap(({ title, priced }) => {
    if (priced === null) return [];
    const own = priced.lines.filter((line) => line.taxShare === share);
    const [due, base] = [total(own.map((line) => line.tax)), total(own.map((line) => line.amount))];
    return [{ title, text: `${amountText(due, currency)} on ${amountText(base, currency)}` }];
  });
  const alike = new Set(texts.map(({ text }) => text)).size === 1;
  const said = alike
    ? texts.slice(0, 1).map(({ text }) => text)
    : texts.map(({ title, text }) => `${title} ${text}`);
  return paragraph(`${tax.name} ${shareText(share)}`, said.join(', '));
}

/** Only where all is taxed alike: else each rate is told by itself. */
function oddTax({ lines, subtotal, tax }: PricedJob, currency: Currency): string | null {
  const [share, ...others] = new Set(lines.map(({ taxShare }) => taxShare));
  if (share === undefined || others.length > 0) return null;
  if (tax === divided(subtotal * share, WHOLE, 'half-up')) return null;
  const exact = exactText(subtotal * share, currency);
  return `${amountText(tax, currency)}, exactly ${exact}`;
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
