import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { percentOfShare, shareOfPercent } from '../../src/work/money.ts';
import { packsWithoutTax } from '../../src/work/price-list.ts';
import { noTax } from './price-lists.ts';

const pack = (price: bigint) => ({ id: 'wax', pack: 1n, unit: 'ml' as const, price, stock: null });
const vat = { ...noTax, share: shareOfPercent(19) };
const priceOf = (price: bigint, tax: typeof vat) =>
  packsWithoutTax({ materials: [pack(price)], tax })[0]?.price;

describe('the price of a pack without tax', () => {
  test('is taken out of a price that holds it, by hand', () => {
    // 4.23 / 1.19 = 3.5546…, 37.57 / 1.19 = 31.5714…, 29.99 / 1.19 = 25.2016…, 7.77 / 1.19 = 6.5294….
    const included = { ...vat, included: true };
    expect([423n, 3757n, 2999n, 777n].map((price) => priceOf(price, included))).toEqual([
      ...[355n, 3157n, 2520n, 653n],
    ]);
  });

  test('is the price of the list where tax comes on top', () => {
    expect(priceOf(3757n, vat)).toBe(3757n);
  });

  test('with its tax is the price of the list again, to half a unit of it', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: 0n, max: 1_000_000_000_000n }),
        fc.integer({ min: 0, max: 100_0000 }),
        (price, tenThousandths) => {
          const share = BigInt(tenThousandths);
          const net = priceOf(price, { ...vat, share, included: true }) ?? -1n;
          const gross = Number(net) * (1 + percentOfShare(share) / 100);
          expect(Math.abs(gross - Number(price))).toBeLessThanOrEqual(1.001);
          expect(net).toBeLessThanOrEqual(price);
        },
      ),
    );
  });
});
