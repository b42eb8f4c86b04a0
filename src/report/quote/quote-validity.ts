/** The day a quote is of and how long it holds: only what was asked for or is in the price list. */
import { daysLater } from '../../base/calendar.ts';
import { counted } from '../../base/counted.ts';
import type { Prices } from '../../formats/shop/shop-prices.ts';

/** Null where there is nothing to say. */
export function validityText(prices: Prices | null, date: string | null): string | null {
  const holds = holdsText(prices, date);
  if (date !== null) return `Of ${[date, ...(holds === null ? [] : [holds])].join('; ')}.`;
  return holds === null ? null : `H${holds.slice(1)}.`;
}

/** `holds until 2026-12-27`; null where nobody says how long. */
export function holdsText(prices: Prices | null, date: string | null): string | null {
  const days = prices?.validityDays ?? null;
  if (date === null) return days === null ? null : holdsFor(days);
  const until = validUntil(prices, date);
  if (until === null) return null;
  return until === date ? 'holds on that day alone' : `holds until ${until}`;
}

const holdsFor = (days: number): string =>
  days === 0 ? 'holds on its day alone' : `holds for ${counted(days, 'day')}`;

/** The last day on which it holds. */
export const validUntil = (prices: Prices | null, date: string | null): string | null => {
  const days = prices?.validityDays ?? null;
  return days === null || date === null ? null : (daysLater(date, days) ?? null);
};
