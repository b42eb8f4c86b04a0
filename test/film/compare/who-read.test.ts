import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GaugesCompared } from '../../../src/film/compare/compare-change.ts';
import { asReadBy, type ReadBy } from '../../../src/film/compare/who-read.ts';
import { filmModel } from '../../../src/formats/models.ts';

const gauges: GaugesCompared = {
  cancels: true,
  before: filmModel.measurement,
  after: filmModel.measurement,
};

type Named = readonly (readonly (string | null)[])[];

/** Of points 0, 1, 2 …, each with who read it. */
const readBy =
  (named: Named): ReadBy =>
  (_, point) =>
    named[Number(point)] ?? [];
const pointsOf = (named: Named): readonly string[] => named.map((_, i) => `${i}`);
const byOthers = (before: Named, after: Named): number | undefined =>
  asReadBy(
    gauges,
    { panel: 'roof', before: pointsOf(before), after: pointsOf(after) },
    { before: readBy(before), after: readBy(after) },
  ).readByOthers;

describe('what people read apart', () => {
  test('cancels where the same person read every point both times, or the same people alike', () => {
    expect(byOthers([['Ann'], ['Ann']], [['Ann'], ['Ann']])).toBe(0);
    expect(byOthers([['Ann'], ['Bo']], [['Bo'], ['Ann']])).toBe(0);
    expect(
      byOthers(
        [
          ['Ann', 'Bo'],
          ['Ann', 'Bo'],
        ],
        [['Ann'], ['Bo']],
      ),
    ).toBeCloseTo(0, 12);
  });

  test('counts in full, √2, where another read after, or nobody is named', () => {
    expect(byOthers([['Ann']], [['Bo']])).toBeCloseTo(Math.SQRT2, 12);
    expect(byOthers([['Ann']], [[null]])).toBeCloseTo(Math.SQRT2, 12);
    expect(byOthers([[null]], [[null]])).toBeCloseTo(Math.SQRT2, 12);
    expect(byOthers([[]], [[]])).toBeCloseTo(Math.SQRT2, 12);
  });

  test('counts by the shares that people have of the means', () => {
    // Both before, one after: ½ of each, less one whole.
    expect(byOthers([['Ann', 'Bo']], [['Ann']])).toBeCloseTo(Math.SQRT1_2, 12);
    // One point in four by another: ¼ and ¼.
    expect(byOthers([['Ann'], ['Ann'], ['Ann'], ['Bo']], Array(4).fill(['Ann']))).toBeCloseTo(
      Math.SQRT2 / 4,
      12,
    );
    // Two readings of Ann and one of Bo at a point are a third and two thirds of its value.
    expect(byOthers([['Ann', 'Ann', 'Bo']], [['Ann']])).toBeCloseTo(Math.SQRT2 / 3, 12);
  });

  test('is not known where nobody says who read', () => {
    const points = { panel: 'roof', before: ['0'], after: ['0'] };
    expect(asReadBy(gauges, points, undefined)).toBe(gauges);
  });

  test('is never more than of two who read one visit each, and the same either way round', () => {
    const name = fc.constantFrom('Ann', 'Bo', 'Cy', null);
    const visit = fc.array(fc.array(name, { maxLength: 3 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(visit, visit, (one, other) => {
        const there = byOthers(one, other) ?? Number.NaN;
        expect(there).toBeLessThanOrEqual(Math.SQRT2 + 1e-12);
        expect(byOthers(other, one)).toBeCloseTo(there, 12);
      }),
    );
  });
});
