/** Quotes reckoned by hand, every intermediate in the comment beside it. */

import { describe, expect, test } from 'vitest';
import type { RoundingMode } from '../../src/work/money.ts';
import { isWithinNumbers, type PricedJob, priceJob } from '../../src/work/price-job.ts';
import type { PriceList } from '../../src/work/price-list.ts';
import type { TaxRule } from '../../src/work/tax.ts';
import { bareList, fixedItem, flat, noTax, percent } from './price-lists.ts';

const nothing = { labour: [], materials: [] };
const amounts = ({ lines }: PricedJob): readonly bigint[] => lines.map(({ amount }) => amount);
const taxes = ({ lines }: PricedJob): readonly bigint[] => lines.map(({ tax }) => tax);

const ukVat: TaxRule = { ...noTax, name: 'VAT', share: percent(20), rounding: 'down' };

test('pounds with VAT of 20 % on the total, rounded down: labour, material, item, discount, deposit', () => {
  const list: PriceList = {
    ...bareList,
    labour: { bySkill: new Map([['polish', 4800n]]), other: 3600n },
    materials: [{ id: 'medium', pack: 500n, unit: 'ml', price: 2400n, stock: null }],
    markup: percent(20),
    fixed: [fixedItem('collection', 1504n)],
    discount: { kind: 'share', share: percent(10) },
    tax: ukVat,
    deposit: percent(25),
  };
  const priced = priceJob(
    {
      labour: [
        { skill: 'wash', minutes: 50n },
        { skill: 'polish', minutes: 400n },
        { skill: 'polish', minutes: 45n },
      ],
      materials: [
        { id: 'medium', name: 'medium polish', quantity: 100_000n, unit: 'ml' },
        { id: 'medium', name: 'medium polish', quantity: 37_000n, unit: 'ml' },
        { id: 'towels', name: 'towels', quantity: 5_000n, unit: 'pieces' },
      ],
    },
    list,
  );
  expect(priced.lines.map(({ kind, id }) => `${kind} ${id}`.trim())).toEqual([
    'labour wash',
    'labour polish',
    'material medium',
    'fixed collection',
    'discount',
  ]);
  expect(amounts(priced)).toEqual([
    3_000n, // 50 min × 36.00 / 60 = 30.00
    35_600n, // 445 min × 48.00 / 60 = 356.00
    789n, // 137 ml × 24.00 / 500 ml × 1.20 = 7.8912
    1_504n,
    -4_089n, // 10 % of 408.93 = 40.893
  ]);
  // What a line is reckoned from, quantities in thousandths: 445 min by the hour, 137 ml by the pack of 500.
  expect(priced.lines.map(({ unitPrice }) => unitPrice).slice(1, 4)).toEqual([
    { quantity: 445_000n, unit: 'min', price: 4_800n, per: 60n, markup: 0n },
    { quantity: 137_000n, unit: 'ml', price: 2_400n, per: 500n, markup: percent(20) },
    null,
  ]);
  expect(priced.subtotal).toBe(36_804n); // 408.93 − 40.89
  expect(priced.tax).toBe(7_360n); // 20 % of 368.04 = 73.608, down
  expect(priced.total).toBe(44_164n);
  expect(priced.payable).toBe(44_164n);
  expect(priced.deposit).toBe(11_041n); // 25 % of 441.64 = 110.41
  // 6.00, 71.20, 1.578, 3.008, −8.178: rounded down they leave one of 73.60, for the larger .008.
  expect(taxes(priced)).toEqual([600n, 7_120n, 157n, 301n, -818n]);
});

describe('three lines of 3.33 at 20 %', () => {
  const fixed = ['a', 'b', 'c'].map((name) => fixedItem(name, 333n));
  const at = (rule: Partial<TaxRule>) =>
    priceJob(nothing, { ...bareList, fixed, tax: { ...ukVat, rounding: 'half-up', ...rule } });

  test('each rounded by itself: 0.666 → 0.67 each, 2.01 in all', () => {
    expect(taxes(at({ level: 'line' }))).toEqual([67n, 67n, 67n]);
    expect(at({ level: 'line' }).total).toBe(1_200n);
  });

  test('rounded together: 1.998 → 2.00, shown as 0.67 + 0.67 + 0.66', () => {
    expect(taxes(at({ level: 'total' }))).toEqual([67n, 67n, 66n]);
    expect(at({ level: 'total' }).total).toBe(1_199n);
  });

  test('rounded down together: 1.998 → 1.99', () => {
    expect(at({ level: 'total', rounding: 'down' }).tax).toBe(199n);
  });
});

