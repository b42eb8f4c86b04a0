/** What steps take together, and what is known of that, by hand. */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import {
  foretell,
  foretold,
  type PaintKnowledge,
  stepRemoval,
  together,
} from '../../../src/correction/removal/removal-knowledge.ts';
import { untried } from '../shop.ts';
import { combination } from '../spot-trials.ts';

const [MILD, MEDIUM] = [combination('da/foam-soft/fine'), combination('da/foam-medium/medium')];

/** A paint on which the rate of each is known so well, and goes so with the scale of depths. */
const known: PaintKnowledge = {
  ...untried,
  removal: {
    ...untried.removal,
    of: (id) => ({
      ...untried.removal.of(id),
      ...(id === MILD.id ? { sd: 0.2, withDepth: 0.03 } : { sd: 0.5, withDepth: 0.07 }),
    }),
  },
};
const sum = (median: number, rateSds: number, withDepth: number) => ({
  median: micrometres(median),
  rateSds,
  withDepth,
});

describe('steps on a paint', () => {
  test('take the sum of what each takes, and rates and depths count by what each takes', () => {
    expect(together(sum(1, 0.2, 0.03), sum(3, 1.5, 0.21))).toEqual(sum(4, 1.7, 0.24));
    const { median, rateSds, withDepth } = stepRemoval({ combination: MEDIUM, sets: 3 }, known);
    expect(median).toBeCloseTo(3 * MEDIUM.perSet, 12);
    expect(rateSds).toBeCloseTo(3 * MEDIUM.perSet * 0.5, 12);
    expect(withDepth).toBeCloseTo(3 * MEDIUM.perSet * 0.07, 12);
  });

  test('are foretold by the shares that they have in it, and by the doubt of a step', () => {
    const of = foretold(sum(4, 1.7, 0.24), 0.15);
    expect(of.median).toBe(4);
    expect(of.logSd).toBeCloseTo(Math.hypot(1.7 / 4, 0.15), 12);
    expect(of.withDepth).toBeCloseTo(0.06, 12);
    const steps = [
      { combination: MEDIUM, sets: 2 },
      { combination: MILD, sets: 1 },
    ];
    const [two, one] = [2 * MEDIUM.perSet, MILD.perSet];
    const found = foretell(steps, known, 0.15);
    expect(found.median).toBeCloseTo(two + one, 12);
    expect(found.logSd).toBeCloseTo(Math.hypot((0.5 * two + 0.2 * one) / (two + one), 0.15), 12);
    expect(found.withDepth).toBeCloseTo((0.07 * two + 0.03 * one) / (two + one), 12);
    expect(foretell([], known, 0.15)).toEqual({ median: 0, logSd: 0.15, withDepth: 0 });
  });
});
