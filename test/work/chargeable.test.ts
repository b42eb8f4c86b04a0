import { expect, test } from 'vitest';
import { minutes } from '../../src/base/units.ts';
import { chargeable, chargedTime, overrunChance } from '../../src/work/chargeable.ts';
import type { WorkEstimate } from '../../src/work/estimate-work.ts';

const time = { mean: minutes(0), median: minutes(480), logSd: 0.2 };

test('the charged minutes are a quantile of the job’s time, rounded to whole ones', () => {
  expect(chargedTime(time, 0.5)).toBe(480);
  // 480·e^(0.841621·0.2) = 568.0: z of 80 % is 0.841621 (Abramowitz and Stegun, table 26.1).
  expect(chargedTime(time, 0.8)).toBe(568);
});

test('the chance of taking longer is that of the same lognormal', () => {
  expect(overrunChance(time, minutes(480))).toBeCloseTo(0.5, 12);
  // ln(600/480)/0.2 = 1.115718; 1 − Φ(1.115718) = 0.13227.
  expect(overrunChance(time, minutes(600))).toBeCloseTo(0.13227, 4);
  expect(overrunChance(time, minutes(0))).toBe(1);
  const exact = { ...time, logSd: 0 };
  expect(overrunChance(exact, minutes(479))).toBe(1);
  expect(overrunChance(exact, minutes(480))).toBe(0);
});

const stage = (skill: string, mean: number) => ({ stage: { skill }, mean, materials: [] });
const work = (rest: object): WorkEstimate =>
  ({ stages: [], jobMaterials: [], pads: [], ...rest }) as unknown as WorkEstimate;

test('the minutes go to the skills as their stages take them, and none is lost', () => {
  const stages = [stage('wash', 20), stage('polish', 61), stage('wash', 13), stage('protect', 7)];
  // 100 minutes over 33, 61 and 7 of 101: 32.67, 60.40 and 6.93.
  expect(chargeable(work({ stages }), minutes(100)).labour).toEqual([
    { skill: 'wash', minutes: 33n },
    { skill: 'polish', minutes: 60n },
    { skill: 'protect', minutes: 7n },
  ]);
  expect(chargeable(work({ stages: [stage('wash', 0)] }), minutes(0)).labour).toEqual([]);
});

test('what is used up is charged: whole millilitres, shares of pads and clay, and no towels', () => {
  const used = (id: string, quantity: number, unit = 'pieces') => ({
    ...{ id, material: id, quantity, unit },
  });
  const stages = [
    { ...stage('polish', 0), materials: [used('medium', 143.5, 'ml'), used('towels', 10.2)] },
    { ...stage('wash', 0), materials: [used('clay', 1 / 3), used('foam-soft-150', 4)] },
  ];
  const jobMaterials = [
    ...[used('medium', 143.5, 'ml'), used('towels', 11)],
    ...[used('clay', 1), used('foam-soft-150', 4)],
  ];
  const pads = [{ id: 'foam-soft-150', material: 'soft pad', ready: 4, wornOut: 0.4567 }];
  const { materials } = chargeable(work({ stages, jobMaterials, pads }), minutes(0));
  expect(materials.map(({ id, quantity }) => [id, quantity])).toEqual([
    ['medium', 144_000n],
    ['clay', 330n],
    ['foam-soft-150', 460n],
  ]);
});
