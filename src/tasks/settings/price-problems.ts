/** What is wrong with the prices of a shop once they are used: too large to be exact, or in the wrong unit. */
import { type Diagnostic, error, warning } from '../../base/diagnostics.ts';
import { isWithinNumbers } from '../../work/price-job.ts';
import type { PriceList } from '../../work/price-list.ts';
import type { QuoteOption } from '../../work/quote-option.ts';
import type { PriceSettings } from './price-settings.ts';

export function priceProblems(
  options: readonly QuoteOption[],
  { prices, at }: PriceSettings,
): readonly Diagnostic[] {
  const list = prices.value?.list;
  if (list === undefined) return [];
  const tooLarge = options.some(({ priced }) => priced !== null && !isWithinNumbers(priced));
  return [
    ...(tooLarge
      ? [
          error('price-too-large', 'a price comes to more than can be written down exactly', {
            at,
            hint: `prices are in the least unit of ${list.currency.code}: look for noughts too many`,
          }),
        ]
      : []),
    ...smallRate(list, at),
  ];
}

/** An hour for less than one pound, euro or dollar is likely one in pounds where pence are asked for. */
function smallRate({ labour, currency }: PriceList, at: Diagnostic['at']): readonly Diagnostic[] {
  const one = 10n ** BigInt(currency.digits);
  const rates = [...labour.bySkill.values(), ...(labour.other === null ? [] : [labour.other])];
  const small = rates.find((rate) => rate > 0n && rate < one);
  if (small === undefined) return [];
  return [
    warning('price-small', `an hour of labour costs less than one ${currency.code}`, {
      at,
      hint: `labour_minor_per_h is in the least unit: ${small * one} if ${small} whole ${currency.code} are meant`,
    }),
  ];
}
