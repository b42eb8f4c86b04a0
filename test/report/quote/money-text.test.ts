import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  amountText,
  moneyText,
  plainAmount,
  shareText,
} from '../../../src/report/quote/money-text.ts';

test('an amount has the digits of its currency, and commas between thousands', () => {
  const text = (amount: bigint, digits: number): string => amountText(amount, { digits });
  expect(text(123_456n, 2)).toBe('1,234.56');
  expect(text(5n, 2)).toBe('0.05');
  expect(text(-5n, 2)).toBe('−0.05');
  expect(text(0n, 0)).toBe('0');
  expect(text(1_000_000n, 0)).toBe('1,000,000');
  expect(text(10_417n, 3)).toBe('10.417');
  expect(text(-123_456_789n, 4)).toBe('−12,345.6789');
  expect(text(99_999n, 2)).toBe('999.99');
});

test('for programs an amount has every digit of its currency, and no commas', () => {
  expect(plainAmount(118_600n, { digits: 2 })).toBe('1186.00');
  expect(plainAmount(84_240n, { digits: 2 })).toBe('842.40');
  expect(plainAmount(-1_234_567n, { digits: 0 })).toBe('-1234567');
});

test('the currency follows by its code, the per cent by its sign', () => {
  expect(moneyText(140n, { code: 'EUR', digits: 2 })).toBe('1.40\u00a0EUR');
  expect(shareText(88_750n)).toBe('8.875\u00a0%');
});

test('no digit is lost or made up', () => {
  const amount = fc.bigInt(-(10n ** 20n), 10n ** 20n);
  fc.assert(
    fc.property(amount, fc.constantFrom(0, 2, 3, 4), (minor, digits) => {
      const written = amountText(minor, { digits });
      expect(BigInt(written.replaceAll(/[.,]/g, '').replace('−', '-'))).toBe(minor);
      expect(written).toMatch(/^−?\d{1,3}(,\d{3})*(\.\d+)?$/);
    }),
  );
});
