import { describe, expect, test } from 'vitest';
import { remark } from '../../src/base/remark.ts';
import { micrometres } from '../../src/base/units.ts';
import { goOn, hardestVerdict, riskOfOneMore } from '../../src/correction/go-on.ts';
import type { Allowance } from '../../src/film/limits/allowance.ts';
import { amongSound, fiveAround } from '../film/car-builder.ts';

const allows = (budget: number): Allowance => {
  const value = micrometres(budget);
  const boundBy = { ...remark('clear', 'so much'), code: 'clear', value } as const;
  return { topcoat: null, limits: [boundBy], budget: value, boundBy };
};

/** Budgets if the least was taken, as is held, and if the most was. */
const left = (atLeast: number, held: number, atMost: number) => ({
  atLeast: allows(atLeast),
  held: allows(held),
  atMost: allows(atMost),
});
const set = { median: micrometres(1), logSd: 0.5 };
const known = { set, known: true, gained: false, overrun: false };
const unknown = { set, known: false, gained: false, overrun: false };

describe('one more set', () => {
  test('may be worked where even the most that came off leaves room for it', () => {
    expect(goOn({ left: left(5, 4, 1), ...unknown })).toBe('go-on');
  });

  test('may not where more came off than might go, whatever room is left', () => {
    expect(goOn({ left: left(5, 4, 1), ...known, overrun: true })).toBe('stop');
  });

  test('may not where even the least that came off leaves none', () => {
    expect(goOn({ left: left(0.99, 0.5, 0), ...known })).toBe('stop');
    expect(goOn({ left: left(0.99, 0.5, 0), ...unknown })).toBe('stop');
  });

  test('is decided by what is held where that is known, and by nothing where it is not', () => {
    expect(goOn({ left: left(3, 1, 0), ...known })).toBe('go-on');
    expect(goOn({ left: left(3, 0.9, 0), ...known })).toBe('stop');
    expect(goOn({ left: left(3, 2, 0), ...unknown })).toBe('unresolved');
  });

  test('is not decided by readings that show film coming on, unless nothing may go anyhow', () => {
    expect(goOn({ left: left(5, 4, 4), ...known, gained: true })).toBe('unresolved');
    expect(goOn({ left: left(0, 0, 0), ...known, gained: true })).toBe('stop');
  });

  test('has no risk where nothing is known of the clear', () => {
    expect(riskOfOneMore(allows(3), set)).toBeNull();
  });

  test('has the risk of the clear that is there: more of a stronger set', () => {
    const { topcoat } = amongSound(fiveAround('tested', 112)).panel;
    const [mild, strong] = [1, 12].map((um) =>
      riskOfOneMore({ topcoat }, { median: micrometres(um), logSd: 0.5 }),
    );
    expect(mild).toBeLessThan(0.05);
    expect(strong).toBeGreaterThan(mild ?? 1);
  });
});

test('a panel in several parts takes the hardest word of them', () => {
  expect(hardestVerdict(['go-on', 'stop', 'unresolved'])).toBe('stop');
  expect(hardestVerdict(['go-on', 'unresolved'])).toBe('unresolved');
  expect(hardestVerdict(['go-on', 'go-on'])).toBe('go-on');
  expect(hardestVerdict([])).toBe('unresolved');
});
