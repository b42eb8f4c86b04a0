/** The day a quote is of and how long it holds: only what was asked for or is in the price list. */
import { daysLater } from '../../base/calendar.ts';
import { counted } from '../../base/counted.ts';
import type { Prices } from '../../formats/shop/shop-prices.ts';

/** Null where there is nothing to say. */
export function validityText(prices: Prices | null, date: string | null): string | null {
  const days = prices?.validityDays ?? null;
  const holds = days === null ? null : `Holds for ${counted(days, 'day')}`;
  if (date === null) return holds === null ? null : `${holds}.`;
  const until = validUntil(prices, date);
  return until === null ? `Of ${date}.` : `Of ${date}; holds until ${until}.`;
}

/** The last day on which it holds. */
export const validUntil = (prices: Prices | null, date: string | null): string | null => {
  const days = prices?.validityDays ?? null;
  return days === null || date === null ? null : (daysLater(date, days) ?? null);
};
