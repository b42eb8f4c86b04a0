import { expect, test } from 'vitest';
import { priceJob } from '../../src/work/price-job.ts';
import { bareList, fixedItem, noTax, percent } from './price-lists.ts';

test('a discount on lines too small to be taxed takes no tax off', () => {
  // 20 % of 2 is .4 → 0 on either line; taxed by itself, −4 would be −.8 → −1, a tax below nothing.
  const priced = priceJob(
    { labour: [], materials: [] },
    {
      ...bareList,
      fixed: [fixedItem('a', 2n), fixedItem('b', 2n)],
      discount: { kind: 'amount', amount: 4n },
      tax: { ...noTax, share: percent(20), level: 'line' },
    },
  );
  expect(priced.lines.map(({ amount, tax }) => [amount, tax])).toEqual([
    [2n, 0n],
    [2n, 0n],
    [-4n, 0n],
  ]);
  expect(priced.total).toBe(0n);
});

test('what makes up the minimum charge bears no share of a discount', () => {
  // 100.00 less half is 50.00, and 30.00 more is charged: 20 % of 80.00 in all.
  const { lines, total } = priceJob(
    { labour: [], materials: [] },
    {
      ...bareList,
      fixed: [fixedItem('a', 10_000n)],
      discount: { kind: 'amount', amount: 5000n },
      minimum: 8000n,
      tax: { ...noTax, share: percent(20), level: 'line' },
    },
  );
  expect(lines.map(({ kind, amount, tax }) => [kind, amount, tax])).toEqual([
    ['fixed', 10_000n, 2000n],
    ['discount', -5000n, -1000n],
    ['minimum', 3000n, 600n],
  ]);
  expect(total).toBe(9600n);
});
