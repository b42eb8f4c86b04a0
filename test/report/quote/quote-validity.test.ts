import { expect, test } from 'vitest';
import type { Prices } from '../../../src/formats/shop/shop-prices.ts';
import { validityText, validUntil } from '../../../src/report/quote/quote-validity.ts';

const holding = (validityDays: number | null): Prices => ({ validityDays }) as Prices;

test('a day is printed only where one was asked for, and its end only where days are said', () => {
  expect(validityText(holding(30), '2026-11-25')).toBe('Of 2026-11-25; holds until 2026-12-25.');
  expect(validityText(holding(1), null)).toBe('Holds for 1 day.');
  expect(validityText(holding(null), '2026-11-25')).toBe('Of 2026-11-25.');
  expect(validityText(null, '2026-11-25')).toBe('Of 2026-11-25.');
  expect(validityText(holding(null), null)).toBeNull();
});

test('the last day it holds is null where nobody said how long, or from when', () => {
  expect(validUntil(holding(10), '2026-12-28')).toBe('2027-01-07');
  expect(validUntil(holding(10), null)).toBeNull();
  expect(validUntil(holding(null), '2026-12-28')).toBeNull();
  expect(validUntil(holding(3650), '9999-01-01')).toBeNull();
});

test('a quote that holds on its day alone is not said to hold for 0 days', () => {
  expect(validityText(holding(0), null)).toBe('Holds on its day alone.');
  expect(validityText(holding(0), '2026-11-25')).toBe('Of 2026-11-25; holds on that day alone.');
  expect(validUntil(holding(0), '2026-11-25')).toBe('2026-11-25');
});
