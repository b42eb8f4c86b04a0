import { expect, test } from 'vitest';
import type { WorkEstimate } from '../../src/work/estimate-work.ts';
import type { MaterialPrice } from '../../src/work/price-list.ts';
import { neededMaterials } from '../../src/work/to-buy.ts';

const work = (quantity: number): WorkEstimate =>
  ({
    jobMaterials: [{ id: 'wax', material: 'wax', quantity, unit: 'ml' }],
    stages: [{ materials: [{ id: 'wax', material: 'wax', quantity, unit: 'ml' }] }],
    pads: [],
  }) as unknown as WorkEstimate;
const wax = (stock: number | null): MaterialPrice => ({
  id: 'wax',
  pack: 250n,
  unit: 'ml',
  price: 2_600n,
  stock,
});
const toBuy = (quantity: number, prices: readonly MaterialPrice[]) =>
  neededMaterials(work(quantity), prices).map((one) => one.toBuy);

test('whole packs are bought for what stock does not cover, and none where it does', () => {
  expect(toBuy(300, [wax(0)])).toEqual([2]);
  expect(toBuy(300, [wax(50)])).toEqual([1]);
  expect(toBuy(300, [wax(300)])).toEqual([0]);
});

test('nothing is said of what is not on the list, or not counted', () => {
  expect(toBuy(300, [])).toEqual([null]);
  expect(toBuy(300, [wax(null)])).toEqual([null]);
});

test('what is gone after the job are shares: of clay and of pads, and nothing of towels', () => {
  const used = (id: string, quantity: number) => ({ id, material: id, quantity, unit: 'pieces' });
  const job = {
    jobMaterials: [used('clay', 1), used('foam-soft-150', 3), used('towels', 18)],
    stages: [
      { materials: [used('clay', 1 / 3), used('towels', 9.6)] },
      { materials: [used('foam-soft-150', 3), used('towels', 7.9)] },
    ],
    pads: [{ id: 'foam-soft-150', material: 'soft foam pad', ready: 3, wornOut: 0.29 }],
  } as unknown as WorkEstimate;
  expect(neededMaterials(job, []).map(({ usedUp, lasts }) => [usedUp, lasts])).toEqual([
    [1 / 3, false],
    [0.29, true],
    [0, true],
  ]);
});
