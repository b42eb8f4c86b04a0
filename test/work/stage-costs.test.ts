import { expect, test } from 'vitest';
import type { WorkEstimate } from '../../src/work/estimate-work.ts';
import type { MaterialPrice } from '../../src/work/price-list.ts';
import { stageCosts } from '../../src/work/stage-costs.ts';

const use = (id: string, quantity: number, unit = 'ml') => ({ id, material: id, quantity, unit });
const listed = (id: string, pack: bigint, price: bigint): MaterialPrice => ({
  ...{ id, pack, price, stock: null },
  unit: 'ml',
});

const cut = [use('medium', 270), use('foam-soft-150', 2, 'pieces'), use('towels', 9, 'pieces')];
const finish = [use('medium', 30), use('foam-soft-150', 3, 'pieces')];
const work = {
  stages: [
    { stage: { id: 'wash' }, materials: [use('shampoo', 41)] },
    { stage: { id: 'clay' }, materials: [use('clay', 1 / 3, 'pieces')] },
    { stage: { id: 'cut' }, materials: cut },
    { stage: { id: 'finish' }, materials: finish },
  ],
  jobMaterials: [
    ...[use('shampoo', 41), use('clay', 1, 'pieces'), use('medium', 300)],
    ...[use('foam-soft-150', 5, 'pieces'), use('towels', 9, 'pieces')],
  ],
  pads: [{ id: 'foam-soft-150', material: 'soft pad', ready: 5, wornOut: 0.5 }],
} as unknown as WorkEstimate;

test('each stage costs what it uses up, by hand', () => {
  const prices = [
    listed('clay', 1n, 1_000n),
    listed('medium', 1_000n, 3_750n),
    listed('foam-soft-150', 1n, 1_150n),
    listed('towels', 10n, 2_500n),
  ];
  expect(stageCosts(work, prices)).toEqual([
    { stage: 'clay', materials: 333n }, // a third of 10.00
    // 270 ml × 37.50 / 1000 ml = 10.125; two of five pads: 0.2 worn × 11.50 = 2.30; towels are washed
    { stage: 'cut', materials: 1_243n },
    { stage: 'finish', materials: 458n }, // 30 ml × 0.0375 = 1.125; 0.3 × 11.50 = 3.45
  ]);
});

test('a half of the smallest coin counts as one', () => {
  // 41 ml × 250 / 500 ml = 20.5.
  expect(stageCosts(work, [listed('shampoo', 500n, 250n)])).toEqual([
    { stage: 'wash', materials: 21n },
  ]);
});

test('what is on no list has no price, and a stage of nothing else no line', () => {
  expect(stageCosts(work, [])).toEqual([]);
  expect(stageCosts(work, [listed('shampoo', 1_000n, 800n)])).toEqual([
    { stage: 'wash', materials: 33n }, // 41 ml × 0.8
  ]);
});
