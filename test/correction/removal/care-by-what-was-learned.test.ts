import { expect, test } from 'vitest';
import type { ShopRates } from '../../../src/correction/rates/shop-rates.ts';
import { ladder } from '../../../src/correction/removal/combination.ts';
import { shopWith } from '../shop.ts';

const shop = shopWith('rotary', 'da');
const rungs = ladder(shop);
const [rotary] = rungs.filter(
  ({ machine, care, rung }) => machine.motion.kind === 'rotary' && care > rung,
);
if (rotary === undefined) throw new Error('a rotary is overtaken');

/** Earlier vehicles told the rate of that rotary to so much, and that it is as reckoned. */
const told = (sd: number): ShopRates => {
  const factor = { mean: 0, sd };
  return {
    usualPaint: { mean: 0, sd: 0.12 },
    nextPaint: { mean: 0, sd: 0.3 },
    combinations: new Map([
      [rotary.id, { own: factor, next: factor, usual: factor, observations: 4, vehicles: 3 }],
    ]),
    unobservedVariance: 0.09,
    usualSd: 0.33,
  };
};

test('a rotary is as harsh as one SD of what earlier vehicles told of its rate makes it', () => {
  const others = rungs.filter(({ machine }) => machine.motion.kind !== 'rotary');
  const factors = [0.01, 0.2, 0.4, 0.8].map((sd) => {
    const again = ladder({ ...shop, learned: told(sd) });
    const own = again.find(({ id }) => id === rotary.id);
    for (const other of others) {
      const care = again.find(({ id }) => id === other.id)?.care ?? Number.NaN;
      expect((own?.care ?? Number.NaN) < care).toBe(rotary.perSet * Math.exp(sd) < other.perSet);
    }
    return own?.care ?? Number.NaN;
  });
  expect(factors).toEqual(factors.toSorted((one, other) => one - other));
  expect(factors[0]).toBeLessThan(factors[3] ?? 0);
});
