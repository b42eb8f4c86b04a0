import { describe, expect, test } from 'vitest';
import {
  type PanelValues,
  type StandingOutRules,
  spreadWithout,
  standingOut,
} from '../../../src/film/compare/standing-out.ts';
import type { OwnSpread, SpreadPrior } from '../../../src/film/spread.ts';
import { studentTQuantiles } from '../../reference/distributions.ts';

/** t at .995 on 10 degrees of freedom, 3.169. */
const T10 = studentTQuantiles['10']?.[4] ?? Number.NaN;
/** √(1 + 1.57/n): how far a value of n scatters about their median, in SDs. */
const about = (n: number): number => Math.sqrt(1 + 1.57 / n);

const panel = (id: string, values: readonly number[], least = 0): PanelValues => ({
  id,
  values,
  least,
});

/** Whatever the panels show, values scatter by this variance, known on 10 degrees of freedom. */
const heldTo = (variance: number): SpreadPrior => ({
  variance,
  dof: Number.POSITIVE_INFINITY,
  dofCeiling: 10,
});

/** A chance of .005 on either side of each of so many points. */
const among = (points: number): number => 0.01 * points;

const byHand = (variance: number, points: number): StandingOutRules => ({
  priorOf: () => heldTo(variance),
  falseAlarm: among(points),
});

/** Five values whose sample variance is 1, about 0. */
const EVEN = [-1, -1, 0, 1, 1] as const;

describe('a point stands out from its panel', () => {
  // 3.169·2·√1.314 = 7.266
  const reach = T10 * 2 * about(5);
  const found = (value: number) =>
    standingOut(
      [panel('a', [10, 10, 10, 10, 10 + value]), panel('b', [3, 3, 3, 3, 3])],
      byHand(4, 10),
    );

  test('beyond t·√(s²(1 + 1.57/n)) of their median, on either side', () => {
    expect(reach).toBeCloseTo(7.266, 3);
    for (const sign of [1, -1]) {
      expect(found(sign * (reach - 0.01)).size).toBe(0);
      const { apart, isUneven } = found(sign * (reach + 0.01)).get('a') ?? {};
      expect([apart, isUneven]).toEqual([[4], false]);
    }
    expect(found(20).get('a')?.reach).toBeCloseTo(reach, 6);
    expect([...found(20).keys()]).toEqual(['a']);
  });

  test('no sooner for points of panels that are too few to tell: of two neither stands out', () => {
    const three = panel('c', [0, 0, 40]);
    const two = panel('d', [0, 60]);
    const told = standingOut([three, two], byHand(4, 3));
    expect([...told.keys()]).toEqual(['c']);
    expect(told.get('c')?.apart).toEqual([2]);
    expect(told.get('c')?.reach).toBeCloseTo(T10 * 2 * about(3), 6);
    expect(standingOut([two], byHand(4, 2)).size).toBe(0);
  });

  test('no nearer than the panel’s own least variance allows', () => {
    const at = (least: number) =>
      standingOut([panel('a', [0, 0, 0, 0, 50], least), panel('b', EVEN)], byHand(4, 10)).get('a')
        ?.reach;
    expect(at(9)).toBeCloseTo(T10 * 3 * about(5), 6);
    expect(at(1)).toBeCloseTo(reach, 6);
  });
});

describe('a panel half of whose points stand out', () => {
  test('is uneven: none of them is named, and it says nothing of the others', () => {
    const said: (readonly OwnSpread[])[] = [];
    const told = standingOut([panel('a', [0, 0, 30, -30]), panel('b', [0, 0, 0, 30])], {
      priorOf: (own) => {
        said.push(own);
        return heldTo(4);
      },
      falseAlarm: among(8),
    });
    expect(told.get('a')).toMatchObject({ apart: [], isUneven: true });
    expect(told.get('b')).toMatchObject({ apart: [3], isUneven: false });
    expect(said.at(-1)?.map(({ dof }) => dof)).toEqual([0, 2]);
  });
});

