import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { swappedPoints } from '../../../src/film/compare/swapped-points.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { normal, seededRandom } from '../../samples/seeded-random.ts';

const FAR_BETTER = filmModel.compare.farBetter;

const GAUGE = 2 * 1.5 ** 2;
const IDS = ['a', 'b', 'c', 'd', 'e', 'f'];

type Films = Readonly<Record<string, readonly number[]>>;

function carOf(seed: number, points = 5): { readonly before: Films; readonly after: Films } {
  const random = seededRandom(seed);
  const read = (film: number): number => film + 1.5 * normal(random);
  const films = IDS.map(() => 112 + 8 * normal(random));
  const true_ = films.map((film) =>
    Array.from({ length: points }, () => film + 5 * normal(random)),
  );
  const of = (taken: number): Films =>
    Object.fromEntries(
      IDS.map((id, i) => [id, (true_[i] ?? []).map((film) => read(film - taken))]),
    );
  return { before: of(0), after: of(1.5) };
}

const paired = (before: Films, after: Films, ids: readonly string[] = IDS) =>
  ids.map((id) => ({
    id,
    pairs: (before[id] ?? []).map((value, i) => ({
      point: `${i + 1}`,
      before: micrometres(value),
      after: micrometres(after[id]?.[i] ?? Number.NaN),
      repeats: { before: 1, after: 1 },
    })),
  }));

const seeds = Array.from({ length: 200 }, (_, i) => i + 1);
const shareOf = (of: (seed: number) => boolean): number => seeds.filter(of).length / seeds.length;

describe('marked points read before and after', () => {
  test('are taken as they are named where they fit so', () => {
    for (const seed of seeds) {
      const { before, after } = carOf(seed);
      expect(swappedPoints(paired(before, after), GAUGE, FAR_BETTER)).toEqual([]);
    }
  });

  test('of two panels that were exchanged are seen to fit the other one', () => {
    const seen = (seed: number): boolean => {
      const { before, after } = carOf(seed);
      const spoilt = { ...after, a: after['d'] ?? [], d: after['a'] ?? [] };
      const swaps = swappedPoints(paired(before, spoilt), GAUGE, FAR_BETTER);
      return JSON.stringify(swaps) === JSON.stringify([{ kind: 'panels', panels: ['a', 'd'] }]);
    };
    expect(shareOf(seen)).toBeGreaterThan(0.8);
  });

  test('that were numbered from the other end are seen to run the other way, one panel or the whole car', () => {
    const seen = (ids: readonly string[]) => (seed: number) => {
      const { before, after } = carOf(seed);
      const turned = ids.map((id) => [id, (after[id] ?? []).toReversed()]);
      const spoilt = { ...after, ...Object.fromEntries(turned) };
      const swaps = swappedPoints(paired(before, spoilt), GAUGE, FAR_BETTER);
      return (
        swaps.length > 0 &&
        swaps.every(({ kind, panels: [id] }) => kind === 'mirrored' && ids.includes(id))
      );
    };
    // Five points turned leave the middle one where it is: four tell.
    expect(shareOf(seen(['c']))).toBeGreaterThan(0.5);
    expect(shareOf(seen(IDS))).toBeGreaterThan(0.95);
  });

  test('are too few to know a panel by under three, and one panel alone may be mirrored', () => {
    const { before, after } = carOf(3);
    const two = (films: Films): Films =>
      Object.fromEntries(Object.entries(films).map(([id, all]) => [id, all.slice(0, 2)]));
    const spoilt = { ...after, a: after['d'] ?? [], d: after['a'] ?? [] };
    expect(swappedPoints(paired(two(before), two(spoilt)), GAUGE, FAR_BETTER)).toEqual([]);
    const turned = { c: [100, 104, 110, 115, 121] };
    expect(
      swappedPoints(paired({ c: [122, 116, 111, 104, 101] }, turned, ['c']), GAUGE, FAR_BETTER),
    ).toEqual([{ kind: 'mirrored', panels: ['c'] }]);
    const [lone] = paired({ c: [122, 116, 111, 104, 101] }, turned, ['c']);
    const shuffled = [3, 0, 4, 1, 2].flatMap((i) => lone?.pairs[i] ?? []);
    expect(swappedPoints([{ id: 'c', pairs: shuffled }], GAUGE, FAR_BETTER)).toHaveLength(1);
    const named = (lone?.pairs ?? []).map((pair) => ({ ...pair, point: `p${pair.point}` }));
    expect(swappedPoints([{ id: 'c', pairs: named.toReversed() }], GAUGE, FAR_BETTER)).toHaveLength(
      1,
    );
  });

  test('share too few names to tell two panels from one another', () => {
    const { before, after } = carOf(4);
    const spoilt = { ...after, a: after['d'] ?? [], d: after['a'] ?? [] };
    const renamed = paired(before, spoilt, ['a', 'd']).map((one) =>
      one.id === 'd'
        ? {
            ...one,
            pairs: one.pairs.map((pair, i) => ({ ...pair, point: i < 2 ? pair.point : `x${i}` })),
          }
        : one,
    );
    expect(
      swappedPoints(renamed, GAUGE, FAR_BETTER).filter(({ kind }) => kind === 'panels'),
    ).toEqual([]);
  });
});
