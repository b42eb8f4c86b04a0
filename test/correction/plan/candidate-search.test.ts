import { describe, expect, it } from 'vitest';
import { millimetres } from '../../../src/base/units.ts';
import { waysToWork } from '../../../src/correction/plan/candidate-search.ts';
import {
  allRated,
  inClasses,
  type RatedCandidate,
  ranked,
  within,
} from '../../../src/correction/plan/choose-steps.ts';
import { paintKnowledge } from '../../../src/correction/removal/removal-knowledge.ts';
import { plainPanel, surveyOf } from '../../film/car-builder.ts';
import { shopWith, untried } from '../shop.ts';

const model = shopWith('rotary', 'da', 'da-small', 'hand');

/** What can be done on a panel that is flat so far. */
function waysOn(flatWidth: number, paint = untried, shop = model) {
  const [panel] = surveyOf({
    panels: [plainPanel('a', { flatWidth: millimetres(flatWidth) })],
    readings: [],
  }).panels;
  if (panel === undefined) throw new Error('the car has a panel');
  return waysToWork(panel, { paintOf: () => paint, model: shop })('machine', 1.1, 1);
}

/** A paint on which one spot was read. */
const tried = (value: number) =>
  paintKnowledge(
    [
      {
        combination: 'da/foam-medium/medium',
        foretold: 1.8,
        removed: { value, standardError: 0.5 },
        cleared: null,
      },
    ],
    'unknown',
    model,
  );

describe('the ways to work a panel', () => {
  it('are searched once for all panels on which the same pads are used', () => {
    expect(waysOn(400)).toBe(waysOn(200));
    expect(waysOn(400).count).toBeGreaterThan(0);
    expect(waysOn(100)).not.toBe(waysOn(400));
  });

  it('clear no less where the shop has a rotary too', () => {
    const cleared = (budget: number, ...machines: readonly string[]) =>
      Math.max(
        0,
        ...allRated(waysOn(400, untried, shopWith(...machines)))
          .filter(({ removal }) => removal.median <= budget)
          .map(({ correction }) => correction),
      );
    for (const machine of ['da', 'da-small'] as const)
      for (const budget of [0.5, 1, 2, 3, 5, 9]) {
        const alone = cleared(budget, machine);
        expect(cleared(budget, machine, 'rotary')).toBeGreaterThanOrEqual(alone);
        if (budget > 1) expect(alone).toBeGreaterThan(0);
      }
  });

  it('are searched once for paints that are known alike, and anew once sixteen others came between', () => {
    const first = waysOn(400, tried(1));
    const others = (count: number) => {
      for (let k = 0; k < count; k += 1) waysOn(400, tried(2 + k / 10));
    };
    others(15);
    expect(waysOn(400, tried(1))).toBe(first);
    others(16);
    const anew = waysOn(400, tried(1));
    expect(anew).not.toBe(first);
    expect(allRated(anew).map(({ removal }) => removal)).toEqual(
      allRated(first).map(({ removal }) => removal),
    );
  });

  it('are held to an ln-SD not under their own, nor over that of the least sure of them', () => {
    const ways = waysOn(400, tried(1));
    const all = allRated(ways);
    const logSds = all.map(({ removal }) => removal.logSd);
    const widest = Math.max(...logSds);
    expect(widest - Math.min(...logSds)).toBeGreaterThan(0.02);
    for (const { removal, heldTo } of all) {
      expect(heldTo).toBeGreaterThanOrEqual(removal.logSd - 1e-12);
      expect(heldTo).toBeLessThanOrEqual(widest);
    }
    expect(new Set(ways.heldTo)).toEqual(new Set(all.map(({ heldTo }) => heldTo)));
  });

  it('are the same to a part where those that cannot clear more than milder ones are passed over', () => {
    for (const paint of [untried, tried(1), tried(3)]) {
      const ways = waysOn(400, paint);
      const classes = inClasses(allRated(waysOn(400, paint)), model.correction.choice);
      const oneByOne = ranked(classes, ways.heldTo, (one) => one);
      for (const budget of [0.5, 1.2, 2.5, 4, 7]) {
        const allowed = (heldTo: number) => budget / (1 + heldTo);
        expect(within(ways, allowed)).toEqual(within(oneByOne, allowed));
      }
    }
  });

  it('that can clear no more than milder ones are not held against the defects', () => {
    const all = allRated(waysOn(400));
    const looks = (leastToClearMore: (than: RatedCandidate) => number) => {
      let count = 0;
      const classes = inClasses(all, model.correction.choice);
      const rate = (one: RatedCandidate) => {
        count += 1;
        return one;
      };
      within(ranked(classes, waysOn(400).heldTo, rate, leastToClearMore), () => 4);
      return count;
    };
    expect(looks(waysOn(400).leastToClearMore)).toBeLessThan(looks(() => 0) / 3);
  });

  it('are held against the defects only where they may go', () => {
    const all = allRated(waysOn(400));
    const asked = new Set<unknown>();
    const classes = inClasses(all, model.correction.choice);
    const some = ranked(classes, [...new Set(all.map(({ heldTo }) => heldTo))], (one) => {
      asked.add(one);
      return one;
    });
    const budget = 2;
    const { climb } = within(some, () => budget);
    expect(climb.length).toBeGreaterThan(0);
    expect(asked.size).toBeLessThan(all.length / 2);
    for (const one of all.filter(({ removal }) => removal.median <= budget)) {
      expect(asked.has(one)).toBe(true);
    }
  });
});
