/** Swaps whose likelihoods' ratio is reckoned by hand: exp((S − S′)/2σ²) is to be over exp(9). */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import {
  byPointName,
  mirroredDifferences,
  swappedPoints,
} from '../../../src/film/compare/swapped-points.ts';
import { filmModel } from '../../../src/formats/models.ts';

const FAR_BETTER = filmModel.compare.farBetter;

type Panel = Parameters<typeof swappedPoints>[0][number];

const panelOf = (
  id: string,
  before: readonly number[],
  after: readonly number[],
  names: readonly string[] = before.map((_, i) => `${i + 1}`),
): Panel => ({
  id,
  pairs: before.map((value, i) => ({
    point: names[i] ?? '',
    before: micrometres(value),
    after: micrometres(after[i] ?? Number.NaN),
    repeats: { before: 1, after: 1 },
  })),
});
const plus = (films: readonly number[], by: readonly number[]): readonly number[] =>
  films.map((film, i) => film + (by[i] ?? 0));

/** Differences of the two are −12, 20 and −8: squares of 608 about a mean of nothing. */
const [P, Q] = [
  [100, 120, 110],
  [112, 100, 118],
];
const STEEP = [100, 150, 200];
/** Of variance x², and far from anything the other way round. */
const scattered = (id: string, x: number): Panel => panelOf(id, STEEP, plus(STEEP, [x, -x, 0]));
const calm = ['u', 'v', 'w'].map((id) => scattered(id, 0));

describe('two panels that fit one another', () => {
  const exchanged = (x = 0): readonly Panel[] => [
    panelOf('a', P, plus(Q, [x, -x, 0])),
    panelOf('b', Q, plus(P, [x, -x, 0])),
  ];
  const told = (panels: readonly Panel[], gauge: number): boolean =>
    swappedPoints(panels, gauge, FAR_BETTER).some(({ kind }) => kind === 'panels');

  test('by three points are swapped where (S − S′)/2σ² is over 9, σ² the gauge’s', () => {
    // S = 2·608 and S′ = 0: 1216/2σ² = 9 at σ² = 67.56.
    expect(swappedPoints([...exchanged(), ...calm], 67, FAR_BETTER)).toEqual([
      { kind: 'panels', panels: ['a', 'b'] },
    ]);
    expect(told([...exchanged(), ...calm], 68)).toBe(false);
  });

  test('are judged by no less than they scatter by themselves the other way round', () => {
    // S − S′ stays 1216, and the variance the other way round is 4x²/4: 9 at x = 8.22.
    expect(told([...exchanged(8.1), ...calm], 0.01)).toBe(true);
    expect(told([...exchanged(8.3), ...calm], 0.01)).toBe(false);
  });

  test('are judged by no less than the middle panel of the others scatters', () => {
    const among = (x: number) => [
      ...exchanged(),
      scattered('u', 1),
      scattered('v', x),
      scattered('w', 30),
    ];
    expect(told(among(8.1), 0.01)).toBe(true);
    expect(told(among(8.3), 0.01)).toBe(false);
  });

  test('and another as well stand in one swap only, the likeliest', () => {
    const third = panelOf('c', P, plus(Q, [2, -2, 0]));
    const swaps = swappedPoints([third, ...exchanged(), ...calm], 1, FAR_BETTER);
    expect(swaps).toEqual([{ kind: 'panels', panels: ['a', 'b'] }]);
  });

  test('by level alone are swapped where one lost what the other gained, as film does not grow', () => {
    const [a, b] = [
      [110, 111, 110],
      [98, 98, 99],
    ];
    const level = [
      panelOf('a', a, plus(b, [-2, -2, -2])),
      panelOf('b', b, plus(a, [-2, -2, -2])),
      ...calm,
    ];
    // a lost 14, 15, 13: squares of 2; b −10, −11, −9: of 302 about none. 304/2σ² = 9 at σ² = 16.89.
    expect(told(level, 16.8)).toBe(true);
    expect(told(level, 17)).toBe(false);
  });

  test('are not by paint that was added to one of them, however like the other it reads since', () => {
    const painted = panelOf('a', [110, 110, 110], [260, 260, 260]);
    const repaint = panelOf('b', [255, 255, 255], [253, 253, 253]);
    expect(told([painted, repaint, ...calm], 1)).toBe(false);
  });

  test('share their names in whatever order, and too few of them tell nothing', () => {
    const [a, b] = exchanged();
    if (a === undefined || b === undefined) throw new Error('two panels are there');
    const shuffled = { ...b, pairs: b.pairs.toReversed() };
    expect(told([a, shuffled, ...calm], 1)).toBe(true);
    const other = {
      ...b,
      pairs: b.pairs.map((pair, i) => (i === 0 ? { ...pair, point: 'x' } : pair)),
    };
    expect(told([a, other, ...calm], 1)).toBe(false);
  });
});

describe('panels counted from the other end', () => {
  const SLOPE = [100, 104, 107, 112];
  const turned = (id: string, slope: readonly number[]): Panel =>
    panelOf(id, slope, slope.toReversed());
  /** Film nearly level, which fits a little better the other way round: a half of 2 · 1² · 2/2σ² at σ² = 1. */
  const slight = turned('slight', [110, 110, 110, 111]);
  const level = panelOf('level', [110, 110, 110, 111], [110, 110, 110, 111]);
  const idsOf = (panels: readonly Panel[]) =>
    swappedPoints(panels, 1, FAR_BETTER).map(({ kind, panels: [id] }) => `${kind} ${id}`);

  test('are told by themselves where they fit far better so, and one that fits a little better is not', () => {
    expect(idsOf([turned('one', SLOPE), slight, level, ...calm])).toEqual(['mirrored one']);
  });

  test('once two are told, take every other with them that fits better so, the likeliest first', () => {
    const steeper = turned('two', [100, 108, 114, 124]);
    expect(idsOf([turned('one', SLOPE), slight, level, steeper, ...calm])).toEqual([
      'mirrored two',
      'mirrored one',
      'mirrored slight',
    ]);
  });
});

test('points are in order as they are counted, else as they are spelt', () => {
  expect(['10', '9', '11'].toSorted(byPointName)).toEqual(['9', '10', '11']);
  expect(['c', 'a', 'b'].toSorted(byPointName)).toEqual(['a', 'b', 'c']);
  expect([byPointName('a', 'b'), byPointName('b', 'a')]).toEqual([-1, 1]);
});

test('points from the other end are those of the panel in the order of their names', () => {
  const { pairs } = panelOf('a', [1, 20, 300], [40, 50, 60], ['10', '9', '11']);
  // In order 9, 10, 11: before 20, 1, 300 and after 50, 40, 60 the other way round.
  expect(mirroredDifferences(pairs)).toEqual([20 - 60, 1 - 40, 300 - 50]);
});
