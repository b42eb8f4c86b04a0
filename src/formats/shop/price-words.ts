/** What price lists are filled in with in other words and other units, and what to write instead. */
import { suggest } from '../../base/did-you-mean.ts';
import { roundTo, shown } from '../../base/rounding.ts';
import { currencies, currencyWords } from '../data/currencies.ts';
import { type Advice, wordAdvice } from '../json/advised.ts';

/** `45.50`, `"£45"`: pounds and pence where pence are asked for. */
const IN_MAJOR = /^\s*\D{0,4}\s*(\d+)(?:[.,](\d{1,2}))?\s*\D{0,4}\s*$/;

export const minorAdvice: Advice = (value) => {
  if (typeof value === 'number') {
    return value > 0 && !Number.isInteger(value) ? inMinor(value) : undefined;
  }
  const [, whole = '', part = ''] = typeof value === 'string' ? (IN_MAJOR.exec(value) ?? []) : [];
  return whole === '' ? undefined : inMinor(Number(`${whole}.${part === '' ? '0' : part}`));
};

const inMinor = (amount: number): string =>
  `it is in the least unit, such as pence or cents: ${roundTo(100 * amount, 0)} for ${shown(amount, 2)}`;

/** `£`, `euro`, `gbp`: the code. A `$` or `kr` may be several currencies. */
export const currencyAdvice: Advice = (value) => {
  if (typeof value !== 'string') return undefined;
  const word = value.trim();
  const code = currencyWords.get(word.toLowerCase()) ?? word.toUpperCase();
  if (currencies.has(code)) return `write "${code}"`;
  return (
    suggest(code, [...currencies.keys()]) ??
    'three letters, as on a bank statement: "EUR", "GBP", "USD"'
  );
};

const modeWords: ReadonlyMap<string, string> = new Map([
  ...['nearest', 'round', 'commercial', 'usual', 'half up', 'half-away'].map(
    (word) => [word, 'half-up'] as const,
  ),
  ...['bankers', "banker's", 'banker', 'even', 'half even', 'gaussian'].map(
    (word) => [word, 'half-even'] as const,
  ),
  ...['floor', 'truncate', 'trunc', 'cut'].map((word) => [word, 'down'] as const),
  ...['ceil', 'ceiling'].map((word) => [word, 'up'] as const),
]);

export const modeAdvice = wordAdvice(modeWords);

const levelWords: ReadonlyMap<string, string> = new Map([
  ...['category', 'group', 'per-rate', 'vat rate'].map((word) => [word, 'rate'] as const),
  ...['item', 'lines', 'per line', 'per-line', 'position'].map((word) => [word, 'line'] as const),
  ...['invoice', 'document', 'sum', 'all', 'whole'].map((word) => [word, 'total'] as const),
]);

export const taxLevelAdvice = wordAdvice(levelWords);

const keyWords: ReadonlyMap<string, string> = new Map([
  ['vat', 'tax: "tax": { "preset": "uk-vat" }'],
  ['vat_pct', 'rate_pct inside "tax"'],
  ['tax_pct', 'rate_pct inside "tax"'],
  ['gst', 'tax: "tax": { "preset": "au-gst" }'],
  ['labour', 'labour_minor_per_h, in the least unit of the currency'],
  ['labor', 'labour_minor_per_h, in the least unit of the currency'],
  ['hourly_rate', 'labour_minor_per_h, in the least unit of the currency'],
  ['minimum', 'minimum_minor, in the least unit of the currency'],
  ['discount', 'discount_pct, or discount_minor for an amount'],
  ['deposit', 'deposit_pct'],
  ['markup', 'markup_pct'],
  ['valid_days', 'validity_days'],
]);

/** What was meant by a word of the trade that is no key of a price list. */
export function priceKeyAdvice(key: string): string | undefined {
  const meant = keyWords.get(key.toLowerCase());
  return meant === undefined ? undefined : `write ${meant}`;
}
