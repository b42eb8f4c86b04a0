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
