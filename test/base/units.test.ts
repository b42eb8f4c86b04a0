import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  inLengthUnit,
  micrometres,
  micrometresToMil,
  milToMicrometres,
  minus,
  plus,
  scale,
} from '../../src/base/units.ts';

describe('thickness units', () => {
  test('a mil is 25.4 µm exactly (international inch, 1959)', () => {
    expect(milToMicrometres(1)).toBe(25.4);
    expect(milToMicrometres(0.5)).toBe(12.7);
    expect(milToMicrometres(4)).toBeCloseTo(101.6, 12);
  });

  test('mil and µm turn into one another without loss that a gauge could show', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), (value) => {
        expect(milToMicrometres(micrometresToMil(micrometres(value)))).toBeCloseTo(value, 9);
      }),
    );
  });

  test('a thickness is told in the unit that is shown', () => {
    expect(inLengthUnit(101.6, 'um')).toBe(101.6);
    expect(inLengthUnit(101.6, 'mil')).toBeCloseTo(4, 12);
  });

  test('quantities of one unit add, subtract and scale as numbers do', () => {
    const thin = micrometres(80);
    const thick = micrometres(120);
    expect(plus(thin, thick)).toBe(200);
    expect(minus(thick, thin)).toBe(40);
    expect(scale(thin, 1.5)).toBe(120);
  });
});
