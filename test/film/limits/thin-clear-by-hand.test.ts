/**
 * The topcoat on the thinnest 5 % of a face, worked by hand from round numbers: φ of a normal distribution at 5 % is
 * 1.644854 (its square 2.705543).
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import {
  type ClearChain,
  clearChain,
  type LayerKnowledge,
  type TotalFilm,
} from '../../../src/film/limits/thin-clear.ts';
import { film, knowledge, sharing } from './layers-by-hand.ts';

const um = micrometres;
const Z = 1.6448536269514722;

const chain = (
  ofFilm: Partial<TotalFilm> = {},
  ofLayers: Partial<LayerKnowledge> = {},
): ClearChain => clearChain({ ...film, ...ofFilm }, { ...knowledge, ...ofLayers }, sharing);

const near = (estimate: { readonly mean: number; readonly variance: number } | null) => ({
  mean: expect.closeTo(estimate?.mean ?? Number.NaN, 9),
  variance: expect.closeTo(estimate?.variance ?? Number.NaN, 9),
});

describe('the topcoat by prior and total', () => {
  // Half of 4² is within the panel: 8. Left under: 64 − (16 − 8) = 56; the total adds 3² + 4²/4 = 13 to it.
  it('gives the total its share g = A/(A + D) of a gap below what was expected', () => {
    const { within, under, byTotal, held, share, gapCounted, overPanel } = chain();
    expect(within).toEqual({ variance: 8, dof: 8 });
    expect(under).toEqual(near({ mean: 64, variance: 56 }));
    expect(byTotal).toEqual(near({ mean: 34, variance: 69 }));
    // 40 − 3 gone, 25 − 8 + 1².
    expect(held).toEqual(near({ mean: 37, variance: 18 }));
    expect(share).toBeCloseTo(18 / 87, 12);
    expect(gapCounted).toBeCloseTo(-3, 12);
    expect(overPanel).toEqual(near({ mean: 37 - (3 * 18) / 87, variance: (18 * 69) / 87 }));
  });
  it('lies 1.645 SDs of the topcoat under its mean, and is uncertain by that SD as well', () => {
    const { onThinnest } = chain();
    expect(onThinnest.mean).toBeCloseTo(37 - 54 / 87 - Z * Math.sqrt(8), 9);
    expect(onThinnest.sd).toBeCloseTo(Math.sqrt((18 * 69) / 87 + (Z ** 2 * 8) / 16), 9);
  });
  it('is never raised by a thick total, which makes it surer all the same', () => {
    const { gapCounted, overPanel } = chain({ mean: um(110) });
    expect(gapCounted).toBe(0);
    expect(overPanel).toEqual(near({ mean: 37, variance: (18 * 69) / 87 }));
  });
  it('has no more of a wide spread than six tenths of its own variance, and leaves a third under it', () => {
    const { within, under, held } = chain({ spread: { sd: um(10), dof: 8 } });
    expect(within.variance).toBe(15);
    expect(under).toEqual(near({ mean: 64, variance: 64 / 3 }));
    expect(held).toEqual(near({ mean: 37, variance: 25 - 15 + 1 }));
  });
  it('lies over the zinc that the total shows, and the doubt about the zinc is the total’s', () => {
    const { under, byTotal } = chain({}, { zinc: { mean: 10, variance: 4 } });
    expect(under).toEqual(near({ mean: 74, variance: 68 - 8 }));
    expect(byTotal).toEqual(near({ mean: 24, variance: 60 + 13 }));
  });
});

describe('a topcoat that was stated', () => {
  const statedClear = (of: 'panel' | 'car') => ({ mean: um(36), sd: um(2), of });
  it('of the panel stands as it is: what is gone went before it was read', () => {
    const { held } = chain({}, { statedClear: statedClear('panel') });
    expect(held).toEqual(near({ mean: 36, variance: 4 }));
  });
  it('of the car lacks what is gone, and is as uncertain as panels and records make it', () => {
    const { held } = chain({}, { statedClear: statedClear('car') });
    expect(held).toEqual(near({ mean: 33, variance: 4 + 4 + 1 }));
  });
  it('brings its own spread over the panel where that was read', () => {
    const within = { sd: um(1.5), dof: 6 };
    const { onThinnest, overPanel, ...found } = chain(
      {},
      { statedClear: { ...statedClear('panel'), within } },
    );
    expect(found.within).toEqual({ variance: 2.25, dof: 6 });
    expect(onThinnest.mean).toBeCloseTo(overPanel.mean - Z * 1.5, 9);
    expect(onThinnest.sd ** 2 - overPanel.variance).toBeCloseTo((Z ** 2 * 2.25) / 12, 9);
  });
});

describe('layers under the topcoat that were stated', () => {
  const statedUnder = (of: 'panel' | 'car') => ({ mean: um(60), sd: um(3), of });
  it('leave it to the total alone, thick or thin', () => {
    const { held, share, gapCounted, byTotal, overPanel } = chain(
      {},
      { statedUnder: statedUnder('panel') },
    );
    expect([held, share, gapCounted]).toEqual([null, 1, 0]);
    expect(byTotal).toEqual(near({ mean: 38, variance: 9 + 13 }));
    expect(overPanel).toEqual(byTotal);
  });
  it('of the car are less sure by what panels differ by, and have the zinc added', () => {
    const zinc = { mean: 10, variance: 4 };
    const { under } = chain({}, { statedUnder: statedUnder('car'), zinc });
    expect(under).toEqual(near({ mean: 70, variance: 9 + 4 + 4 }));
  });
  it('beside a clear that is stated make a mean by inverse variances, which a thick total raises', () => {
    const statedClear = { mean: um(36), sd: um(2), of: 'panel' } as const;
    const { overPanel, gapCounted } = chain({}, { statedClear, statedUnder: statedUnder('panel') });
    expect(gapCounted).toBeCloseTo(2, 12);
    expect(overPanel).toEqual(
      near({ mean: (36 / 4 + 38 / 22) / (1 / 4 + 1 / 22), variance: 1 / (1 / 4 + 1 / 22) }),
    );
  });
});

describe('a topcoat of which more is gone at one place than all over the panel', () => {
  const gone = (all: number, more: number, sds: readonly [number, number] = [1, 0.5]) => ({
    mean: um(all + more),
    sd: um(Math.hypot(...sds)),
    allOver: { mean: um(all), sd: um(sds[0]) },
  });

  it('is told by what went all over it, and lacks the rest in full where the place may be', () => {
    const { held, byTotal, atPlace, overPanel, onThinnest, share } = chain({ taken: gone(3, 2) });
    expect(held).toEqual(near({ mean: 37, variance: 18 }));
    expect(byTotal).toEqual(near({ mean: 34, variance: 69 }));
    expect(atPlace).toEqual(near({ mean: 2, variance: 0.25 }));
    // The gap is believed no less for the doubt about the place.
    expect(share).toBeCloseTo(18.25 / 87.25, 12);
    expect(overPanel).toEqual(near({ mean: 37 - (3 * 18.25) / 87.25, variance: (18 * 69) / 87 }));
    expect(onThinnest.mean).toBeCloseTo(overPanel.mean - Z * Math.sqrt(8) - 2, 9);
    expect(onThinnest.sd ** 2).toBeCloseTo((18 * 69) / 87 + (Z ** 2 * 8) / 16 + 0.25, 9);
  });

  it('lacks it where the clear or what lies under it is stated as well: they speak of the rest of the panel', () => {
    const clear = { mean: um(36), sd: um(2), of: 'panel' } as const;
    const under = { mean: um(60), sd: um(3), of: 'panel' } as const;
    for (const stated of [{ statedClear: clear }, { statedUnder: under }]) {
      const [before, after] = [0, 2].map((more) => chain({ taken: gone(3, more) }, stated));
      expect(after?.overPanel).toEqual(before?.overPanel);
      expect(after?.onThinnest.mean).toBeCloseTo((before?.onThinnest.mean ?? 0) - 2, 9);
    }
  });

  it('is thinner by all of it, and never thicker nor surer than if that were gone all over', () => {
    const some = (min: number, max: number) =>
      fc.integer({ min: 100 * min, max: 100 * max }).map((hundredths) => hundredths / 100);
    const of = fc.constantFrom('panel' as const, 'car' as const);
    const layer = (mean: number) =>
      fc.option(
        fc.record({ mean: some(mean - 10, mean + 10), sd: some(0.5, 5), of }).map((one) => ({
          ...one,
          mean: um(one.mean),
          sd: um(one.sd),
        })),
      );
    fc.assert(
      fc.property(
        fc.record({
          total: some(70, 150),
          all: some(0, 6),
          more: some(0, 6),
          sds: fc.tuple(some(0, 2), some(0, 2)),
          statedClear: layer(36),
          statedUnder: layer(64),
        }),
        ({ total, all, more, sds, statedClear, statedUnder }) => {
          const at = (taken: TotalFilm['taken']) =>
            chain({ mean: um(total), taken }, { statedClear, statedUnder }).onThinnest;
          const taken = gone(all, more, sds);
          const [none, here] = [at(gone(all, 0, sds)), at(taken)];
          const everywhere = at({ mean: taken.mean, sd: taken.sd });
          expect(here.mean).toBeCloseTo(none.mean - more, 9);
          expect(here.mean).toBeLessThanOrEqual(everywhere.mean + 1e-9);
          expect(here.sd).toBeGreaterThanOrEqual(everywhere.sd - 1e-9);
        },
      ),
    );
  });
});
