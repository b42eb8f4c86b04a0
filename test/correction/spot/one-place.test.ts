/** Spots under several names at one place lost there what all of them took. */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import {
  heldPlaces,
  isHeldAsOne,
  type TriedPlace,
} from '../../../src/correction/spot/one-place.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { marks } from '../spot-trials.ts';

const { rounds } = filmModel.measurement;
const fine = { repeatability: micrometres(0.22), rounds };

type Pairs = readonly (readonly [before: number, after: number])[];
const tried = (spot: string, pairs: Pairs, rest: Partial<TriedPlace> = {}): TriedPlace => {
  const films = marks(...pairs);
  const lost = films.reduce((sum, { before, after }) => sum + before - after, 0);
  return {
    spot,
    place: '',
    sets: 2,
    films,
    taken: { mean: micrometres(lost / Math.max(1, films.length)), sd: micrometres(0.2) },
    ...rest,
  };
};
const byEye = (spot: string, mean: number, place = ''): TriedPlace =>
  tried(spot, [], { place, taken: { mean: micrometres(mean), sd: micrometres(0.5) } });

const held = (...spots: readonly TriedPlace[]) =>
  heldPlaces(spots, fine).map(({ tries, taken }) => [
    tries.map(({ spot }) => spot).join(' '),
    Math.round(100 * taken.mean) / 100,
    Math.round(100 * taken.sd) / 100,
  ]);

const A: Pairs = [
  [118.1, 116.7],
  [117.9, 116.1],
  [119, 116.9],
  [117.5, 115.8],
  [117.8, 115.9],
];
const B: Pairs = [
  [116.2, 114.1],
  [116.2, 113.5],
  [116.6, 114.4],
  [115.9, 113.2],
  [115.8, 113.4],
];
const C: Pairs = [
  [114.3, 112.1],
  [113.8, 111.6],
  [114.4, 112.3],
  [113.3, 111.4],
  [113.7, 111.2],
];
const lifted = (pairs: Pairs, by: number): Pairs =>
  pairs.map(([before, after]) => [before + by, after + by] as const);

describe('test spots of one panel', () => {
  test('whose marks were read anew where the last ended are one place, in any order of the file', () => {
    // (118.06 − 116.28) + (116.14 − 113.72) + (113.9 − 111.72)
    expect(held(tried('A', A), tried('B', B), tried('C', C))).toEqual([['A B C', 6.38, 0.35]]);
    expect(held(tried('C', C), tried('A', A), tried('B', B))).toEqual([['C A B', 6.38, 0.35]]);
  });

  test('that begin surely higher than another ended, and other than one set lower, are two places', () => {
    expect(held(tried('A', A), tried('B', lifted(B, 2)))).toEqual([
      ['A', 1.78, 0.2],
      ['B', 2.42, 0.2],
    ]);
    expect(held(tried('A', A), tried('B', lifted(B, -6)))).toHaveLength(2);
    // A refining step gets no row, and takes less than one of the sets that it refines.
    expect(held(tried('A', A), tried('B', lifted(B, -0.8)))).toHaveLength(1);
  });

  test('at marks of other names are told by their means, with how film differs from mark to mark', () => {
    const other = (by: number): TriedPlace =>
      tried('B', [], {
        films: marks(...lifted(B, by)).map((mark) => ({ ...mark, name: `b${mark.name}` })),
      });
    expect(held(tried('A', A), other(0))).toHaveLength(1);
    expect(held(tried('A', A), other(16))).toHaveLength(2);
    const [single] = marks([116.2, 114.2]);
    if (single === undefined) throw new Error('one mark');
    expect(held(tried('A', A), tried('B', [], { films: [single] }))).toHaveLength(1);
    expect(
      held(tried('A', [[118, 117]]), tried('B', [], { films: [{ ...single, name: 'b' }] })),
    ).toHaveLength(1);
  });

  test('are where their file says, whatever they read', () => {
    const at = (place: string) => ({ place });
    expect(held(tried('A', A, at('left')), tried('B', B, at('right')))).toHaveLength(2);
    expect(held(tried('A', A, at('left')), tried('B', lifted(B, 3), at('Left ')))).toEqual([
      ['A B', 4.2, 0.28],
    ]);
    expect(held(byEye('A', 1, 'left'), byEye('B', 1.5, 'right'))).toHaveLength(2);
    expect(held(byEye('A', 1, 'left'), tried('B', B))).toHaveLength(1);
  });

  test('may be one with either of two that their file names apart, and with no more than one', () => {
    const fresh = lifted(A, 0.1);
    const spots = [
      tried('A', A, { place: 'left' }),
      tried('B', fresh, { place: 'right' }),
      tried('C', lifted(B, 0.1)),
    ];
    const places = [
      ['A C', 4.2, 0.28],
      ['B C', 4.2, 0.28],
    ];
    expect(held(...spots)).toEqual(places);
    expect(held(...spots.toReversed()).map(([tries]) => tries)).toEqual(['C B', 'C A']);
  });

  test('of which the film was not read may be on any place', () => {
    expect(held(byEye('A', 1), byEye('B', 1.5))).toEqual([['A B', 2.5, 1]]);
    expect(held(tried('A', A), tried('B', lifted(B, 2)), byEye('C', 1))).toEqual([
      ['A C', 2.78, 0.54],
      ['B C', 3.42, 0.54],
    ]);
    expect(held()).toEqual([]);
  });

  test('are spoken of where more is held to be gone than by one alone, and no name says so', () => {
    const spoken = (...spots: readonly TriedPlace[]) => heldPlaces(spots, fine).map(isHeldAsOne);
    expect(spoken(tried('A', A), tried('B', B))).toEqual([true]);
    expect(spoken(tried('A', A), byEye('B', 0.01))).toEqual([false]);
    expect(spoken(byEye('A', 1, 'left'), byEye('B', 1, 'left'))).toEqual([false]);
    expect(spoken(tried('A', A))).toEqual([false]);
  });

  test('lost there what all of them took, as where their file says that it is one place', () => {
    const right: Pairs = [
      [119.9, 118.8],
      [120.6, 119.5],
      [118.8, 117.7],
    ];
    const again: Pairs = [
      [119.6, 118.4],
      [120.6, 119.4],
      [118.8, 117.6],
    ];
    const rough = { repeatability: micrometres(1), rounds };
    const both = (place: string) =>
      heldPlaces([tried('B', right, { place }), tried('C', again, { place })], rough).map(
        ({ taken }) => taken.mean,
      );
    expect(both('')).toEqual([expect.closeTo(2.3, 6)]);
    expect(both('right')).toEqual(both(''));
  });

  test('one of which seems to have gained lost there what the others took', () => {
    const taken = (mean: number) => ({ taken: { mean: micrometres(mean), sd: micrometres(0.2) } });
    const spots = [tried('A', A, taken(1.8)), tried('B', B, taken(-0.3)), byEye('C', -0.1)];
    expect(heldPlaces(spots, fine).map((place) => place.taken.mean)).toEqual([1.8]);
  });
});
