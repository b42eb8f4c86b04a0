/** Values that follow the film from place to place, and values that do not. */
import { describe, expect, test } from 'vitest';
import { notFollowed, type PlaceGroup } from '../../src/training/places-followed.ts';

const limits = { falseAlarm: 0.001, followedChance: 0.02 };
/** Film of a panel at five marks; the reference is exact unless said. */
const film = [108, 117, 110, 113, 104];
/** Five pairs of ten in the order of the film. */
const turned = [108, 104, 113, 117, 110];
const group = (own: readonly number[], of: Partial<PlaceGroup> = {}): PlaceGroup => ({
  places: own.map((value, i) => ({ own: value, theirs: film[i] ?? 0 })),
  ...{ ofOwn: 9, ofReference: 0, spread: 25 },
  ...of,
});
const panels = (count: number, own: readonly number[], of: Partial<PlaceGroup> = {}) =>
  notFollowed(
    Array.from({ length: count }, () => group(own, of)),
    limits,
  );

describe('values from place to place', () => {
  test('that follow the film are not told, whatever the hand adds, and however wide it goes', () => {
    expect(panels(11, film)).toBeNull();
    expect(
      panels(
        11,
        film.map((value) => value + 20),
      ),
    ).toBeNull();
    expect(
      panels(
        11,
        film.map((value) => 3 * value),
      ),
    ).toBeNull();
  });

  test('that rise and fall otherwise are told, with the pairs that lie alike and those that are usual', () => {
    // Of the ten pairs of a panel five lie as the reference has them.
    expect(panels(11, turned)).toMatchObject({ places: 55, groups: 11, pairs: 110, alike: 55 });
    // (10 + Σ(2Φ(|Δ|/√18) − 1))/2 a panel, by a table of Φ.
    expect(panels(11, turned)?.expected).toBeCloseTo(11 * 8.813, 1);
  });

  test('of a place that is far off count by a few pairs alone', () => {
    expect(panels(6, [108, 117, 300, 113, 104])).toBeNull();
  });

  test('that are all one say as much of the order as a coin', () => {
    expect(panels(11, [112, 112, 112, 112, 112])).toMatchObject({ alike: 55 });
  });

  test('are no matter where the reference is as uncertain as its values differ', () => {
    expect(panels(11, turned, { ofReference: 25 })).toBeNull();
    expect(panels(11, turned, { ofReference: 30 })).toBeNull();
    expect(panels(11, turned, { spread: 0 })).toBeNull();
    expect(panels(11, turned, { ofReference: 5 })).not.toBeNull();
  });

  test('that show a law are followed after all: a hand so unsteady is another matter', () => {
    // Seven pairs of ten: S = 44 of 110, and var S = 11·16.67 by chance.
    const unsteady = [104, 110, 113, 117, 108];
    const of = { ofOwn: 0.01 };
    expect(panels(11, unsteady, of)).toBeNull();
    expect(
      notFollowed(
        Array.from({ length: 11 }, () => group(unsteady, of)),
        { ...limits, followedChance: 1e-9 },
      ),
    ).not.toBeNull();
  });

  test('by an exact hand and an exact reference are to lie as they do', () => {
    const exact = { ofOwn: 0, ofReference: 0 };
    expect(panels(2, film, exact)).toBeNull();
    expect(panels(2, turned, exact)).toMatchObject({ expected: 20 });
    const flat = { places: [1, 1].map((own) => ({ own, theirs: 112 })), spread: 0 };
    expect(notFollowed([group(film, { ...exact, ...flat })], limits)).toBeNull();
  });

  test('are no matter where there are none', () => {
    expect(notFollowed([], limits)).toBeNull();
  });
});
