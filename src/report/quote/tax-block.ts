/** Why the tax of a quote is not quite what its rate makes of the subtotal: whoever reckons it again must find why. */
import { type Currency, divided, type RoundingMode, WHOLE } from '../../work/money.ts';
import type { PricedJob } from '../../work/price-job.ts';
import type { PriceList } from '../../work/price-list.ts';
import type { TaxRule } from '../../work/tax.ts';
import { type Block, paragraph } from '../model.ts';
import { amountText, moneyText, shareText } from './money-text.ts';

/** A price under the name that its column has. */
type TitledPrice = { readonly title: string; readonly priced: PricedJob | null };

/** None where every tax is the rate of its subtotal, rounded as anybody does. */
export function taxBlocks(
  prices: readonly TitledPrice[],
  { tax, currency }: PriceList,
): readonly Block[] {
  // One shows the rule.
  const [odd] = prices.flatMap(({ title, priced }) => {
    const text = priced === null ? null : oddTax(priced, currency);
    return text === null ? [] : [`${title} ${text}`];
  });
  const label = `${tax.name} ${shareText(tax.share)}`;
  return odd === undefined ? [] : [paragraph(label, `${ruleText(tax, currency)}: ${odd}`)];
}

/** Only where all is taxed alike: else no rate stands beside the tax, and nobody reckons it again. */
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
