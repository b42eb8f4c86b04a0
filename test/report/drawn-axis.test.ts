import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { axisAround, axisFromNothing, inUnit, LARGEST_DRAWN } from '../../src/report/drawn-axis.ts';

const films = fc.array(fc.double({ min: 0.01, max: 400, noNaN: true }), { minLength: 1 });
const units = fc.constantFrom('um' as const, 'mil' as const);

describe('an axis for a drawing', () => {
  test('holds every value of usual film, in the unit that is shown', () => {
    fc.assert(
      fc.property(films, units, (values, unit) => {
        const usual = values.filter((value) => value <= LARGEST_DRAWN);
        const drawn = usual.length === 0 ? values : usual;
        for (const [axis, on] of [
          [axisFromNothing(values, unit), values],
          [axisAround(values, unit), drawn],
        ] as const) {
          for (const value of on) {
            expect(inUnit(value, unit)).toBeGreaterThanOrEqual(axis.from);
            expect(inUnit(value, unit)).toBeLessThanOrEqual(axis.to);
          }
          expect(axis.to).toBeGreaterThan(axis.from);
        }
      }),
    );
  });

  test('begins at nothing for what may go, and ends at a whole micrometre', () => {
    expect(axisFromNothing([2.3, 4.59], 'um')).toEqual({ from: 0, to: 5, line: null });
    expect(axisFromNothing([2.54], 'mil')).toEqual({ from: 0, to: 0.1, line: null });
    expect(axisFromNothing([0], 'um')).toEqual({ from: 0, to: 1, line: null });
  });

  test('lies around films in whole tens', () => {
    expect(axisAround([108.4, 131.5], 'um')).toEqual({ from: 100, to: 140, line: null });
    expect(axisAround([100, 100], 'um')).toEqual({ from: 100, to: 110, line: null });
  });

  test('has no dust of binary fractions on it', () => {
    expect(inUnit(120.8 - 118.1, 'um')).toBe(2.7);
    expect(inUnit(25.4, 'mil')).toBe(1);
  });
});
