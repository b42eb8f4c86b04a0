import { describe, expect, it } from 'vitest';
import { furtherPoints } from '../../../src/film/help/further-points.ts';
import { pointsInRow, pointsOverFace } from '../../../src/film/template/point-layout.ts';

type Place = { readonly u: number; readonly v: number };
const gap = (place: Place, from: readonly Place[]): number =>
  Math.min(...from.map(({ u, v }) => Math.hypot(u - place.u, v - place.v)));

describe('the next point to read', () => {
  it.each([1, 2, 3, 4, 6, 7, 8])(
    'is as far as can be of nine from the %d that were read, where that many would be laid out',
    (read) => {
      for (const layout of [pointsOverFace, pointsInRow]) {
        const were = layout(read);
        const [next] = furtherPoints(layout(5), read, 1);
        if (next === undefined) throw new Error('there is room');
        const most = Math.max(...layout(9).map((place) => gap(place, were)));
        expect(gap(next, were)).toBeGreaterThanOrEqual(most - 1e-9);
        expect(most).toBeGreaterThan(0);
      }
    },
  );

  it('is as far as can be from the template’s own points where all of these were read', () => {
    const own = [
      { point: 'a', u: 0.5, v: 0.2 },
      { point: 'b', u: 0.8, v: 0.8 },
    ];
    const [next] = furtherPoints(own, 2, 1);
    const most = Math.max(...pointsOverFace(9).map((place) => gap(place, own)));
    expect(next === undefined ? 0 : gap(next, own)).toBeCloseTo(most, 9);
    // Two points of any panel would lie elsewhere.
    expect(pointsOverFace(2).map(({ u, v }) => [u, v])).not.toEqual(own.map(({ u, v }) => [u, v]));
  });
});
