/** What is wrong with the prices of a shop once they are used: too large to be exact, in the wrong unit, of too large a coin, never charged. */
import { type Diagnostic, error, note, warning } from '../../base/diagnostics.ts';
import { shareOfPercent, WHOLE } from '../../work/money.ts';
import { isWithinNumbers } from '../../work/price-job.ts';
import type { PriceList } from '../../work/price-list.ts';
import type { QuoteModel } from '../../work/quote-model.ts';
import type { QuoteOption } from '../../work/quote-option.ts';
import { smallPacks } from './pack-problems.ts';
import type { PriceSettings } from './price-settings.ts';

export function priceProblems(
  options: readonly QuoteOption[],
  { prices, at, packAt, unused }: PriceSettings,
  { cash, packs }: Pick<QuoteModel, 'cash' | 'packs'>,
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
    ...smallPacks(options, list, packs).map(({ index, message, hint }) =>
      warning('price-pack-small', message, { at: packAt(index), hint }),
    ),
    ...unused.map(({ id, at }) =>
      note(
        'price-material',
        `no job uses ${JSON.stringify(id)} of the price list: it is never charged`,
        {
          at,
          hint: 'what every job is to be charged stands under "fixed"',
        },
      ),
    ),
    ...largeCoin(options, list, cash.coarse).map((message) =>
      warning('price-coin-large', message, {
        at,
        hint: `cash_rounding_minor is in the least unit of ${list.currency.code}: 5 for the coin of five of them`,
      }),
    ),
  ];
}

/** A misspelt name in the price list that is in force: what it means is given away, so that no price is made. */
export const heldToPrices = (
  diagnostics: readonly Diagnostic[],
  { at }: Pick<PriceSettings, 'at'>,
): readonly Diagnostic[] =>
  diagnostics.map((one) =>
    one.code === 'price-material' && at !== undefined && one.at?.file === at.file
      ? { ...one, severity: 'error' }
      : one,
  );

/** Told by the price that it is largest against. */
function largeCoin(
  options: readonly QuoteOption[],
  { cashStep, currency }: PriceList,
  coarse: number,
): readonly string[] {
  const priced = options.flatMap((one) => one.priced ?? []).filter(({ total }) => total > 0n);
  const [least] = priced.sort((one, other) => Number(one.total - other.total));
  if (cashStep === null || least === undefined) return [];
  if (cashStep * WHOLE <= least.total * shareOfPercent(coarse)) return [];
  return [
    `cash_rounding_minor ${cashStep} is more than ${coarse} % of a price: ${least.total} becomes ${least.payable} to pay, in the least unit of ${currency.code}`,
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
