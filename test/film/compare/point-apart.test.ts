import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { changeOfPairs } from '../../../src/film/compare/compare-change.ts';
import { type PointPair, pointApart } from '../../../src/film/compare/compare-points.ts';
import { filmModel } from '../../../src/formats/models.ts';

const pair = (before: number, after: number, repeats = { before: 1, after: 1 }): PointPair => ({
  ...{ point: '4', before: micrometres(before), after: micrometres(after) },
  repeats,
});
/** 2, 3 and 2 µm came off; the middle reads 115 before and 113 after. */
const others = [pair(115, 113), pair(118, 115), pair(112, 110)];

describe('of a point that stands out', () => {
  test('the odd reading is the one farther from those of its own time', () => {
    expect(pointApart(pair(114, 58), others, 6)).toMatchObject({
      ...{ point: '4', before: 114, after: 58 },
      ...{ others: 2, lost: 'more', odd: 'after' },
    });
    expect(pointApart(pair(58, 112), others, 6)).toMatchObject({ lost: 'less', odd: 'before' });
    expect(pointApart(pair(170, 112), others, 6)).toMatchObject({ lost: 'more', odd: 'before' });
    expect(pointApart(pair(114, 170), others, 6)).toMatchObject({ lost: 'less', odd: 'after' });
  });

  test('two neighbouring digits exchanged are told where the others would have it so', () => {
    // 114 less 2 is 112. Exchanged, 171.9 is 711.9, 117.9 or 179.1: 117.9 lies 5.9 from it.
    expect(pointApart(pair(114, 171.9), others, 6).swapped).toBe(117.9);
    expect(pointApart(pair(114, 171.9), others, 5.8).swapped).toBeNull();
    // Of whole micrometres: 211 is 121. Before, 151 is 511 or 115, and 112 and 2 are 114.
    expect(pointApart(pair(114, 211), others, 10).swapped).toBe(121);
    expect(pointApart(pair(151, 112), others, 2).swapped).toBe(115);
  });

  test('no digits are exchanged in a mean of several readings, nor two that are alike', () => {
    const again = { before: 1, after: 2 };
    expect(pointApart(pair(114, 171.9, again), others, 6).swapped).toBeNull();
    // The one before was read once, and it is not the odd one.
    expect(pointApart(pair(114, 171.9, { before: 2, after: 1 }), others, 6).swapped).toBe(117.9);
    expect(pointApart(pair(114, 222), others, 200).swapped).toBeNull();
  });
});

describe('a change between two who read apart', () => {
  const gauges = { cancels: true, before: filmModel.measurement, after: filmModel.measurement };
  const change = (more: object) =>
    changeOfPairs(
      [2, 3, 2],
      { sd: micrometres(1.2), dof: 9 },
      { before: 115, after: 112.7 },
      { ...gauges, ...more },
    ).removed.components;

  test('is uncertain by either of them, and by neither where nobody does', () => {
    const apart = change({ betweenOperators: micrometres(1.5) });
    expect(apart.get('operators')?.contribution).toBeCloseTo(Math.SQRT2 * 1.5, 12);
    expect(apart.get('marks')?.contribution).toBeCloseTo(1.2 / Math.sqrt(3), 12);
    expect([...change({ betweenOperators: micrometres(0) }).keys()]).toEqual([
      ...change({}).keys(),
    ]);
    expect(change({}).has('operators')).toBe(false);
  });
});
