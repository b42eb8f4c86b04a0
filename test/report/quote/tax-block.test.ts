import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { taxBlocks } from '../../../src/report/quote/tax-block.ts';
import { type Currency, shareOfPercent } from '../../../src/work/money.ts';
import { priceJob } from '../../../src/work/price-job.ts';
import type { PriceList } from '../../../src/work/price-list.ts';
import type { TaxRule } from '../../../src/work/tax.ts';
import { bareList, fixedItem } from '../../work/price-lists.ts';

const vat: TaxRule = {
  name: 'VAT',
  share: shareOfPercent(20),
  level: 'total',
  rounding: 'down',
  included: false,
};

/** A job of so many fixed amounts, and what is said of its tax. */
function toldOf(amounts: readonly bigint[], tax: TaxRule, currency: Currency = bareList.currency) {
  const list: PriceList = {
    ...bareList,
    currency,
    tax,
    fixed: amounts.map((price, i) => fixedItem(`item ${i}`, price)),
  };
  const priced = priceJob({ labour: [], materials: [] }, list);
  const [block] = taxBlocks([{ title: 'B correct', priced }], list);
  const text =
    block?.kind === 'paragraph'
      ? `${block.label}: ${String(block.text)}`.replaceAll('\u00a0', ' ')
      : '';
  return { priced, text };
}

describe('the tax of a quote', () => {
  test('is nothing to explain where it is its rate of the subtotal, rounded as anybody does', () => {
    expect(toldOf([108325n], vat).text).toBe('');
    expect(toldOf([], vat).text).toBe('');
  });

  test('that is rounded down says so, with the amount that was rounded', () => {
    expect(toldOf([108328n], vat).text).toBe(
      'VAT 20 %: rounded down to full 0.01 GBP: B correct 216.65, exactly 216.656',
    );
  });

  test('that is reckoned line by line says so', () => {
    const byLine: TaxRule = { ...vat, level: 'line', rounding: 'half-up' };
    // 0.466 + 0.466 → .47 twice; of both together it is 0.932.
    expect(toldOf([233n, 233n], byLine).text).toBe(
      'VAT 20 %: reckoned line by line, rounded to the nearest 0.01 GBP: B correct 0.94, exactly 0.932',
    );
  });

  test('that is in the prices says so', () => {
    expect(toldOf([1007n], { ...vat, included: true }).text).toBe(
      'VAT 20 %: taken out of prices that hold it, rounded down to full 0.01 GBP: B correct 1.67, exactly 1.68',
    );
  });

  test('of a currency without small coins is told in its whole units', () => {
    const yen = { code: 'JPY', digits: 0 };
    expect(toldOf([1008n], { ...vat, share: shareOfPercent(10) }, yen).text).toBe(
      'VAT 10 %: rounded down to full 1 JPY: B correct 100, exactly 100.8',
    );
  });

  test('is explained whenever, and only when, it cannot be reckoned from what stands there', () => {
    const rules = fc.record({
      level: fc.constantFrom('line', 'rate', 'total' as const),
      rounding: fc.constantFrom('half-up', 'half-even', 'down', 'up' as const),
      included: fc.boolean(),
      percent: fc.constantFrom(5, 7, 19, 20, 17.5),
      amounts: fc.array(fc.bigInt(1n, 200_000n), { minLength: 1, maxLength: 6 }),
    });
    fc.assert(
      fc.property(rules, ({ percent, amounts, ...rule }) => {
        const { priced, text } = toldOf(amounts, {
          name: 'VAT',
          share: shareOfPercent(percent),
          ...rule,
        });
        const near = Math.round((Number(priced.subtotal) * percent) / 100 + 1e-7);
        expect(text === '').toBe(Number(priced.tax) === near);
      }),
    );
  });
});

test('a tax of several rates is told rate by rate, each with what it is of', () => {
  const list: PriceList = {
    ...bareList,
    tax: vat,
    fixed: [
      fixedItem('a', 10000n),
      { ...fixedItem('b', 1800n), taxShare: shareOfPercent(7) },
      { ...fixedItem('c', 200n), taxShare: shareOfPercent(7) },
    ],
  };
  const priced = priceJob({ labour: [], materials: [] }, list);
  const told = (titles: readonly string[]) =>
    taxBlocks(
      titles.map((title) => ({ title, priced })),
      list,
    ).map((block) =>
      block.kind === 'paragraph'
        ? `${block.label}: ${String(block.text)}`.replaceAll('\u00a0', ' ')
        : '',
    );
  expect(told(['A', 'B'])).toEqual(['VAT 20 %: 20.00 on 100.00', 'VAT 7 %: 1.40 on 20.00']);
});

test('of several rates, one that cannot be reckoned from what stands beside it is explained once', () => {
  const included: TaxRule = {
    name: 'VAT',
    share: shareOfPercent(8.1),
    level: 'rate',
    rounding: 'half-up',
    included: true,
  };
  // 1,101.09 holds 82.5055 of tax; 8.1 % of the 1,018.58 without it are 82.50498.
  const fixed = [
    fixedItem('a', 110109n),
    { ...fixedItem('b', 3700n), taxShare: shareOfPercent(2.6) },
  ];
  const list: PriceList = { ...bareList, tax: included, fixed };
  const priced = priceJob({ labour: [], materials: [] }, list);
  const told = taxBlocks([{ title: 'A enhance', priced }], list).map((block) =>
    block.kind === 'paragraph'
      ? `${block.label}: ${String(block.text)}`.replaceAll('\u00a0', ' ')
      : '',
  );
  expect(told).toEqual([
    'VAT 8.1 %: 82.51 on 1,018.58',
    'VAT 2.6 %: 0.94 on 36.06',
    'VAT: taken out of prices that hold it, rounded to the nearest 0.01 GBP: A enhance 82.51, exactly 82.50498',
  ]);
});
