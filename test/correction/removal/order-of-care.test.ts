/** In which order combinations are preferred: the ladder, but a rotary must be milder by more than its rate is known to. */
import { describe, expect, test } from 'vitest';
import { ladder } from '../../../src/correction/removal/combination.ts';
import { mostCare } from '../../../src/correction/removal/step.ts';
import { shopWith } from '../shop.ts';

const shop = shopWith('rotary', 'da', 'da-small', 'hand');
const rungs = ladder(shop);
const isRotary = ({ machine }: (typeof rungs)[number]): boolean => machine.motion.kind === 'rotary';
const byCare = rungs.toSorted((a, b) => a.care - b.care);

describe('the order of care', () => {
  test('holds every rung once', () => {
    expect(byCare.map(({ care }) => care)).toEqual(rungs.map(({ rung }) => rung));
  });

  test('leaves those that are no rotary in the order of the ladder, and rotaries among themselves', () => {
    for (const kind of [true, false]) {
      const some = byCare.filter((one) => isRotary(one) === kind).map(({ rung }) => rung);
      expect(some).toEqual(some.toSorted((a, b) => a - b));
    }
  });

  test('puts a rotary before a dual action only where it takes less by over one SD of its rate', () => {
    const factor = Math.exp(shop.removal.combinationLogSd);
    let overtaken = 0;
    for (const rotary of rungs.filter(isRotary)) {
      for (const other of rungs.filter((one) => !isRotary(one))) {
        expect(rotary.care < other.care).toBe(rotary.perSet * factor < other.perSet);
        if (rotary.perSet < other.perSet && rotary.care > other.care) overtaken += 1;
      }
    }
    expect(overtaken).toBeGreaterThan(5);
  });

  test('trusts a rotary’s rate as far as the shop measured it', () => {
    const [rotary] = rungs.filter(isRotary).filter((one) => one.care > one.rung);
    if (rotary === undefined) throw new Error('a rotary is overtaken');
    const measured = new Map([[rotary.id, { rate: rotary.perSet, logSd: 0.01 }]]);
    const again = ladder({ ...shop, rates: measured }).find(({ id }) => id === rotary.id);
    expect(again?.care).toBeLessThan(rotary.care);
  });

  test('takes of steps the one that asks for most care, wherever it stands', () => {
    const [mild, ...others] = byCare;
    const most = others.at(-1);
    if (mild === undefined || most === undefined) throw new Error('there are rungs');
    const steps = [mild, most].map((combination) => ({ combination, sets: 1 }));
    expect(mostCare(steps)).toBe(most.care);
    expect(mostCare(steps.toReversed())).toBe(most.care);
    expect(mostCare([])).toBe(-1);
  });
});
