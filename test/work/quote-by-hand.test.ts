/**
 * One quote reckoned by hand from the hours of a job to the deposit, in francs: every part of a price list
 * is in it, and every intermediate figure stands beside what it comes to.
 */
import { expect, test } from 'vitest';
import { minutes } from '../../src/base/units.ts';
import { chargeable, chargedTime } from '../../src/work/chargeable.ts';
import type { WorkEstimate } from '../../src/work/estimate-work.ts';
import { priceJob } from '../../src/work/price-job.ts';
import type { PriceList } from '../../src/work/price-list.ts';
import { bareList, fixedItem, noTax, percent } from './price-lists.ts';

const stage = (skill: string, mean: number) => ({
  stage: { skill },
  mean,
  materials: [] as unknown[],
});

const used = [
  { id: 'medium', material: 'medium polish', quantity: 143.5, unit: 'ml' },
  { id: 'foam-soft-150', material: 'soft pad', quantity: 4, unit: 'pieces' },
  { id: 'towels', material: 'towels', quantity: 11, unit: 'pieces' },
];
const work = {
  stages: [
    stage('wash', 20),
    { ...stage('polish', 61), materials: used },
    stage('wash', 13),
    stage('protect', 7),
  ],
  jobMaterials: used,
  pads: [{ id: 'foam-soft-150', material: 'soft pad', ready: 4, wornOut: 0.4567 }],
} as unknown as WorkEstimate;

const list: PriceList = {
  ...bareList,
  currency: { code: 'CHF', digits: 2 },
  labour: { bySkill: new Map([['polish', 9_600n]]), other: 7_800n },
  materials: [
    { id: 'medium', pack: 1000n, unit: 'ml', price: 3_755n, stock: null },
    { id: 'foam-soft-150', pack: 1n, unit: 'pieces', price: 1_150n, stock: null },
    { id: 'towels', pack: 10n, unit: 'pieces', price: 1_500n, stock: null },
  ],
  markup: percent(25),
  fixed: [fixedItem('collection', 2_500n), fixedItem('booklet', 999n, percent(2.6))],
  discount: { kind: 'share', share: percent(7.5) },
  minimum: 85_000n,
  tax: { ...noTax, name: 'VAT', share: percent(8.1), level: 'rate', rounding: 'half-up' },
  cashStep: 5n,
  deposit: percent(30),
};

test('a quote by hand: hours, rates, markup, items, discount, minimum, two taxes, coins, deposit', () => {
  // Median 480 min, ln-SD 0.2, at P80: 480·e^(0.841621·0.2) = 568.0.
  const charged = chargedTime({ mean: minutes(0), median: minutes(480), logSd: 0.2 }, 0.8);
  expect(charged).toBe(568);

  const job = chargeable(work, charged);
  expect(job.labour).toEqual([
    { skill: 'wash', minutes: 186n }, // 568 × 33/101 = 185.58: the minute left over goes here
    { skill: 'polish', minutes: 343n }, // 568 × 61/101 = 343.05
    { skill: 'protect', minutes: 39n }, // 568 × 7/101 = 39.37
  ]);

  const priced = priceJob(job, list);
  expect(priced.lines.map(({ kind, id, amount }) => [`${kind} ${id}`.trim(), amount])).toEqual([
    ['labour wash', 24_180n], // 186 min × 78.00 / 60 = 241.80
    ['labour polish', 54_880n], // 343 min × 96.00 / 60 = 548.80
    ['labour protect', 5_070n], // 39 min × 78.00 / 60 = 50.70
    ['material medium', 676n], // 144 ml × 37.55 / 1000 ml × 1.25 = 6.759
    ['material foam-soft-150', 661n], // 0.46 worn out × 11.50 × 1.25 = 6.6125
    ['fixed collection', 2_500n],
    ['fixed booklet', 999n], // 889.66 so far; towels are washed and are not charged
    ['discount', -6_597n], // 7.5 % of 889.66 = 66.7245 → 66.72, of which × 879.67/889.66 = 65.971
    ['discount', -75n], // × 9.99/889.66 = 0.749: the cent left over goes here
    ['minimum', 2_706n], // 850.00 − (889.66 − 66.72) = 27.06
  ]);
  expect(priced.subtotal).toBe(85_000n);

  // 8.1 % of 879.67 − 65.97 + 27.06 = 840.76: 68.10156 → 68.10; 2.6 % of 9.24: 0.24024 → 0.24.
  const taxOf = (share: bigint): bigint =>
    priced.lines
      .filter(({ taxShare }) => taxShare === share)
      .reduce((sum, { tax }) => sum + tax, 0n);
  expect(taxOf(percent(8.1))).toBe(6_810n);
  expect(taxOf(percent(2.6))).toBe(24n);
  expect(priced.tax).toBe(6_834n);

  expect(priced.total).toBe(91_834n); // 850.00 + 68.34
  expect(priced.payable).toBe(91_835n); // to the nearest five centimes
  expect(priced.deposit).toBe(27_550n); // 30 % of 918.35 = 275.505, in coins of five
});