describe('how values scatter', () => {
  /** As the panels show it; where none is asked yet, as badly as nothing would show. */
  const pooledOr =
    (untold: number) =>
    (own: readonly OwnSpread[]): SpreadPrior => {
      const dof = own.reduce((sum, one) => sum + one.dof, 0);
      const squares = own.reduce((sum, one) => sum + one.dof * one.variance, 0);
      return own.length === 0
        ? heldTo(untold)
        : { variance: squares / dof, dof: Number.POSITIVE_INFINITY, dofCeiling: dof };
    };
  /** 16 among values of SD 1 to 1.2. */
  const slip = panel('a', [...EVEN, 16]);

  test('is told first by the middle panel of three or more, which a slip on one does not raise', () => {
    const three = [slip, panel('b', EVEN), panel('c', EVEN)];
    const told = standingOut(three, { priorOf: pooledOr(1e4), falseAlarm: 0.05 });
    expect([...told].map(([id, { apart }]) => [id, apart])).toEqual([['a', [5]]]);
  });

  test('is told first by what is held of any panel where there are two, of which none is the middle', () => {
    const two = [slip, panel('b', EVEN)];
    const by = (untold: number) =>
      standingOut(two, { priorOf: pooledOr(untold), falseAlarm: 0.05 }).get('a')?.apart;
    expect(by(1)).toEqual([5]);
    // Held to scatter by 100 µm, the slip is taken for scatter, and so it is by what it makes of it.
    expect(by(1e4)).toBeUndefined();
  });

  test('of the middle panel by the median of χ²: its variance over (1 − 2/9ν)³', () => {
    // Of 5, 5 and 3 points: 10 degrees of freedom; (1 − 2/36)³ = .8424.
    const rough = T10 * Math.sqrt(1 / 0.8424) * about(5);
    const countedAt = (value: number): readonly number[] => {
      const said: (readonly OwnSpread[])[] = [];
      const panels = [panel('a', [0, 0, 0, 0, value]), panel('b', EVEN), panel('c', [0, 0, 0])];
      standingOut(panels, {
        priorOf: (own) => {
          said.push(own);
          return heldTo(1);
        },
        falseAlarm: among(13),
      });
      return said[0]?.map(({ dof }) => dof) ?? [];
    };
    expect(countedAt(rough - 0.01)).toEqual([4, 4, 2]);
    expect(countedAt(rough + 0.01)).toEqual([3, 4, 2]);
  });

  test('is asked anew until the same points stand out, and five times at the most', () => {
    const asked = (variances: readonly number[]): number => {
      let times = 0;
      standingOut([slip, panel('b', EVEN), panel('c', EVEN)], {
        priorOf: () => {
          times += 1;
          return heldTo(variances[times % variances.length] ?? Number.NaN);
        },
        falseAlarm: 0.05,
      });
      return times;
    };
    expect(asked([1])).toBe(2);
    expect(asked([1, 1e4])).toBe(5);
  });

  test('counts out what only the others show to stand out', () => {
    // 60 hides 18, and 18 hides 9, until each is left out in turn.
    const panels = [
      panel('a', [...EVEN, 60]),
      panel('b', [...EVEN, 18]),
      panel('c', [...EVEN, 9]),
      panel('d', [...EVEN, ...EVEN]),
    ];
    const told = standingOut(panels, { priorOf: pooledOr(1e4), falseAlarm: 0.05 });
    expect([...told].map(([id, { apart }]) => [id, apart])).toEqual([
      ['a', [5]],
      ['b', [5]],
      ['c', [5]],
    ]);
  });
});

describe('what the values of a panel say of their scatter', () => {
  const values = [...EVEN, 41];
  test('is theirs without those that stand out, and nothing of an uneven panel', () => {
    const told = { apart: [5], isUneven: false, reach: 9 };
    expect(spreadWithout({ values, least: 0 }, told)).toEqual({ variance: 1, sample: 1, dof: 4 });
    expect(spreadWithout({ values, least: 2 }, told)).toEqual({ variance: 2, sample: 1, dof: 4 });
    expect(spreadWithout({ values, least: 0 }, { ...told, isUneven: true }).dof).toBe(0);
    // Sample variance of −1, −1, 0, 1, 1, 41: (1685 − 41²/6)/5 = 280.97.
    expect(spreadWithout({ values, least: 0 }).variance).toBeCloseTo(280.9667, 4);
  });
});