test('two rates: each on its own sum, or all at once', () => {
  const fixed = [
    fixedItem('polishing', 1_003n),
    fixedItem('booklet', 1_001n, percent(5)),
    fixedItem('stamps', 200n, 0n),
  ];
  const at = (level: TaxRule['level']) =>
    priceJob(nothing, { ...bareList, fixed, tax: { ...ukVat, rounding: 'half-up', level } });
  // 20 % of 10.03 = 2.006 → 2.01; 5 % of 10.01 = 0.5005 → 0.50; together 2.5065 → 2.51.
  expect(at('rate').tax).toBe(251n);
  expect(taxes(at('rate'))).toEqual([201n, 50n, 0n]);
  expect(at('total').tax).toBe(251n);
  // With 0.54 more at 5 %, 0.5275 → 0.53 by itself, and 2.5335 → 2.53 together.
  const more = fixed.map((one) => (one.name === 'booklet' ? { ...one, price: 1_055n } : one));
  const rates = (level: TaxRule['level']) =>
    priceJob(nothing, { ...bareList, fixed: more, tax: { ...ukVat, rounding: 'half-up', level } });
  expect(rates('rate').tax).toBe(254n);
  expect(rates('total').tax).toBe(253n);
});

test('a discount is shared over the rates, so that each rate is taxed on what is left of it', () => {
  const priced = priceJob(nothing, {
    ...bareList,
    fixed: [fixedItem('polishing', 3_000n), fixedItem('insurance', 1_000n, 0n)],
    discount: { kind: 'amount', amount: 401n },
    tax: { ...ukVat, rounding: 'half-up' },
  });
  // 4.01 over 30.00 and 10.00: 3.0075 and 1.0025 → 3.01 and 1.00.
  expect(amounts(priced)).toEqual([3_000n, 1_000n, -301n, -100n]);
  expect(priced.subtotal).toBe(3_599n);
  expect(priced.tax).toBe(540n); // 20 % of 26.99 = 5.398
});

test('a discount of so many per cent is rounded as the price list rounds every amount', () => {
  const fixed = [fixedItem('polishing', 1_015n)];
  const discount = { kind: 'share', share: percent(10) } as const;
  const off = (rounding: RoundingMode) =>
    amounts(priceJob(nothing, { ...bareList, fixed, discount, rounding }))[1];
  // 10 % of 10.15 = 1.015.
  expect(off('half-up')).toBe(-102n);
  expect(off('up')).toBe(-102n);
  expect(off('down')).toBe(-101n);
  const even = priceJob(nothing, {
    ...{ ...bareList, fixed: [fixedItem('polishing', 1_025n)], discount },
    rounding: 'half-even',
  });
  expect(amounts(even)[1]).toBe(-102n);
});

test('a discount and what is charged up to the minimum are named as such', () => {
  const fixed = [fixedItem('polishing', 3_000n)];
  const discount = { kind: 'amount', amount: 500n } as const;
  const { lines } = priceJob(nothing, { ...bareList, fixed, discount, minimum: 2_600n });
  expect(lines.map(({ kind, name, amount }) => [kind, name, amount])).toEqual([
    ['fixed', 'polishing', 3_000n],
    ['discount', 'discount', -500n],
    ['minimum', 'up to the minimum charge', 100n],
  ]);
});

test('where each line is taxed by itself, a discount has the tax that it takes off the lines', () => {
  const priced = priceJob(nothing, {
    ...bareList,
    fixed: [fixedItem('a', 1n), fixedItem('b', 4n)],
    discount: { kind: 'share', share: percent(90) },
    tax: { ...ukVat, level: 'line', rounding: 'half-up' },
  });
  // 90 % of 5 is 4.5 → 5: nothing is left, and nothing is taxed; −5 taxed by itself would be −1.
  expect(amounts(priced)).toEqual([1n, 4n, -5n]);
  expect(taxes(priced)).toEqual([0n, 1n, -1n]);
  expect(priced.tax).toBe(0n);
  const some = priceJob(nothing, {
    ...bareList,
    fixed: [fixedItem('a', 1_000n), fixedItem('b', 3_000n)],
    discount: { kind: 'amount', amount: 400n },
    tax: { ...ukVat, level: 'line' },
  });
  // 20 % of 10.00, of 30.00 and of −4.00.
  expect(taxes(some)).toEqual([200n, 600n, -80n]);
  expect(some.tax).toBe(720n);
  const included = priceJob(nothing, {
    ...bareList,
    fixed: [fixedItem('a', 1_200n), fixedItem('b', 3_600n)],
    discount: { kind: 'amount', amount: 480n },
    tax: { ...ukVat, level: 'line', included: true },
  });
  // 12.00 with its tax are 10.00 and 2.00, whatever comes off the whole.
  expect(amounts(included)).toEqual([1_000n, 3_000n, -400n]);
  expect(taxes(included)).toEqual([200n, 600n, -80n]);
});

