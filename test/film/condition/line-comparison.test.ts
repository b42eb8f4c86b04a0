import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactly, uncertain } from '../../../src/base/uncertainty.ts';
import { micrometres } from '../../../src/base/units.ts';
import {
  compareWithLine,
  firmest,
  marginOf,
  nearest,
} from '../../../src/film/condition/line-comparison.ts';
import { evenly } from '../../evenly.ts';

const held = { compared: 'mean', condition: 'cut-back', side: 'under' } as const;
const figureOf = (value: number, contribution: number, dof: number) =>
  uncertain(micrometres(value), { film: { contribution, dof } });
const compare = (value: number, u: number, dof: number, line = 100) =>
  compareWithLine({ ...held, figure: figureOf(value, u, dof), line: exactly(micrometres(line)) });

describe('a figure against a line', () => {
  it.each([
    // NIST/SEMATECH e-Handbook, 1.3.6.7.2, upper critical values of Student's t
    [1.812, 10, 0.05],
    [2.764, 10, 0.01],
    [6.314, 1, 0.05],
    [1.645, Number.POSITIVE_INFINITY, 0.05],
  ])(
    '%f standard uncertainties away on %f degrees of freedom is over it with %f',
    (t, dof, chance) => {
      expect(compare(100 - 2 * t, 2, dof).otherSide).toBeCloseTo(chance, 4);
      expect(compare(100 + 2 * t, 2, dof).otherSide).toBeCloseTo(chance, 4);
    },
  );
  it('is on either side of it with even chances where it meets the line', () => {
    expect(compare(100, 2, 5).otherSide).toBeCloseTo(0.5, 12);
    expect(compare(100, 0, 5).otherSide).toBe(0.5);
    expect(compare(100.001, 0, 5).otherSide).toBe(0);
  });
  it('is beyond a line only past it, on the side where the condition lies', () => {
    expect([99.9, 100, 100.1].map((value) => compare(value, 1, 5).isBeyond)).toEqual([
      true,
      false,
      false,
    ]);
    const over = { ...held, side: 'over' as const, line: exactly(micrometres(100)) };
    expect(
      [99.9, 100, 100.1].map(
        (value) => compareWithLine({ ...over, figure: figureOf(value, 1, 5) }).isBeyond,
      ),
    ).toEqual([false, false, true]);
  });
  it('is uncertain by what the two do not share: the gauge counts on their difference alone', () => {
    const both = (value: number, calibration: number, own: number) =>
      uncertain(micrometres(value), {
        calibration: { contribution: calibration, dof: Number.POSITIVE_INFINITY },
        [`own ${value}`]: { contribution: own, dof: 10 },
      });
    const { standard } = compareWithLine({
      ...held,
      figure: both(150, 2, 3),
      line: both(100, 1.5, 4),
    });
    expect(standard).toBeCloseTo(Math.hypot(0.5, 3, 4), 12);
  });
  it('is never less sure further away', () => {
    const positive = evenly(0.01, 200);
    fc.assert(
      fc.property(positive, positive, evenly(1, 60), (margin, more, dof) => {
        const [near, far] = [margin, margin + more].map(
          (by) => compare(100 - by, 3, dof).otherSide,
        );
        expect(far).toBeLessThanOrEqual(near ?? 0);
      }),
    );
  });
  it('names the nearest and the firmest of several', () => {
    const all = [compare(97, 1, 9), compare(99, 1, 9), compare(90, 1, 9)];
    expect(nearest(all)?.figure).toBe(99);
    expect(firmest(all)?.figure).toBe(90);
    expect([nearest([]), firmest([])]).toEqual([undefined, undefined]);
    expect(all.map(marginOf)).toEqual([3, 1, 10]);
  });
});
