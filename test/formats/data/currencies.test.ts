import { expect, test } from 'vitest';
import { currencies, currencyWords } from '../../../src/formats/data/currencies.ts';

const digitsOf = (code: string): number | undefined => currencies.get(code)?.digits;
const platformDigits = (code: string): number | undefined =>
  new Intl.NumberFormat('en', { style: 'currency', currency: code }).resolvedOptions()
    .maximumFractionDigits;

test('digits are those of ISO 4217, also where people write none', () => {
  expect(['HUF', 'IDR', 'MGA', 'PKR', 'IRR'].map(digitsOf)).toEqual([2, 2, 2, 2, 2]);
  expect(['JPY', 'KRW', 'CLP', 'VND', 'ISK', 'XOF'].map(digitsOf)).toEqual([0, 0, 0, 0, 0, 0]);
  expect(['KWD', 'BHD', 'TND', 'IQD'].map(digitsOf)).toEqual([3, 3, 3, 3]);
  expect(['CLF', 'UYW'].map(digitsOf)).toEqual([4, 4]);
});

/** CLDR, by which the platform goes, counts the digits that people use, and knows no units of account. */
test('a second table agrees on every currency but those known to differ', () => {
  const unknownToIt = new Set('BOV CHE CHW CLF COU MXV USN UYI UYW VED'.split(' '));
  const usedWithout = new Set(
    'AFN ALL COP HUF IDR IQD IRR KPW LAK LBP MGA MMK PKR SOS SYP YER'.split(' '),
  );
  const differing = [...currencies.keys()].filter(
    (code) =>
      !unknownToIt.has(code) && !usedWithout.has(code) && platformDigits(code) !== digitsOf(code),
  );
  expect(differing).toEqual([]);
  expect(currencies.size).toBe(163);
});

test('a word for a currency leads to one of the table', () => {
  for (const code of currencyWords.values()) expect(currencies.has(code), code).toBe(true);
});