test('yen have no minor unit but the yen itself', () => {
  const priced = priceJob(
    { labour: [{ skill: 'polish', minutes: 95n }], materials: [] },
    {
      ...bareList,
      currency: { code: 'JPY', digits: 0 },
      labour: flat(6_100n),
      tax: { ...ukVat, name: 'consumption tax', share: percent(10) },
    },
  );
  expect(priced.subtotal).toBe(9_658n); // 95 × 6100 / 60 = 9658.33
  expect(priced.tax).toBe(965n); // 965.8, down
  expect(priced.total).toBe(10_623n);
});

test('dinars have a thousand fils, and what is paid in cash goes to the nearest five', () => {
  const priced = priceJob(
    { labour: [{ skill: 'polish', minutes: 50n }], materials: [] },
    {
      ...bareList,
      currency: { code: 'KWD', digits: 3 },
      labour: flat(12_500n),
      cashStep: 5n,
      deposit: percent(33.3333),
    },
  );
  expect(priced.total).toBe(10_417n); // 50 × 12.500 / 60 = 10.41667
  expect(priced.payable).toBe(10_415n);
  expect(priced.deposit).toBe(3_470n); // 33.3333 % of 10.415 = 3.471663, in coins of five fils
});

test('where the tax is in the prices, it is taken out and the lines still add up', () => {
  const priced = priceJob(nothing, {
    ...bareList,
    fixed: [fixedItem('a', 3_334n), fixedItem('b', 3_334n), fixedItem('c', 3_333n)],
    tax: { ...noTax, name: 'GST', share: percent(10), included: true },
  });
  // 100.01 / 11 = 9.0918 → 9.09; by line 3.0309, 3.0309, 3.0300 → 3.03 each.
  expect(priced.tax).toBe(909n);
  expect(amounts(priced)).toEqual([3_031n, 3_031n, 3_030n]);
  expect(priced.subtotal).toBe(9_092n);
  expect(priced.total).toBe(10_001n);
});

test('what is wanting to the minimum charge is a line of its own, after the discount', () => {
  const list: PriceList = {
    ...bareList,
    fixed: [fixedItem('a', 10_000n)],
    discount: { kind: 'share', share: percent(15) },
    minimum: 9_000n,
  };
  const priced = priceJob(nothing, list);
  expect(priced.lines.map(({ kind }) => kind)).toEqual(['fixed', 'discount', 'minimum']);
  expect(amounts(priced)).toEqual([10_000n, -1_500n, 500n]);
  expect(amounts(priceJob(nothing, { ...list, minimum: 8_500n }))).toEqual([10_000n, -1_500n]);
});

test('a discount takes nothing below nothing', () => {
  const priced = priceJob(nothing, {
    ...bareList,
    fixed: [fixedItem('a', 300n)],
    discount: { kind: 'amount', amount: 500n },
  });
  expect(priced.subtotal).toBe(0n);
  expect(
    priceJob(nothing, { ...bareList, discount: { kind: 'amount', amount: 5n } }).lines,
  ).toEqual([]);
});

test('each line is rounded as the list says', () => {
  const job = { labour: [{ skill: 'polish' as const, minutes: 1n }], materials: [] };
  // One minute at 1.50 an hour is 2.5 pence.
  const at = (rounding: PriceList['rounding']): bigint =>
    priceJob(job, { ...bareList, labour: flat(150n), rounding }).subtotal;
  expect([at('half-up'), at('half-even'), at('down'), at('up')]).toEqual([3n, 2n, 2n, 3n]);
});

test('a price beyond what a number holds exactly is noticed', () => {
  const at = (price: bigint) =>
    isWithinNumbers(
      priceJob(
        { labour: [{ skill: 'polish', minutes: 600_000n }], materials: [] },
        { ...bareList, labour: flat(price) },
      ),
    );
  expect(at(900_000_000_000n)).toBe(true);
  expect(at(1_000_000_000_000n)).toBe(false);
});

test('a deposit is never over the total, though coins round what is to be paid to more', () => {
  const list: PriceList = {
    ...bareList,
    fixed: [fixedItem('a', 91_634n)],
    cashStep: 1_000n,
    deposit: percent(100),
  };
  const priced = priceJob(nothing, list);
  expect(priced.payable).toBe(92_000n); // 916.34 in coins of 10.00
  expect(priced.deposit).toBe(91_000n);
  expect(priceJob(nothing, { ...list, cashStep: null }).deposit).toBe(91_634n);
  expect(priceJob(nothing, { ...list, deposit: percent(0.1) }).deposit).toBe(0n); // 0.92
});

test('there is no deposit where the list asks for none', () => {
  expect(priceJob(nothing, bareList).deposit).toBeNull();
});
